package io.pitchwatch.floor;

import java.util.Arrays;

/**
 * Weighted mean without the wild values: those farther than 4.5 standard deviations of the tame
 * ones from their mean. Tame, to begin with, is what lies within 4.5 scales of the middle of the
 * shortest half, the shortest interval that holds half of the values (P. J. Rousseeuw and A. M.
 * Leroy, Robust Regression and Outlier Detection, 1987, from memory); half its length is the scale.
 *
 * <p>Wild values that all lie on one side pull a median towards them, but leave the shortest half
 * where it is until they outnumber the tame. Tame values are averaged linearly, so that an engine's
 * line stays a line; an M-estimate would be pulled by a lopsided vibration.
 */
final class RobustMean {

  private static final double CUTOFF = 4.5;
  private static final double HALF_TO_SIGMA = 1.4826;

  private final double[] scratch;
  private final double noiseScale;
  private final Rhythm rhythm;
  private double spread;
  private double share;

  /**
   * @param capacity most values at once
   * @param noiseScale standard deviation of values that the chip alone makes; the scale is not
   *     taken below this, so that rounding to counts cannot make it 0
   */
  RobustMean(int capacity, double noiseScale) {
    this.noiseScale = noiseScale;
    scratch = new double[capacity];
    rhythm = new Rhythm(capacity);
  }

  /**
   * The mean of the first {@code n} values.
   *
   * @param v values, none NaN
   * @param w weights, 0 or more, not all 0
   * @param n how many, at least 1
   */
  double of(double[] v, double[] w, int n) {
    System.arraycopy(v, 0, scratch, 0, n);
    Arrays.sort(scratch, 0, n);
    int half = n / 2;
    int best = 0;
    double shortest = scratch[half] - scratch[0];
    for (int i = 1; i + half < n; i++) {
      double length = scratch[i + half] - scratch[i];
      if (length < shortest) {
        shortest = length;
        best = i;
      }
    }
    double scale = HALF_TO_SIGMA * 0.5 * shortest;
    double middle = 0.5 * (scratch[best] + scratch[best + half]);
    double first = near(v, w, n, middle, CUTOFF * Math.max(scale, noiseScale));
    double reach = CUTOFF * Math.max(spread, noiseScale);
    double mean = near(v, w, n, first, reach);
    double vibration = share < 1 ? rhythm.reach(v, n, first, reach) : 0;
    return vibration > 0 ? near(v, w, n, first, vibration) : mean;
  }

  private double near(double[] v, double[] w, int n, double middle, double reach) {
    double sum = 0;
    double weights = 0;
    double total = 0;
    double squares = 0;
    int kept = 0;
    for (int i = 0; i < n; i++) {
      double d = v[i] - middle;
      if (Math.abs(d) < reach) {
        sum += w[i] * d;
        weights += w[i];
        total += d;
        squares += d * d;
        kept++;
      }
    }
    share = kept / (double) n;
    spread = kept > 1 ? Math.sqrt(Math.max(0, squares - total * total / kept) / (kept - 1)) : 0;
    return weights > 0 ? middle + sum / weights : middle;
  }

  /** Share of the values that were tame, at the last call. */
  double share() {
    return share;
  }

  /** Standard deviation of the values within reach, at the last call. */
  double spread() {
    return spread;
  }

  /**
   * The median, by Hoare's selection: the upper of the two middle values when n is even.
   *
   * @param a values; reordered
   * @param n how many, at least 1
   */
  static double median(double[] a, int n) {
    int k = n / 2;
    int low = 0;
    int high = n - 1;
    while (low < high) {
      double pivot = a[(low + high) >>> 1];
      int i = low;
      int j = high;
      while (i <= j) {
        while (a[i] < pivot) {
          i++;
        }
        while (a[j] > pivot) {
          j--;
        }
        if (i <= j) {
          double swap = a[i];
          a[i++] = a[j];
          a[j--] = swap;
        }
      }
      if (k <= j) {
        high = j;
      } else if (k >= i) {
        low = i;
      } else {
        break;
      }
    }
    return a[k];
  }
}
