package io.pitchwatch.floor;

import io.pitchwatch.floor.NoiseMixture.Expecting;

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

  /**
   * Above this people may be about. A mean is then not called surer than they leave it; but a
   * change of lean is still looked for by what was really seen, lest jacks pass for people.
   */
  private static final double PERHAPS_LIVELY = 2.4;

  /**
   * People who walk heave the floor by a milligram or more: a quiet chip that sees but a tenth of
   * that sees its own noise. Our own figure.
   */
  private static final double FELT_G2 = 1e-8;

  private final double leastWhite;
  private final NoiseMixture mixture = new NoiseMixture();
  private final HaarEnergies[] energies = new HaarEnergies[3];
  private final double heaveG2;
  private final double[][] stated = new double[2][NoiseMixture.kinds()];
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
    heaveG2 = prior[HEAVE_SCALE];
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
    double heaves = energies[2].energy(HEAVE_SCALE);
    double heave = heaves > FELT_G2 ? heaves / heaveG2 : 0;
    Expecting seen = heave > LIVELY ? Expecting.WANDERING : Expecting.STILLNESS;
    Expecting careful = heave > PERHAPS_LIVELY ? Expecting.PEOPLE : Expecting.STILLNESS;
    for (int axis = 0; axis < 2; axis++) {
      mixture.explain(energies[axis], leastWhite, seen, strength[axis]);
      mixture.explain(energies[axis], leastWhite, careful, stated[axis]);
    }
  }

  /** The same, as far as one should call oneself sure of it, g². */
  double statedVariance(int axis, int blocks) {
    return NoiseMixture.meanVariance(stated[axis], blocks);
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
