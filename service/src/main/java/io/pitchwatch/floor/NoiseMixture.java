package io.pitchwatch.floor;

/**
 * How much of each of the {@link NoiseKinds} explains what was seen of one axis.
 *
 * <p>A block is the chip's white noise, plus rocking, plus at most one slow wander. Every
 * combination on a coarse grid of strengths predicts the energies of {@link HaarEnergies}; its
 * likelihood is that of independent χ² variables, the white noise being known beforehand from the
 * data sheet as if from {@link #KNOWN} of them (docs/physics.md section 2 says more). All are kept
 * with their posterior probabilities: the best one alone would be too sure of itself.
 */
final class NoiseMixture {

  private static final double[] ROCK_LEVELS = {0, 3, 30, 300, 3000};
  private static final double[] SLOW_LEVELS = {
    1. / 16, 1. / 4, 1, 4, 16, 64, 256, 1024, 4096, 16384
  };
  private static final int SLOW_KINDS = NoiseKinds.COUNT - NoiseKinds.SLOW;

  /** How many combinations there are. */
  static final int MODELS = ROCK_LEVELS.length * (1 + SLOW_KINDS * SLOW_LEVELS.length);

  /** How likely nothing rocks. */
  private static final double CALM_PRIOR = 0.6;

  /** How likely nobody wanders, when nothing heaves the floor and when something does. */
  private static final double STILL_PRIOR = 0.98;

  private static final double LIVELY_PRIOR = 0.3;
  private static final double PEOPLE_PRIOR = 0.1;

  /**
   * What people who move about make of a coach's lean is known before it is seen: a person of 75 kg
   * leans a coach of ten tonnes by some hundredths of a degree side to side, and by half of that
   * front to back. Variance of that, g², and how far it may be off, in logarithms. Our own figures.
   * Without it a noisy chip, which sees nothing of people in its first ten seconds, would not
   * reckon with them.
   */
  private static final double PEOPLE_ACROSS_LOG_G2 = 2 * Math.log(0.5e-3);

  private static final double PEOPLE_ALONG_LOG_G2 = 2 * Math.log(0.25e-3);
  private static final double PEOPLE_SPREAD = 1.5;

  /**
   * What the data sheet says of the chip's noise is worth so many degrees of freedom: parts differ
   * from it by a third of the variance or so.
   */
  private static final double KNOWN = 20;

  /** Overlapping scales share their samples: together they know about half of the sum. */
  private static final double SHARED = 0.5;

  /** No kind of noise is like its model to better than a third of an energy. */
  private static final double ALIKE = 20;

  /** Differences that follow within this time may be one and the same step of somebody, s. */
  private static final double STEP_S = 1;

  /** The levels share what is known of people: the density of a normal law on their grid. */
  private static final double LEVEL_SHARE =
      Math.log(SLOW_LEVELS.length * Math.log(4) / (PEOPLE_SPREAD * Math.sqrt(2 * Math.PI)));

  private static final double NEGLIGIBLE = -30;

  /** What to expect before anything is seen. */
  enum Expecting {
    /** Nobody about. */
    STILLNESS(STILL_PRIOR, Double.NaN),
    /** Somebody may wander, by any amount. */
    WANDERING(LIVELY_PRIOR, Double.NaN),
    /** Somebody wanders about as people do; seen along the coach. */
    PEOPLE_ALONG(PEOPLE_PRIOR, PEOPLE_ALONG_LOG_G2),
    /** The same, seen across it. */
    PEOPLE_ACROSS(PEOPLE_PRIOR, PEOPLE_ACROSS_LOG_G2);

    private final double still;
    private final double wanderLogG2;

    Expecting(double still, double wanderLogG2) {
      this.still = still;
      this.wanderLogG2 = wanderLogG2;
    }
  }

  private final double chipWhite;
  private final int[] slowKind = new int[MODELS];
  private final double[] slowLevel = new double[MODELS];
  private final double[] rockLevel = new double[MODELS];
  private final double[] slowLog = new double[MODELS];
  private final double[] inverse = new double[MODELS * HaarEnergies.SCALES];
  private final double[] log = new double[MODELS * HaarEnergies.SCALES];
  private final double[] freedom = new double[HaarEnergies.SCALES];
  private final double[] weighted = new double[HaarEnergies.SCALES];
  private final double[] fit = new double[MODELS];
  private final double[] white = new double[MODELS];

  /**
   * @param chipWhite variance of a 0.2 s mean due to the chip alone, g², by its data sheet
   */
  NoiseMixture(double chipWhite) {
    this.chipWhite = chipWhite;
    int m = 0;
    for (double rock : ROCK_LEVELS) {
      define(m++, NoiseKinds.SLOW, 0, rock);
      for (int kind = NoiseKinds.SLOW; kind < NoiseKinds.COUNT; kind++) {
        for (double level : SLOW_LEVELS) {
          define(m++, kind, level, rock);
        }
      }
    }
  }

  private void define(int m, int kind, double slow, double rock) {
    slowKind[m] = kind;
    slowLevel[m] = slow;
    rockLevel[m] = rock;
    slowLog[m] = Math.log(slow);
    for (int j = 0; j < HaarEnergies.SCALES; j++) {
      double energy =
          NoiseKinds.energy(NoiseKinds.WHITE, j)
              + rock * NoiseKinds.energy(NoiseKinds.ROCK, j)
              + slow * NoiseKinds.energy(kind, j);
      inverse[m * HaarEnergies.SCALES + j] = 1 / energy;
      log[m * HaarEnergies.SCALES + j] = Math.log(energy);
    }
  }

  /**
   * Explains the energies.
   *
   * @param seen energies and their degrees of freedom
   * @param expecting what is likely, by what heaves the floor
   * @param into receives the combinations
   */
  void explain(HaarEnergies seen, Expecting expecting, Explanation into) {
    double total = 0;
    for (int j = 0; j < HaarEnergies.SCALES; j++) {
      freedom[j] = believed(seen, j);
      weighted[j] = freedom[j] * seen.energy(j);
      total += freedom[j];
    }
    double best = Double.NEGATIVE_INFINITY;
    for (int m = 0; m < MODELS; m++) {
      int at = m * HaarEnergies.SCALES;
      double chi = KNOWN * chipWhite;
      double logs = 0;
      for (int j = 0; j < HaarEnergies.SCALES; j++) {
        chi += weighted[j] * inverse[at + j];
        logs += freedom[j] * log[at + j];
      }
      white[m] = chi / (KNOWN + total);
      double whiteLog = Math.log(white[m]);
      fit[m] = logPrior(m, whiteLog, expecting) - 0.5 * (logs + (KNOWN + total) * whiteLog);
      best = Math.max(best, fit[m]);
    }
    share(best, into);
  }

  /** Degrees of freedom of an energy, as far as it tells one combination from another. */
  private static double believed(HaarEnergies seen, int scale) {
    double free = SHARED * seen.freedom(scale);
    return free == 0 ? 0 : 1 / (1 / free + 1 / ALIKE + STEP_S / seen.seconds());
  }

  private double logPrior(int m, double whiteLog, Expecting expecting) {
    boolean rocks = rockLevel[m] > 0;
    double shake = rocks ? (1 - CALM_PRIOR) / (ROCK_LEVELS.length - 1) : CALM_PRIOR;
    if (slowLevel[m] == 0) {
      return Math.log(shake * expecting.still);
    }
    double wander = (1 - expecting.still) / (SLOW_KINDS * SLOW_LEVELS.length);
    double prior = Math.log(shake * wander);
    if (Double.isNaN(expecting.wanderLogG2)) {
      return prior;
    }
    double off = (slowLog[m] + whiteLog - expecting.wanderLogG2) / PEOPLE_SPREAD;
    return prior + LEVEL_SHARE - 0.5 * off * off;
  }

  private void share(double best, Explanation into) {
    double sum = 0;
    for (int m = 0; m < MODELS; m++) {
      double apart = fit[m] - best;
      fit[m] = apart < NEGLIGIBLE ? 0 : Math.exp(apart);
      sum += fit[m];
    }
    into.clear();
    for (int m = 0; m < MODELS; m++) {
      if (fit[m] > 0) {
        double w = white[m];
        into.add(fit[m] / sum, w, w * rockLevel[m], slowKind[m], w * slowLevel[m]);
      }
    }
  }
}
