package io.pitchwatch.mqtt;

import java.util.concurrent.TimeUnit;

/** Lets a few through at once and then one a second; counts the others. */
final class RateLimit {

  private static final long GAP_NANOS = TimeUnit.SECONDS.toNanos(1);
  private static final long BURST_NANOS = 4 * GAP_NANOS;

  private boolean started;
  private long paidUntilNanos;
  private long suppressed;

  /** Whether one more may pass now. */
  boolean passes(long nowNanos) {
    if (!started || paidUntilNanos - nowNanos < 0) {
      started = true;
      paidUntilNanos = nowNanos;
    }
    if (paidUntilNanos - nowNanos > BURST_NANOS) {
      suppressed++;
      return false;
    }
    paidUntilNanos += GAP_NANOS;
    return true;
  }

  /** How many did not pass since this was last asked. */
  long takeSuppressed() {
    long count = suppressed;
    suppressed = 0;
    return count;
  }
}
