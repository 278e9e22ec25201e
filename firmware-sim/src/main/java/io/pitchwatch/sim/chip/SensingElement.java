package io.pitchwatch.sim.chip;

import java.util.SplittableRandom;
import java.util.random.RandomGenerator;

/** What turns specific force into a number before it is rounded: bias, drift, self-test, noise. */
final class SensingElement {

  private static final double MILLI = 1e-3;
  private static final double MICRO = 1e-6;

  private final Part part;
  private final Surroundings surroundings;
  private final Flaws flaws;
  private final RandomGenerator random;
  private final double[] noise = new double[3];

  SensingElement(Part part, Surroundings surroundings, Flaws flaws, long seed) {
    this.part = part;
    this.surroundings = surroundings;
    this.flaws = flaws;
    this.random = new SplittableRandom(seed);
  }

  /** Temperature of the die, degrees Celsius. */
  double temperatureC(long nanos) {
    return surroundings.temperatureC(nanos);
  }

  /** Change of one axis under self-test, g. */
  double testG(int axis) {
    return part.selfTestG().of(axis);
  }

  /**
   * One sample, not yet rounded.
   *
   * @param nanos scenario time, nanoseconds
   * @param band the chip's filter
   * @param noiseFactor 1 at the part's own noise density
   * @param selfTest share of the self-test force that acts, 0 to 1
   * @param outG receives x, y, z in g
   */
  void sense(long nanos, Band band, double noiseFactor, double selfTest, double[] outG) {
    surroundings.specificForce(nanos, band.cornerHz(), outG);
    double warmerK = surroundings.temperatureC(nanos) - Part.REFERENCE_C;
    double memory = band.memory();
    double size = noiseFactor * MICRO * Math.sqrt(band.noiseHz());
    double fresh = Math.sqrt(1 - memory * memory);
    for (int axis = 0; axis < 3; axis++) {
      noise[axis] = memory * noise[axis] + fresh * random.nextGaussian();
      outG[axis] +=
          MILLI * (part.biasMg().of(axis) + warmerK * part.driftMgPerK().of(axis))
              + selfTest * part.selfTestG().of(axis)
              + size * part.noiseUgPerRootHz().of(axis) * noise[axis];
    }
    flaws.disturb(outG);
  }
}
