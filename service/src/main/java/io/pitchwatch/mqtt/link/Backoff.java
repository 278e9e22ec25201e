package io.pitchwatch.mqtt.link;

import java.util.SplittableRandom;

/**
 * How long to wait before the next attempt: doubling from one bound to the other, each wait drawn
 * from the upper half of what it may be, so that many clients do not come back all at once.
 */
public final class Backoff {

  private final long leastNanos;
  private final long mostNanos;
  private final SplittableRandom random;
  private long limitNanos;

  /**
   * Starts at the least.
   *
   * @param leastNanos longest first wait
   * @param mostNanos longest wait of all
   * @param seed of the draws
   * @throws IllegalArgumentException unless 2 ns ≤ least ≤ most
   */
  public Backoff(long leastNanos, long mostNanos, long seed) {
    if (leastNanos < 2 || mostNanos < leastNanos) {
      throw new IllegalArgumentException(
          "waits are " + leastNanos + " to " + mostNanos + " ns; they must rise from 2 ns");
    }
    this.leastNanos = leastNanos;
    this.mostNanos = mostNanos;
    this.random = new SplittableRandom(seed);
    this.limitNanos = leastNanos;
  }

  /** The next wait. */
  public long nextNanos() {
    long wait = random.nextLong(limitNanos / 2, limitNanos + 1);
    limitNanos = limitNanos > mostNanos / 2 ? mostNanos : limitNanos * 2;
    return wait;
  }

  /** Starts over: the last attempt was worth it. */
  public void reset() {
    limitNanos = leastNanos;
  }
}
