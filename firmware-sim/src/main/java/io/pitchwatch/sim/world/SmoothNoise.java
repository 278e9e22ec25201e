package io.pitchwatch.sim.world;

/**
 * Random but smooth in time, and a function of time: values drawn at even instants from a hash of
 * the seed, and between them a cubic through the neighbours (Catmull–Rom). Standard deviation near
 * 1.
 */
final class SmoothNoise {

  private static final long STEP = 0x9E3779B97F4A7C15L;

  /** Makes up for what the cubic loses between the instants: 1/√(mean of the weights' squares). */
  private static final double RESTORE = 1.12;

  /** A uniform value within ±√3 has standard deviation 1. */
  private static final double SPREAD = Math.sqrt(3);

  private final long seed;
  private final double periodS;
  private long cell = Long.MIN_VALUE;
  private final double[] knots = new double[4];

  SmoothNoise(long seed, double periodS) {
    this.seed = seed;
    this.periodS = periodS;
  }

  double at(double timeS) {
    double position = timeS / periodS;
    long floor = (long) Math.floor(position);
    if (floor != cell) {
      cell = floor;
      for (int i = 0; i < knots.length; i++) {
        knots[i] = SPREAD * (2 * uniform(seed, floor + i - 1) - 1);
      }
    }
    double u = position - floor;
    double a = -knots[0] + 3 * knots[1] - 3 * knots[2] + knots[3];
    double b = 2 * knots[0] - 5 * knots[1] + 4 * knots[2] - knots[3];
    double c = knots[2] - knots[0];
    return RESTORE * (knots[1] + 0.5 * u * (c + u * (b + u * a)));
  }

  /** A number from 0 to 1 that belongs to a seed and an index (the mixing step of SplitMix64). */
  static double uniform(long seed, long index) {
    long z = seed + (index + 1) * STEP;
    z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
    z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
    return ((z ^ (z >>> 31)) >>> 11) * 0x1.0p-53;
  }
}
