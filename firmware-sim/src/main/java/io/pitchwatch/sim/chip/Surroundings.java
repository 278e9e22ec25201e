package io.pitchwatch.sim.chip;

/** The physical face of a chip: what its package feels, in the chip's own axes. */
public interface Surroundings {

  /**
   * Specific force at an instant, after the chip's own first-order low-pass.
   *
   * <p>Whoever implements this applies the low-pass, since it knows the motion between samples: a
   * vibration line is weakened and delayed as a one-pole filter does it and then evaluated at the
   * instant itself, so that what lies above half the sampling rate folds down as in the real part.
   *
   * @param nanos scenario time, nanoseconds
   * @param cornerHz where the chip's filter is 3 dB down, Hz, above 0
   * @param outG receives x, y, z in g
   */
  void specificForce(long nanos, double cornerHz, double[] outG);

  /**
   * Temperature of the die.
   *
   * @param nanos scenario time, nanoseconds
   * @return degrees Celsius
   */
  double temperatureC(long nanos);
}
