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

  /** Footsteps show best between neighbouring blocks. */
  private static final int HEAVE_SCALE = 0;

  /**
   * Above this people are about: a mean is then not called surer than they leave it; but a change
   * of lean is still looked for by what was really seen, lest jacks pass for people. The axis that
   * points up may be half as noisy again as the others.
   */
  private static final double LIVELY = 4;

  /**
   * People who walk heave the floor by a milligram or more: a quiet chip that sees but a tenth of
   * that sees its own noise. Our own figure.
   */
  private static final double FELT_G2 = 1e-8;

  private static final Expecting[] PEOPLE = {Expecting.PEOPLE_ALONG, Expecting.PEOPLE_ACROSS};

  private final NoiseMixture mixture;
  private final HaarEnergies[] energies = new HaarEnergies[3];
  private final double heaveG2;
  private final Explanation[] careful = new Explanation[2];
  private final Explanation[] seen = new Explanation[2];
  private int sinceLearned;
  private int taken;

  /**
   * @param hopVariance variance of a 0.2 s mean due to the chip alone, g²
   */
  Restlessness(double hopVariance) {
    mixture = new NoiseMixture(hopVariance);
    double[] prior = new double[HaarEnergies.SCALES];
    for (int j = 0; j < prior.length; j++) {
      prior[j] = hopVariance * NoiseKinds.energy(NoiseKinds.WHITE, j);
    }
    for (int axis = 0; axis < 3; axis++) {
      energies[axis] = new HaarEnergies(prior);
    }
    for (int axis = 0; axis < 2; axis++) {
      seen[axis] = new Explanation(NoiseMixture.MODELS);
      careful[axis] = new Explanation(NoiseMixture.MODELS);
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
    boolean lively = heaves > Math.max(FELT_G2, LIVELY * heaveG2);
    for (int axis = 0; axis < 2; axis++) {
      Expecting likely = lively ? Expecting.WANDERING : Expecting.STILLNESS;
      mixture.explain(energies[axis], likely, seen[axis]);
      mixture.explain(energies[axis], lively ? PEOPLE[axis] : likely, careful[axis]);
    }
  }

  /**
   * Variance of the mean of that many blocks, as far as one should call oneself sure of it: two
   * standard errors cover 95 in a hundred errors, g².
   */
  double statedVariance(int axis, int blocks) {
    return careful[axis].coveringVariance(blocks);
  }

  /** Variance of the mean of that many blocks, g². */
  double meanVariance(int axis, int blocks) {
    return seen[axis].variance(blocks);
  }

  /** Variance of one block, g². */
  double blockVariance(int axis) {
    return seen[axis].variance(1);
  }
}
