package io.pitchwatch.floor;

/**
 * The last 0.6 s of samples, seen through a smooth window every 0.2 s.
 *
 * <p>The window is a quadratic B-spline, three boxes of 0.2 s convolved: its response sinc³(0.2 f)
 * leaves less than 1/2000 of any line from 4.5 Hz up that is sampled without folding, and windows a
 * hop apart add up to a constant, so that no sample counts more than another in the long run. 90 %
 * of a step pass after 0.43 s.
 */
final class SampleBlock {

  /** Time from one block to the next. */
  static final long HOP_NANOS = 200_000_000L;

  /** {@link #HOP_NANOS} in seconds. */
  static final double HOP_S = 0.2;

  private static final long WIDTH_NANOS = 3 * HOP_NANOS;
  private static final double PER_HOP = 1.0 / HOP_NANOS;
  private static final int FEWEST = 5;
  private static final double LEAST_SHARE = 0.3;
  private static final double CLEAR_SHARE = 0.6;

  private final long[] nanos;
  private final double[][] ring;
  private final int mask;
  private long added;

  private final double[] value;
  private final double[] weight;
  private final RobustMean robust;
  private final int needed;
  private int count;
  private double share;

  private final double[] mean = new double[3];
  private final double[] spread = new double[3];

  SampleBlock(SensorNoise noise) {
    int capacity = Integer.highestOneBit((int) (noise.rateHz() * 0.6 * 1.5) + 8) * 2;
    nanos = new long[capacity];
    ring = new double[3][capacity];
    mask = capacity - 1;
    value = new double[capacity];
    weight = new double[capacity];
    robust = new RobustMean(capacity, noise.sampleG());
    needed = (int) Math.max(FEWEST, LEAST_SHARE * 3 * HOP_S * noise.rateHz());
  }

  void clear() {
    added = 0;
  }

  void add(long atNanos, double fx, double fy, double fz) {
    int i = (int) added & mask;
    nanos[i] = atNanos;
    ring[0][i] = fx;
    ring[1][i] = fy;
    ring[2][i] = fz;
    added++;
  }

  /**
   * Closes the block that ends at the given time, all samples so far being older.
   *
   * @return whether there were samples enough
   */
  boolean close(long endNanos) {
    long first = gather(endNanos);
    if (count < needed) {
      return false;
    }
    share = 1;
    for (int axis = 0; axis < 3; axis++) {
      for (int i = 0; i < count; i++) {
        value[i] = ring[axis][(int) (first + i) & mask];
      }
      mean[axis] = robust.of(value, weight, count);
      spread[axis] = robust.spread();
      share = Math.min(share, robust.share());
    }
    return true;
  }

  /** Finds the samples of the block and their weights. */
  private long gather(long endNanos) {
    long start = endNanos - WIDTH_NANOS;
    long last = added;
    long oldest = Math.max(0, added - nanos.length);
    long first = last;
    while (first > oldest && nanos[(int) (first - 1) & mask] - start >= 0) {
      first--;
    }
    count = (int) (last - first);
    for (int i = 0; i < count; i++) {
      double u = (nanos[(int) (first + i) & mask] - start) * PER_HOP;
      weight[i] = spline(u);
    }
    return first;
  }

  private static double spline(double u) {
    if (u < 1) {
      return 0.5 * u * u;
    }
    if (u < 2) {
      return 0.75 - (u - 1.5) * (u - 1.5);
    }
    return 0.5 * (3 - u) * (3 - u);
  }

  /** Whether so many samples agreed that it cannot be the wild ones that did. */
  boolean isClear() {
    return share >= CLEAR_SHARE;
  }

  /** Smooth mean of the block closed last, g: forward, left, up. */
  double mean(int axis) {
    return mean[axis];
  }

  /** Standard deviation of single samples, wild ones left out, g: forward, left, up. */
  double spread(int axis) {
    return spread[axis];
  }
}
