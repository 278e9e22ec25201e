package io.pitchwatch.floor;

import java.util.Arrays;
import org.hipparchus.special.Erf;

/**
 * What was seen of one axis, explained: how likely each combination of noises is, and how strong,
 * and what that leaves of a mean.
 *
 * <p>Two answers are given. The variance is the average over the combinations. The covering
 * variance is that of a normal law which leaves as many errors outside two standard deviations as
 * the combinations together do, one in 22: an unlikely great noise raises the variance a good deal
 * and hardly any error, so that the root of the variance would be too large a standard error.
 */
final class Explanation {

  /** Of normal errors, the share outside two standard deviations. */
  private static final double OUTSIDE = Erf.erfc(Math.sqrt(2));

  /** Combinations that together are less likely than this matter to no error. */
  private static final double NEGLIGIBLE = 1e-6;

  private static final double TAIL_STEP = 0.01;
  private static final double[] TAIL = new double[601];
  private static final int HALVINGS = 16;

  static {
    for (int i = 0; i < TAIL.length; i++) {
      TAIL[i] = Erf.erfc(i * TAIL_STEP / Math.sqrt(2));
    }
  }

  private final double[] strength = new double[NoiseKinds.COUNT];
  private final double[] probability;
  private final double[][] strengths;
  private final double[] deviation;
  private int models;
  private int coveredBlocks;
  private double covering;

  /**
   * @param most combinations at once
   */
  Explanation(int most) {
    probability = new double[most];
    strengths = new double[most][NoiseKinds.COUNT];
    deviation = new double[most];
  }

  /** Forgets everything, before combinations are added. */
  void clear() {
    models = 0;
    coveredBlocks = 0;
    Arrays.fill(strength, 0);
  }

  /**
   * Adds a combination.
   *
   * @param p its probability
   * @param whiteG2 variance of its white noise, g²
   * @param rockG2 variance of its rocking, g²
   * @param slowKind which of the wanders it has
   * @param slowG2 variance of that, g²
   */
  void add(double p, double whiteG2, double rockG2, int slowKind, double slowG2) {
    strength[NoiseKinds.WHITE] += p * whiteG2;
    strength[NoiseKinds.ROCK] += p * rockG2;
    strength[slowKind] += p * slowG2;
    if (p < NEGLIGIBLE) {
      return;
    }
    double[] own = strengths[models];
    Arrays.fill(own, 0);
    own[NoiseKinds.WHITE] = whiteG2;
    own[NoiseKinds.ROCK] = rockG2;
    own[slowKind] = slowG2;
    probability[models++] = p;
  }

  /**
   * Variance of the mean of neighbouring blocks, g².
   *
   * @param blocks how many, 1 to {@link NoiseKinds#LONGEST}
   */
  double variance(int blocks) {
    return variance(strength, blocks);
  }

  /** The same, as two standard errors are to cover 95 in a hundred errors, g². */
  double coveringVariance(int blocks) {
    if (blocks != coveredBlocks) {
      coveredBlocks = blocks;
      covering = cover(blocks);
    }
    return covering;
  }

  private static double variance(double[] strength, int blocks) {
    double sum = 0;
    for (int kind = 0; kind < NoiseKinds.COUNT; kind++) {
      sum += strength[kind] * NoiseKinds.meanVariance(kind, blocks);
    }
    return sum;
  }

  private double cover(int blocks) {
    double low = Double.MAX_VALUE;
    double high = 0;
    for (int m = 0; m < models; m++) {
      deviation[m] = Math.sqrt(variance(strengths[m], blocks));
      low = Math.min(low, deviation[m]);
      high = Math.max(high, deviation[m]);
    }
    for (int i = 0; i < HALVINGS; i++) {
      double middle = Math.sqrt(low * high);
      if (outside(2 * middle) > OUTSIDE) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low * high;
  }

  /** Share of errors beyond a limit, g. */
  private double outside(double limitG) {
    double sum = 0;
    for (int m = 0; m < models; m++) {
      double at = limitG / deviation[m] / TAIL_STEP;
      int i = (int) at;
      if (i + 1 < TAIL.length) {
        sum += probability[m] * (TAIL[i] + (at - i) * (TAIL[i + 1] - TAIL[i]));
      }
    }
    return sum;
  }
}
