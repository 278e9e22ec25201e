package io.pitchwatch.sensing;

/**
 * Tells when a chip took its samples, from how many were there at each look.
 *
 * <p>A chip samples by its own oscillator, some percent off the host's, and hands samples over in
 * bunches. What each look proves is a bracket: the newest sample was taken before it, the one to
 * come after it. So the newest lies within one period before the look; the reconstructed times run
 * on at the measured period and are moved only as far as the bracket demands. The period is the
 * number of samples over the time they took, over a window that grows to twenty minutes.
 */
final class SampleClock {

  /** The sample after the look may already be there when the bus is slow: part of a period. */
  private static final double SLACK = 0.25;

  private static final long WINDOW_NANOS = 600_000_000_000L;
  private static final int FIRST_ESTIMATE = 200;

  private final double nominalNanos;
  private double periodNanos;
  private boolean measured;

  private boolean running;
  private double lastNanos = Double.NEGATIVE_INFINITY;
  private double stepNanos;

  private long windowFrom;
  private long windowCount;
  private long middleAt;
  private long middleCount;

  /**
   * A clock for one chip.
   *
   * @param nominalNanos the datasheet's time between samples, nanoseconds
   */
  SampleClock(double nominalNanos) {
    this.nominalNanos = nominalNanos;
    this.periodNanos = nominalNanos;
  }

  /** Forgets where in time the samples are, as after a restart; keeps the measured period. */
  void restart() {
    running = false;
  }

  /**
   * Takes note of a look at the chip.
   *
   * @param count how many samples were there since the last look
   * @param nowNanos host's monotonic time just before the look
   * @return whether they follow on from the last ones; false if samples must be missing between
   */
  boolean look(int count, long nowNanos) {
    if (!running) {
      return count == 0 || begin(count, nowNanos);
    }
    double predicted = lastNanos + count * periodNanos;
    double late = nowNanos - periodNanos - predicted;
    double tolerance = (nowNanos - lastNanos) * (measured ? 0.01 : 0.15);
    if (late > tolerance + 2 * periodNanos) {
      running = false;
      if (count > 0) {
        begin(count, nowNanos);
      }
      return false;
    }
    measure(count, nowNanos);
    double early = predicted - nowNanos - SLACK * periodNanos;
    double shift = late > 0 ? late : Math.min(0, -early);
    stepNanos = count == 0 ? periodNanos : periodNanos + shift / count;
    return true;
  }

  private boolean begin(int count, long nowNanos) {
    double newest = nowNanos - periodNanos / 2;
    double before = Math.max(newest - count * periodNanos, lastNanos);
    stepNanos = Math.max((newest - before) / count, 1);
    lastNanos = before;
    running = true;
    windowFrom = nowNanos;
    windowCount = 0;
    middleAt = nowNanos;
    middleCount = 0;
    return true;
  }

  private void measure(int count, long nowNanos) {
    windowCount += count;
    if (windowCount >= FIRST_ESTIMATE) {
      periodNanos = (double) (nowNanos - windowFrom) / windowCount;
      measured = true;
    }
    if (nowNanos - middleAt >= WINDOW_NANOS) {
      windowCount -= middleCount;
      windowFrom = middleAt;
      middleCount = windowCount;
      middleAt = nowNanos;
    }
  }

  /** Time of the next of the samples seen at the last look, host's monotonic nanoseconds. */
  long next() {
    long before = (long) lastNanos;
    lastNanos += Math.max(stepNanos, 1);
    return Math.max((long) lastNanos, before + 1);
  }

  /** Samples a second by the host's clock; nominal until some hundred were counted. */
  double rateHz() {
    return 1e9 / periodNanos;
  }

  /** How much faster the chip samples than its datasheet says: 0.02 is 2 % faster. */
  double drift() {
    return nominalNanos / periodNanos - 1;
  }
}
