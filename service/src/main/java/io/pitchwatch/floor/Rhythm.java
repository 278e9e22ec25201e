package io.pitchwatch.floor;

import java.util.Arrays;

/**
 * Whether values that were left out as wild come round in time with the samples. An engine whose
 * line lies near a third of the sample rate makes samples of but three values; while two of them
 * are alike, every third sample looks wild and is not: all three together are one vibration around
 * the lean. Near a half, a quarter or a fifth it is likewise. Spikes, however many, keep no time.
 */
final class Rhythm {

  private static final int LONGEST_PERIOD = 6;
  private static final int FEWEST_PAIRS = 3;

  /** Share of the wild values that must be followed by another one period later. */
  private static final double KEPT = 0.8;

  /** In between there must be tame ones, or it is a burst: the same share, of some distance. */
  private static final double BETWEEN = 0.2;

  /** The vibration's own values scatter; what lies farther out is a spike nevertheless. */
  private static final double BEYOND = 1.5;

  private final double[] away;

  Rhythm(int capacity) {
    away = new double[capacity];
  }

  /**
   * How far from the middle values belong to a vibration that keeps time.
   *
   * @param v values in the order in which they were taken
   * @param n how many
   * @param middle of the tame ones
   * @param reach values farther from the middle than this were left out
   * @return 0 when those left out keep no time
   */
  double reach(double[] v, int n, double middle, double reach) {
    int wild = 0;
    for (int i = 0; i < n; i++) {
      if (isWild(v[i], middle, reach)) {
        away[wild++] = Math.abs(v[i] - middle);
      }
    }
    double least = share(v, n, middle, reach, 1);
    for (int period = 2; period <= LONGEST_PERIOD && wild > FEWEST_PAIRS; period++) {
      double share = share(v, n, middle, reach, period);
      if (share >= KEPT && least <= BETWEEN) {
        Arrays.sort(away, 0, wild);
        return BEYOND * away[wild / 2];
      }
      least = Math.min(least, share);
    }
    return 0;
  }

  /** Of the wild values that have another so many samples later, the share where that is wild. */
  private static double share(double[] v, int n, double middle, double reach, int later) {
    int pairs = 0;
    int both = 0;
    for (int i = 0; i + later < n; i++) {
      if (isWild(v[i], middle, reach)) {
        pairs++;
        both += isWild(v[i + later], middle, reach) ? 1 : 0;
      }
    }
    return pairs < FEWEST_PAIRS ? 0 : (double) both / pairs;
  }

  private static boolean isWild(double value, double middle, double reach) {
    return !(Math.abs(value - middle) < reach);
  }
}
