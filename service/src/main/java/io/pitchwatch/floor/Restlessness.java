package io.pitchwatch.floor;

/**
 * How restless the floor is along each horizontal axis, and how far a mean of it can be trusted.
 */
final class Restlessness {

  /** Blocks from one explanation to the next: 1 s at first, later 3 s. */
  private static final int OFTEN = 5;

  private static final int SELDOM = 15;
  private static final int YOUNG = 100;

  /** The body's own bounce shows best between means of 0.4 s. */
  private static final int HEAVE_SCALE = 1;

  /** The axis that points up may be half as noisy again as the others. */
  private static final double LIVELY = 4;

  private final double leastWhite;
  private final NoiseMixture mixture = new NoiseMixture();
  private final HaarEnergies[] energies = new HaarEnergies[3];
  private final double livelyG2;
  private final double[][] strength = new double[2][NoiseMixture.kinds()];
  private int sinceLearned;
  private int taken;

  /**
   * @param hopVariance variance of a 0.2 s mean due to the chip alone, g²
   */
  Restlessness(double hopVariance) {
    leastWhite = hopVariance;
    double[] prior = NoiseMixture.whiteEnergies();
    for (int j = 0; j < prior.length; j++) {
      prior[j] *= hopVariance;
    }
    for (int axis = 0; axis < 3; axis++) {
      energies[axis] = new HaarEnergies(prior);
    }
    livelyG2 = LIVELY * prior[HEAVE_SCALE];
    learn();
  }

  void clear() {
    for (HaarEnergies axis : energies) {
      axis.clear();
    }
    taken = 0;
    learn();
  }

  /** The next block does not follow the last one in time. */
  void interrupt() {
    for (HaarEnergies axis : energies) {
      axis.interrupt();
    }
  }

  /**
   * Takes the next smooth block.
   *
   * @param x forward, g
   * @param y left, g
   * @param z up, g
   */
  void accept(double x, double y, double z) {
    energies[0].accept(x);
    energies[1].accept(y);
    energies[2].accept(z);
    taken = Math.min(taken + 1, YOUNG);
    if (++sinceLearned >= (taken < YOUNG ? OFTEN : SELDOM)) {
      learn();
    }
  }

  private void learn() {
    sinceLearned = 0;
    boolean lively = energies[2].energy(HEAVE_SCALE) > livelyG2;
    mixture.explain(energies[0], leastWhite, lively, strength[0]);
    mixture.explain(energies[1], leastWhite, lively, strength[1]);
  }

  /** Variance of the mean of that many blocks, g². */
  double meanVariance(int axis, int blocks) {
    return NoiseMixture.meanVariance(strength[axis], blocks);
  }

  /** Variance of one block, g². */
  double blockVariance(int axis) {
    return NoiseMixture.meanVariance(strength[axis], 1);
  }
}
