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

  SmoothNoise(long seed, double periodS) {
    this.seed = seed;
    this.periodS = periodS;
  }

  double at(double timeS) {
    double position = timeS / periodS;
    long floor = (long) Math.floor(position);
    double before = knot(floor - 1);
    double from = knot(floor);
    double to = knot(floor + 1);
    double after = knot(floor + 2);
    double u = position - floor;
    double a = -before + 3 * from - 3 * to + after;
    double b = 2 * before - 5 * from + 4 * to - after;
    double c = to - before;
    return RESTORE * (from + 0.5 * u * (c + u * (b + u * a)));
  }

  private double knot(long index) {
    return SPREAD * (2 * uniform(seed, index) - 1);
  }

  /** A number from 0 to 1 that belongs to a seed and an index (the mixing step of SplitMix64). */
  static double uniform(long seed, long index) {
    long z = seed + (index + 1) * STEP;
    z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
    z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
    return ((z ^ (z >>> 31)) >>> 11) * 0x1.0p-53;
  }
}
