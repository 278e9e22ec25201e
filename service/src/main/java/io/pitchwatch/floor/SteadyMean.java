package io.pitchwatch.floor;

/**
 * Mean of the blocks since the coach came to rest, or since its lean last changed, over at most a
 * minute.
 *
 * <p>A change is found where the last 1.6, 3.2 or 6.4 s differ from what came before by more than 5
 * standard deviations of such a difference; what came before is then forgotten.
 */
final class SteadyMean {

  private static final int RING = 512;
  private static final int LONGEST = NoiseKinds.LONGEST;
  private static final int SHORT = 8;
  private static final double CHANGED = 5;
  private static final double WILD = 6;
  private static final double MOVING = 4;
  private static final double DRIFTING = 3;

  private final double[][] seen = new double[3][RING];
  private final double[][] sums = new double[3][RING];
  private final int[] goods = new int[RING];
  private final double[] scratch = new double[SHORT];
  private long blocks;
  private long start;

  /** Starts anew with the last few blocks, wild or not. */
  void restart(int keep) {
    start = Math.max(0, blocks - keep);
    for (long b = start + 1; b <= blocks; b++) {
      for (int axis = 0; axis < 3; axis++) {
        sums[axis][at(b)] = sums[axis][at(b - 1)] + seen[axis][at(b)];
      }
      goods[at(b)] = goods[at(b - 1)] + 1;
    }
  }

  /** Shows all blocks of the mean to the estimate of noise, which was cleared. */
  void replay(Restlessness noise) {
    for (long b = start + 1; b <= blocks; b++) {
      noise.accept(seen[0][at(b)], seen[1][at(b)], seen[2][at(b)]);
    }
  }

  void clear() {
    blocks = 0;
    start = 0;
    goods[0] = 0;
    for (double[] axis : sums) {
      axis[0] = 0;
    }
  }

  /** Blocks in the mean, wild ones included. */
  int length() {
    return (int) (blocks - start);
  }

  /**
   * Takes the next block.
   *
   * @param block where its means are
   * @param noise how restless the floor is
   * @return whether the block is in line with the mean so far
   */
  boolean accept(SampleBlock block, Restlessness noise) {
    boolean good = !isWild(block, noise);
    int from = at(blocks);
    blocks++;
    int to = at(blocks);
    for (int axis = 0; axis < 3; axis++) {
      seen[axis][to] = block.mean(axis);
      sums[axis][to] = sums[axis][from] + (good ? block.mean(axis) : 0);
    }
    goods[to] = goods[from] + (good ? 1 : 0);
    start = Math.max(start, blocks - LONGEST);
    forget(noise);
    return good;
  }

  private boolean isWild(SampleBlock block, Restlessness noise) {
    if (length() < SHORT) {
      return false;
    }
    for (int axis = 0; axis < 2; axis++) {
      double allowed = WILD * Math.sqrt(noise.blockVariance(axis));
      if (Math.abs(block.mean(axis) - mean(axis)) > allowed) {
        return true;
      }
    }
    return false;
  }

  private void forget(Restlessness noise) {
    if (length() >= 2 * SHORT && hasJumped(noise)) {
      restart(SHORT);
    }
    for (int m = 2 * SHORT; m <= 4 * SHORT; m *= 2) {
      if (length() >= 2 * m && hasMoved(m, noise)) {
        start = blocks - m;
      }
    }
    if (goods[at(blocks)] == goods[at(start)]) {
      restart(SHORT);
    }
  }

  /** By the median, since after a jump the last blocks were all left out as wild. */
  private boolean hasJumped(Restlessness noise) {
    int older = length() - SHORT;
    for (int axis = 0; axis < 2; axis++) {
      double d = recent(axis, 0) - mean(axis, start, blocks - SHORT);
      // The median of white noise scatters π/2 times as much as the mean.
      double variance = 1.6 * noise.meanVariance(axis, SHORT) + noise.meanVariance(axis, older);
      if (d * d > CHANGED * CHANGED * variance) {
        return true;
      }
    }
    return false;
  }

  private boolean hasMoved(int m, Restlessness noise) {
    int older = length() - m;
    for (int axis = 0; axis < 2; axis++) {
      double d = mean(axis, blocks - m, blocks) - mean(axis, start, blocks - m);
      double variance = noise.meanVariance(axis, m) + noise.meanVariance(axis, older);
      if (d * d > CHANGED * CHANGED * variance) {
        return true;
      }
    }
    return false;
  }

  /** The mean, g: forward, left, up. NaN when there is none. */
  double mean(int axis) {
    return mean(axis, start, blocks);
  }

  private double mean(int axis, long from, long to) {
    int n = goods[at(to)] - goods[at(from)];
    return n > 0 ? (sums[axis][at(to)] - sums[axis][at(from)]) / n : Double.NaN;
  }

  /** Variance of the mean, g², with what it lags behind a drift that shows. */
  double variance(int axis, Restlessness noise) {
    int n = length();
    int left = goods[at(blocks)] - goods[at(start)];
    double variance = noise.statedVariance(axis, n) * n / Math.max(1, left);
    int half = n / 2;
    if (half >= SHORT) {
      // A steady drift puts the mean behind by just what its halves differ.
      double lag = mean(axis, blocks - half, blocks) - mean(axis, start, blocks - half);
      double chance = 2 * noise.meanVariance(axis, half);
      if (lag * lag > DRIFTING * DRIFTING * chance) {
        variance += lag * lag - chance;
      }
    }
    return variance;
  }

  /**
   * Whether the floor is on the move: the last 1.6 s against the 1.6 s before, and against the
   * mean.
   *
   * @param leastG differences below this do not count, g
   */
  boolean isChanging(Restlessness noise, double leastG) {
    if (blocks < 2 * SHORT) {
      return false;
    }
    for (int axis = 0; axis < 2; axis++) {
      double now = recent(axis, 0);
      double chance = 3.2 * noise.meanVariance(axis, SHORT);
      double d = Math.max(Math.abs(now - recent(axis, SHORT)), Math.abs(now - mean(axis)));
      if (d > leastG && d * d > MOVING * MOVING * chance) {
        return true;
      }
    }
    return false;
  }

  /** Median of eight blocks, g: wild ones do not move it. */
  private double recent(int axis, int before) {
    for (int i = 0; i < SHORT; i++) {
      scratch[i] = seen[axis][at(blocks - before - i)];
    }
    return RobustMean.median(scratch, SHORT);
  }

  private static int at(long block) {
    return (int) block & (RING - 1);
  }
}
