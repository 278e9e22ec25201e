package io.pitchwatch.sim.chip;

import java.util.SplittableRandom;
import java.util.random.RandomGenerator;

/**
 * What turns specific force into a number before it is rounded: bias, drift, self-test force,
 * noise.
 *
 * <p>White noise of density N sampled at the output rate f has the standard deviation N·√(f/2); the
 * mean of T seconds of it then has N/√(2T), whatever the rate.
 */
final class SensingElement {

  private static final double MILLI = 1e-3;
  private static final double MICRO = 1e-6;

  private final Part part;
  private final Surroundings surroundings;
  private final Flaws flaws;
  private final RandomGenerator random;

  SensingElement(Part part, Surroundings surroundings, Flaws flaws, long seed) {
    this.part = part;
    this.surroundings = surroundings;
    this.flaws = flaws;
    this.random = new SplittableRandom(seed);
  }

  /**
   * One sample, not yet rounded.
   *
   * @param nanos scenario time, nanoseconds
   * @param rateHz output rate; the filter's corner is half of it, Hz
   * @param noiseFactor 1 at the part's own noise density
   * @param selfTest share of the self-test force that acts, 0 to 1
   * @param outG receives x, y, z in g
   */
  void sense(long nanos, double rateHz, double noiseFactor, double selfTest, double[] outG) {
    surroundings.specificForce(nanos, rateHz / 2, outG);
    double warmerK = surroundings.temperatureC(nanos) - Part.REFERENCE_C;
    double noise = noiseFactor * MICRO * Math.sqrt(rateHz / 2);
    for (int axis = 0; axis < 3; axis++) {
      outG[axis] +=
          MILLI * (part.biasMg().of(axis) + warmerK * part.driftMgPerK().of(axis))
              + selfTest * part.selfTestG().of(axis)
              + noise * part.noiseUgPerRootHz().of(axis) * random.nextGaussian();
    }
    flaws.disturb(outG);
  }
}
