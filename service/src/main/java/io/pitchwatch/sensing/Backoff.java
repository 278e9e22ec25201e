package io.pitchwatch.sensing;

/** How long to wait before trying again: twice as long each time, within bounds. */
final class Backoff {

  private final long firstNanos;
  private final long mostNanos;
  private long nextNanos;

  /**
   * A backoff at its first wait.
   *
   * @param firstNanos the first wait
   * @param mostNanos the longest
   */
  Backoff(long firstNanos, long mostNanos) {
    this.firstNanos = firstNanos;
    this.mostNanos = mostNanos;
    this.nextNanos = firstNanos;
  }

  /** The wait after one more failure, nanoseconds. */
  long next() {
    long wait = nextNanos;
    nextNanos = Math.min(2 * nextNanos, mostNanos);
    return wait;
  }

  /** After a success. */
  void reset() {
    nextNanos = firstNanos;
  }
}
