package io.pitchwatch.settling;

import java.util.Arrays;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.special.Erf;

/**
 * Average run length of one side of a cumulative sum: how many values until it signals.
 *
 * <p>The values are normal with unit variance around a shift, cut off at ± a clip. The exact figure
 * comes from a Markov chain over slices of the sum (D. Brook, D. A. Evans, An approach to the
 * probability distribution of CUSUM run length, Biometrika 59 (1972)); for values without a clip
 * there is D. Siegmund's formula (Sequential Analysis, 1985), which serves as a check and a start.
 */
final class RunLength {

  /** Slices of the chain: a hundred are within 1 % of four hundred. */
  private static final int SLICES = 100;

  /** What Siegmund adds to the threshold, for the overshoot of a sum of normal values. */
  private static final double OVERSHOOT = 1.166;

  private static final int HALVINGS = 30;

  /** A sum that as good as never signals makes the chain's system as good as singular. */
  private static final double NOT_QUITE_SINGULAR = 1e-300;

  private RunLength() {}

  /**
   * Siegmund's approximation, without a clip.
   *
   * @param allowance k
   * @param threshold h
   * @param shift mean of the values
   */
  static double siegmund(double allowance, double threshold, double shift) {
    double b = threshold + OVERSHOOT;
    double delta = shift - allowance;
    if (Math.abs(delta) < 1e-9) {
      return b * b;
    }
    return (Math.expm1(-2 * delta * b) + 2 * delta * b) / (2 * delta * delta);
  }

  /** Both sides together, each of which signals on its own. */
  static double either(double one, double other) {
    return 1 / (1 / one + 1 / other);
  }

  /**
   * The chain's figure, from an empty sum; infinite where it is beyond the reach of a double.
   *
   * @param allowance k
   * @param threshold h
   * @param shift mean of the values before they are cut off
   * @param clip where they are cut off; may be infinite
   */
  static double markov(double allowance, double threshold, double shift, double clip) {
    return markov(allowance, threshold, shift, clip, SLICES);
  }

  static double markov(double allowance, double threshold, double shift, double clip, int slices) {
    // Slice 0 holds the sums below half a width, slice i those within half a width of i widths.
    double width = 2 * threshold / (2 * slices - 1);
    Array2DRowRealMatrix system = new Array2DRowRealMatrix(slices, slices);
    for (int i = 0; i < slices; i++) {
      double below = 0;
      for (int j = 0; j < slices; j++) {
        double upTo = below((j - i + 0.5) * width + allowance, shift, clip);
        system.setEntry(i, j, (i == j ? 1 : 0) - (upTo - below));
        below = upTo;
      }
    }
    double[] ones = new double[slices];
    Arrays.fill(ones, 1);
    double runLength =
        new LUDecomposition(system, NOT_QUITE_SINGULAR)
            .getSolver()
            .solve(new ArrayRealVector(ones))
            .getEntry(0);
    return runLength > 0 ? runLength : Double.POSITIVE_INFINITY;
  }

  /**
   * The threshold that gives a run length while nothing is shifted.
   *
   * @param allowance k
   * @param clip where values are cut off; may be infinite
   * @param runLength the run length wanted, more than 1
   */
  static double thresholdFor(double allowance, double clip, double runLength) {
    double low = 0.1;
    double high = 1;
    while (markov(allowance, high, 0, clip) < runLength) {
      high *= 2;
    }
    for (int i = 0; i < HALVINGS && high - low > 1e-4; i++) {
      double middle = (low + high) / 2;
      if (markov(allowance, middle, 0, clip) < runLength) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return high;
  }

  /** Share of values below a bound. */
  private static double below(double bound, double shift, double clip) {
    if (bound < -clip) {
      return 0;
    }
    return bound >= clip ? 1 : 0.5 * Erf.erfc((shift - bound) / Math.sqrt(2));
  }
}
