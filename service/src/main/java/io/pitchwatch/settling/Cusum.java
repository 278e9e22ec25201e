package io.pitchwatch.settling;

/**
 * One side of a tabular cumulative sum: S ← max(0, S + z − k), a signal above h.
 *
 * <p>E. S. Page, Continuous inspection schemes, Biometrika 41 (1954); NIST/SEMATECH e-Handbook of
 * Statistical Methods, section 6.3.2.3.
 */
final class Cusum {

  private final double allowance;
  private final double threshold;
  private double sum;
  private long sinceNanos;

  /**
   * An empty sum.
   *
   * @param allowance k, what each value must exceed to count, in units of the values
   * @param threshold h, above which it signals, same unit
   */
  Cusum(double allowance, double threshold) {
    this.allowance = allowance;
    this.threshold = threshold;
  }

  /**
   * Adds a value.
   *
   * @param value the deviation towards this side
   * @param fromNanos monotonic time at which the value's interval begins: the onset, should the sum
   *     leave zero with it
   */
  void add(double value, long fromNanos) {
    if (sum == 0) {
      sinceNanos = fromNanos;
    }
    sum = Math.max(0, sum + value - allowance);
  }

  void reset() {
    sum = 0;
  }

  double sum() {
    return sum;
  }

  /** The last time the sum left zero: the estimate of when the change began. */
  long sinceNanos() {
    return sinceNanos;
  }

  boolean signals() {
    return sum > threshold;
  }
}
