package io.pitchwatch.settling;

/**
 * The floor's lean over one minute.
 *
 * @param atNanos monotonic time of the end of the minute, nanoseconds
 * @param rollRad roll, radians, positive: right side low; NaN when not known
 * @param pitchRad pitch, radians, positive: front low; NaN when not known
 * @param uncertaintyRad one standard error of the two angles from the noise of this minute alone,
 *     radians; NaN when not known
 * @param spreadRad how far the coach rocked about them, one standard deviation, radians; NaN when
 *     not known
 * @param temperatureC the sensor's temperature, degrees Celsius; NaN without a thermometer
 * @param restShare share of the minute in which the coach was at rest and known to be, 0 to 1
 * @param moved whether the coach moved in it: was driven, or shaken as hard
 */
public record MinuteValue(
    long atNanos,
    double rollRad,
    double pitchRad,
    double uncertaintyRad,
    double spreadRad,
    double temperatureC,
    double restShare,
    boolean moved) {

  /** Least share of rest that makes a minute worth counting: our own figure. */
  static final double LEAST_REST = 0.25;

  /**
   * Checks the share.
   *
   * @throws IllegalArgumentException if the share of rest is not 0 to 1
   */
  public MinuteValue {
    if (!(restShare >= 0 && restShare <= 1)) {
      throw new IllegalArgumentException("restShare is " + restShare + "; it must be 0 to 1");
    }
  }

  /** Whether both angles are known well enough to count. */
  public boolean counts() {
    return restShare >= LEAST_REST && Double.isFinite(rollRad) && Double.isFinite(pitchRad);
  }
}
