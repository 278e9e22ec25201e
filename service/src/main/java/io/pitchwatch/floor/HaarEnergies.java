package io.pitchwatch.floor;

/**
 * How much neighbouring means differ, at window lengths that double: the overlapping Allan variance
 * of a stream of blocks (times two), kept up with every block.
 *
 * <p>Each squared difference is clipped at nine times the mean so far, so that one step of the
 * floor does not pass for restlessness; differences below 1 mg (0.06 deg), such as people make, are
 * always let in. The memory is two minutes.
 */
final class HaarEnergies {

  /** Number of window lengths: 1, 2, 4 … 128 blocks. */
  static final int SCALES = 8;

  private static final int RING = 512;
  private static final int MEMORY = 600;
  private static final double CLIP = 9;
  private static final double LET_IN_G2 = 1e-6;

  private final double[] prior;
  private final double[] energy = new double[SCALES];
  private final int[] counted = new int[SCALES];
  private final double[] sums = new double[RING];
  private long blocks;

  /**
   * @param prior what to expect of the chip alone, g², by scale
   */
  HaarEnergies(double[] prior) {
    this.prior = prior.clone();
    clear();
  }

  void clear() {
    System.arraycopy(prior, 0, energy, 0, SCALES);
    java.util.Arrays.fill(counted, 0);
    interrupt();
  }

  /** The next block does not follow the last one in time. */
  void interrupt() {
    blocks = 0;
    sums[0] = 0;
  }

  /** Takes the next block, g. */
  void accept(double block) {
    double last = sums[(int) blocks & (RING - 1)];
    blocks++;
    double now = last + block;
    sums[(int) blocks & (RING - 1)] = now;
    for (int j = 0; j < SCALES; j++) {
      int m = 1 << j;
      if (blocks < 2L * m) {
        return;
      }
      double before = sums[(int) (blocks - m) & (RING - 1)];
      double early = sums[(int) (blocks - 2L * m) & (RING - 1)];
      double d = (now - 2 * before + early) / m;
      counted[j] = Math.min(counted[j] + 1, MEMORY);
      double clipped = Math.min(d * d, Math.max(CLIP * energy[j], LET_IN_G2));
      energy[j] += (clipped - energy[j]) / (counted[j] + 1);
    }
  }

  /** Mean squared difference of neighbouring means of 2^scale blocks, g². */
  double energy(int scale) {
    return energy[scale];
  }

  /** Time over which they were seen, at most the memory, s. */
  double seconds() {
    return (counted[0] + 1) * SampleBlock.HOP_S;
  }

  /**
   * How many independent differences that mean is worth: NIST SP 1065, equivalent degrees of
   * freedom of the overlapping Allan variance under white frequency noise (from memory).
   */
  double freedom(int scale) {
    double m = 1 << scale;
    double n = counted[scale] + 2 * m - 1;
    if (counted[scale] == 0) {
      return 0;
    }
    double edf = (1.5 * (n - 1) / m - 2 * (n - 2) / n) * 4 * m * m / (4 * m * m + 5);
    return Math.max(edf, 0.5);
  }
}
