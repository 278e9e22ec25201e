package io.pitchwatch.settling;

import java.util.Arrays;
import org.hipparchus.special.Erf;

/**
 * The median of the slopes between all pairs of points, which a quarter of wild points does not
 * move: P. K. Sen, Estimates of the regression coefficient based on Kendall's tau, Journal of the
 * American Statistical Association 63 (1968).
 *
 * @param slope the median slope
 * @param intercept median of y − slope·x
 * @param lowerSlope lower limit of the slope, for independent points
 * @param upperSlope upper limit
 */
record TheilSen(double slope, double intercept, double lowerSlope, double upperSlope) {

  /**
   * Fits the first so many points.
   *
   * @param x abscissae, no two alike
   * @param y ordinates
   * @param count how many of them, at least 2
   * @param confidence of the two limits, 0 to 1
   * @throws IllegalArgumentException if there are fewer than two points
   */
  static TheilSen of(double[] x, double[] y, int count, double confidence) {
    if (count < 2) {
      throw new IllegalArgumentException("count is " + count + "; it must be 2 or more");
    }
    int pairs = count * (count - 1) / 2;
    double[] slopes = new double[pairs];
    int k = 0;
    for (int i = 0; i < count; i++) {
      for (int j = 0; j < i; j++) {
        slopes[k++] = (y[i] - y[j]) / (x[i] - x[j]);
      }
    }
    Arrays.sort(slopes);
    double slope = median(slopes);
    double[] rests = new double[count];
    for (int i = 0; i < count; i++) {
      rests[i] = y[i] - slope * x[i];
    }
    Arrays.sort(rests);
    double z = Math.sqrt(2) * Erf.erfInv(confidence);
    double spread = z * Math.sqrt(count * (count - 1) * (2.0 * count + 5) / 18);
    int lower = (int) Math.max(Math.round((pairs - spread) / 2) - 1, 0);
    int upper = (int) Math.min(Math.round((pairs + spread) / 2), pairs - 1);
    return new TheilSen(slope, median(rests), slopes[lower], slopes[upper]);
  }

  private static double median(double[] sorted) {
    int n = sorted.length;
    return (sorted[(n - 1) / 2] + sorted[n / 2]) / 2;
  }
}
