package io.pitchwatch.floor;

/**
 * The kinds of noise a parked coach shows, each of unit variance, and what it makes of differences
 * and of means of blocks.
 *
 * <p>White noise of the chip, measured by the variance of a 0.2 s mean; rocking, a damped line near
 * 1.2 Hz, as of footsteps and wind, that averages out at once; and slow wanders, as of people who
 * move about: smooth (correlation exp(−t²/2τ²)) or jumpy (exp(−|t|/τ)).
 */
final class NoiseKinds {

  static final int WHITE = 0;
  static final int ROCK = 1;

  /** The first of the slow wanders. */
  static final int SLOW = 2;

  /** How many kinds there are. */
  static final int COUNT = 7;

  /** Longest mean whose variance is tabulated, blocks. */
  static final int LONGEST = 300;

  private static final double ROCK_HZ = 1.2;
  private static final double ROCK_DECAY_S = 0.27;

  private static final double[][] ENERGY = new double[COUNT][HaarEnergies.SCALES];
  private static final double[][] MEAN_VARIANCE = new double[COUNT][LONGEST + 1];

  static {
    for (int kind = 0; kind < COUNT; kind++) {
      for (int scale = 0; scale < HaarEnergies.SCALES; scale++) {
        ENERGY[kind][scale] = haarEnergy(kind, 1 << scale);
      }
      tabulateMeans(kind);
    }
  }

  private NoiseKinds() {}

  /** Expected square of the difference of neighbouring means of 2^scale blocks. */
  static double energy(int kind, int scale) {
    return ENERGY[kind][scale];
  }

  /**
   * Variance of the mean of neighbouring blocks.
   *
   * @param blocks how many, 1 to {@link #LONGEST}
   */
  static double meanVariance(int kind, int blocks) {
    return MEAN_VARIANCE[kind][blocks];
  }

  /** Autocovariance of smooth blocks. */
  private static double covariance(int kind, int lag) {
    double t = lag * SampleBlock.HOP_S;
    return switch (kind) {
      // Three boxes convolved with themselves: the quintic B-spline at the whole numbers.
      case WHITE -> lag == 0 ? 66. / 120 : lag == 1 ? 26. / 120 : lag == 2 ? 1. / 120 : 0;
      case ROCK -> Math.cos(2 * Math.PI * ROCK_HZ * t) * Math.exp(-t / ROCK_DECAY_S);
      case 2 -> Math.exp(-0.5 * t * t / (2.0 * 2.0));
      case 3 -> Math.exp(-0.5 * t * t / (6.0 * 6.0));
      case 4 -> Math.exp(-t / 3);
      case 5 -> Math.exp(-t / 8);
      default -> Math.exp(-t / 13);
    };
  }

  private static double haarEnergy(int kind, int m) {
    double sum = 0;
    for (int lag = 0; lag < 2 * m; lag++) {
      double pairs = lag < m ? 2.0 * (m - lag) - lag : lag - 2.0 * m;
      sum += (lag == 0 ? 1 : 2) * pairs * covariance(kind, lag);
    }
    return sum / ((double) m * m);
  }

  private static void tabulateMeans(int kind) {
    for (int n = 1; n <= LONGEST; n++) {
      double sum = 0;
      for (int lag = 0; lag < n; lag++) {
        sum += (lag == 0 ? 1 : 2) * (n - lag) * covariance(kind, lag);
      }
      MEAN_VARIANCE[kind][n] = Math.max(0, sum / ((double) n * n));
    }
  }
}
