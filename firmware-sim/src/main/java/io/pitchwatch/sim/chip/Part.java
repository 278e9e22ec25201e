package io.pitchwatch.sim.chip;

/**
 * How one piece of silicon differs from the ideal, in the chip's axes.
 *
 * @param noiseUgPerRootHz white noise density, millionths of g per root hertz
 * @param biasMg output at 0 g and 25 degrees Celsius, thousandths of g
 * @param driftMgPerK change of bias with temperature, thousandths of g per kelvin
 * @param selfTestG change of output while self-test is on, g
 * @param clockPpm how much faster than nominal the chip's sampling clock runs, millionths
 */
public record Part(
    Axes noiseUgPerRootHz, Axes biasMg, Axes driftMgPerK, Axes selfTestG, double clockPpm) {

  /** Temperature at which the bias is stated, degrees Celsius. */
  public static final double REFERENCE_C = 25;

  /** The worst clock that can be asked for, either way, ppm. */
  public static final double WORST_CLOCK_PPM = 100_000;

  /** Checks the figures. */
  public Part {
    if (Math.min(noiseUgPerRootHz.x(), Math.min(noiseUgPerRootHz.y(), noiseUgPerRootHz.z())) < 0) {
      throw new IllegalArgumentException("noise is " + noiseUgPerRootHz + "; 0 or more is allowed");
    }
    if (!(Math.abs(clockPpm) <= WORST_CLOCK_PPM)) {
      throw new IllegalArgumentException(
          "clock is " + clockPpm + " ppm; at most " + WORST_CLOCK_PPM + " either way is allowed");
    }
  }

  /**
   * An ADXL345 as its datasheet calls typical: noise 290 (x, y) and 430 (z) ug/rtHz (Rev. E, p.
   * 33), no bias, no drift, self-test well inside the limits of table 1 at 2.5 V.
   */
  public static Part adxl345() {
    return new Part(new Axes(290, 290, 430), Axes.ZERO, Axes.ZERO, new Axes(0.7, -0.7, 1.1), 0);
  }

  /**
   * An ADXL355 as its datasheet calls typical: noise 22.5 ug/rtHz, self-test 0.3, 0.3 and 1.5 g, no
   * bias, no drift.
   */
  public static Part adxl355() {
    return new Part(new Axes(22.5, 22.5, 22.5), Axes.ZERO, Axes.ZERO, new Axes(0.3, 0.3, 1.5), 0);
  }

  /**
   * An MPU-6050 as its product specification calls typical: noise 400 ug/rtHz (PS-MPU-6000A-00 Rev.
   * 3.4, s. 6.2), self-test a few hundredths off its factory trim, no bias, no drift.
   */
  public static Part mpu6050() {
    return new Part(
        new Axes(400, 400, 400), Axes.ZERO, Axes.ZERO, Mpu6050Trim.answerG(0.03, -0.02, 0.04), 0);
  }

  /** The same part with another noise density, ug/rtHz. */
  public Part withNoise(Axes ugPerRootHz) {
    return new Part(ugPerRootHz, biasMg, driftMgPerK, selfTestG, clockPpm);
  }

  /** The same part with another bias, mg. */
  public Part withBias(Axes mg) {
    return new Part(noiseUgPerRootHz, mg, driftMgPerK, selfTestG, clockPpm);
  }

  /** The same part with another drift, mg/K. */
  public Part withDrift(Axes mgPerK) {
    return new Part(noiseUgPerRootHz, biasMg, mgPerK, selfTestG, clockPpm);
  }

  /** The same part with another clock error, ppm. */
  public Part withClock(double ppm) {
    return new Part(noiseUgPerRootHz, biasMg, driftMgPerK, selfTestG, ppm);
  }
}
