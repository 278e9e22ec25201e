package io.pitchwatch.sensing;

/**
 * What may be chosen of an accelerometer.
 *
 * @param rangeG full scale, g, either sign: 2 for ±2 g
 * @param rateHz samples a second
 */
public record AccelerometerSettings(double rangeG, double rateHz) {

  /** Checks that both are finite and positive; which values a chip knows is its driver's affair. */
  public AccelerometerSettings {
    require("rangeG", rangeG);
    require("rateHz", rateHz);
  }

  private static void require(String name, double value) {
    if (!(value > 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(name + " is " + value + "; it must be more than 0");
    }
  }
}
