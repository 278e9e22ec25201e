package io.pitchwatch.floor;

/**
 * The kinds of noise a parked coach shows, and how much of each explains what was seen.
 *
 * <p>A block is the chip's white noise, plus rocking (a damped line near 1.2 Hz, as of footsteps
 * and wind) that averages out at once, plus at most one slow wander, as of people who move about:
 * smooth (correlation exp(−t²/2τ²)) or jumpy (exp(−|t|/τ)). Every combination on a coarse grid of
 * strengths predicts the energies of {@link HaarEnergies}; its likelihood is that of independent χ²
 * variables; the strengths are averaged over the combinations by their posterior probability
 * (docs/physics.md section 2 derives it). An average over models states an honest error where the
 * best single model would be too sure of itself.
 */
final class NoiseMixture {

  /** Longest mean whose variance is tabulated, blocks. */
  static final int LONGEST = 300;

  private static final int WHITE = 0;
  private static final int ROCK = 1;
  private static final int SLOW = 2;
  private static final int KINDS = 7;
  private static final double[] ROCK_LEVELS = {0, 3, 30, 300, 3000};
  private static final double[] SLOW_LEVELS = {
    1. / 16, 1. / 4, 1, 4, 16, 64, 256, 1024, 4096, 16384
  };

  /** How likely nothing rocks. */
  private static final double CALM_PRIOR = 0.6;

  /** How likely nobody wanders, when nothing heaves the floor and when something does. */
  private static final double STILL_PRIOR = 0.98;

  private static final double LIVELY_PRIOR = 0.3;
  private static final double PEOPLE_PRIOR = 0.1;

  /**
   * What people who move about make of a coach's lean is known before it is seen: a person of 75 kg
   * leans a coach of ten tonnes by some hundredths of a degree. Variance of that, g², and how far
   * it may be off, in logarithms. Our own figures. Without it a noisy chip, which sees nothing of
   * people in its first ten seconds, would not reckon with them.
   */
  private static final double PEOPLE_LOG_G2 = 2 * Math.log(0.5e-3);

  private static final double PEOPLE_SPREAD = 1.5;
  private static final double ROCK_HZ = 1.2;
  private static final double ROCK_DECAY_S = 0.27;

  /** Overlapping scales share their samples: together they know about half of the sum. */
  private static final double SHARED = 0.5;

  /** The levels share what is known of people: the density of a normal law on their grid. */
  private static final double LEVEL_SHARE =
      Math.log(SLOW_LEVELS.length * Math.log(4) / (PEOPLE_SPREAD * Math.sqrt(2 * Math.PI)));

  private static final double NEGLIGIBLE = -30;

  private static final double[][] ENERGY = new double[KINDS][HaarEnergies.SCALES];
  private static final double[][] MEAN_VARIANCE = new double[KINDS][LONGEST + 1];

  static {
    for (int kind = 0; kind < KINDS; kind++) {
      for (int scale = 0; scale < HaarEnergies.SCALES; scale++) {
        ENERGY[kind][scale] = haarEnergy(kind, 1 << scale);
      }
      tabulateMeans(kind);
    }
  }

  /** What to expect before anything is seen. */
  enum Expecting {
    /** Nobody about. */
    STILLNESS,
    /** Somebody may wander, by any amount. */
    WANDERING,
    /** Somebody wanders about as people do. */
    PEOPLE
  }

  private final int models = ROCK_LEVELS.length * (1 + (KINDS - SLOW) * SLOW_LEVELS.length);
  private final int[] slowKind = new int[models];
  private final double[] slowLevel = new double[models];
  private final double[] rockLevel = new double[models];
  private final double[] stillPrior = new double[models];
  private final double[] livelyPrior = new double[models];
  private final double[] peoplePrior = new double[models];
  private final double[] slowLog = new double[models];
  private final double[] inverse = new double[models * HaarEnergies.SCALES];
  private final double[] log = new double[models * HaarEnergies.SCALES];
  private final double[] freedom = new double[HaarEnergies.SCALES];
  private final double[] weighted = new double[HaarEnergies.SCALES];
  private final double[] fit = new double[models];
  private final double[] scaled = new double[models];

  NoiseMixture() {
    int m = 0;
    for (double rock : ROCK_LEVELS) {
      define(m++, SLOW, 0, rock);
      for (int kind = SLOW; kind < KINDS; kind++) {
        for (double level : SLOW_LEVELS) {
          define(m++, kind, level, rock);
        }
      }
    }
  }

  private static double logPrior(double slow, double rock, double still) {
    double shake = rock > 0 ? (1 - CALM_PRIOR) / (ROCK_LEVELS.length - 1) : CALM_PRIOR;
    double wander = slow > 0 ? (1 - still) / ((KINDS - SLOW) * SLOW_LEVELS.length) : still;
    return Math.log(shake * wander);
  }

  private void define(int m, int kind, double slow, double rock) {
    slowKind[m] = kind;
    slowLevel[m] = slow;
    rockLevel[m] = rock;
    stillPrior[m] = logPrior(slow, rock, STILL_PRIOR);
    livelyPrior[m] = logPrior(slow, rock, LIVELY_PRIOR);
    peoplePrior[m] = logPrior(slow, rock, PEOPLE_PRIOR);
    slowLog[m] = Math.log(slow);
    for (int j = 0; j < HaarEnergies.SCALES; j++) {
      double energy = ENERGY[WHITE][j] + rock * ENERGY[ROCK][j] + slow * ENERGY[kind][j];
      inverse[m * HaarEnergies.SCALES + j] = 1 / energy;
      log[m * HaarEnergies.SCALES + j] = Math.log(energy);
    }
  }

  /** What white noise with unit variance of 0.2 s means shows at each scale. */
  static double[] whiteEnergies() {
    return ENERGY[WHITE].clone();
  }

  /** Number of strengths that {@link #explain} writes. */
  static int kinds() {
    return KINDS;
  }

  /**
   * Explains the energies.
   *
   * @param seen energies and their degrees of freedom
   * @param leastWhite variance of a 0.2 s mean due to the chip alone, g²: less is not believed
   * @param expecting what is likely, by what heaves the floor
   * @param strength receives the variance of each kind, g²
   */
  void explain(HaarEnergies seen, double leastWhite, Expecting expecting, double[] strength) {
    double[] prior =
        switch (expecting) {
          case STILLNESS -> stillPrior;
          case WANDERING -> livelyPrior;
          case PEOPLE -> peoplePrior;
        };
    double total = 0;
    for (int j = 0; j < HaarEnergies.SCALES; j++) {
      freedom[j] = SHARED * seen.freedom(j);
      weighted[j] = freedom[j] * seen.energy(j);
      total += freedom[j];
    }
    double best = Double.NEGATIVE_INFINITY;
    for (int m = 0; m < models; m++) {
      int at = m * HaarEnergies.SCALES;
      double chi = 0;
      double logs = 0;
      for (int j = 0; j < HaarEnergies.SCALES; j++) {
        chi += weighted[j] * inverse[at + j];
        logs += freedom[j] * log[at + j];
      }
      double white = total > 0 ? Math.max(chi / total, leastWhite) : leastWhite;
      scaled[m] = white;
      double whiteLog = Math.log(white);
      fit[m] = prior[m] - 0.5 * (logs + total * whiteLog + chi / white);
      if (expecting == Expecting.PEOPLE && slowLevel[m] > 0) {
        double off = (slowLog[m] + whiteLog - PEOPLE_LOG_G2) / PEOPLE_SPREAD;
        fit[m] += LEVEL_SHARE - 0.5 * off * off;
      }
      best = Math.max(best, fit[m]);
    }
    average(best, strength);
  }

  private void average(double best, double[] strength) {
    java.util.Arrays.fill(strength, 0);
    double sum = 0;
    for (int m = 0; m < models; m++) {
      double apart = fit[m] - best;
      if (apart < NEGLIGIBLE) {
        continue;
      }
      double p = Math.exp(apart);
      sum += p;
      strength[WHITE] += p * scaled[m];
      strength[ROCK] += p * scaled[m] * rockLevel[m];
      strength[slowKind[m]] += p * scaled[m] * slowLevel[m];
    }
    for (int kind = 0; kind < KINDS; kind++) {
      strength[kind] /= sum;
    }
  }

  /**
   * Variance of the mean of neighbouring blocks, g².
   *
   * @param strength as {@link #explain} wrote it
   * @param blocks how many, 1 to {@link #LONGEST}
   */
  static double meanVariance(double[] strength, int blocks) {
    double sum = 0;
    for (int kind = 0; kind < KINDS; kind++) {
      sum += strength[kind] * MEAN_VARIANCE[kind][blocks];
    }
    return sum;
  }

  /** Autocovariance of smooth blocks, unit variance of what the kind is measured by. */
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

  /** Expected square of the difference of neighbouring means of m blocks. */
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
