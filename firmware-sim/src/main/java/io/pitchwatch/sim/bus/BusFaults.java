package io.pitchwatch.sim.bus;

import java.util.SplittableRandom;

/**
 * What is wrong with one bus at the moment; switched at will, from any thread.
 *
 * <p>The share of transfers that a fault hits is drawn from a seeded generator, so that the same
 * seed and the same transfers fail the same way.
 */
public final class BusFaults {

  private final SplittableRandom random;
  private double nakShare;
  private boolean stuck;
  private long slowNanos;

  /**
   * A bus with nothing wrong.
   *
   * @param seed of the draw of transfers that fail
   */
  public BusFaults(long seed) {
    random = new SplittableRandom(seed);
  }

  /**
   * Lets a share of the transfers go unacknowledged.
   *
   * @param share 0 (none) to 1 (all)
   * @throws IllegalArgumentException if the share is outside 0 to 1 or NaN
   */
  public synchronized void nak(double share) {
    if (!(share >= 0 && share <= 1)) {
      throw new IllegalArgumentException("share is " + share + "; 0 to 1 is allowed");
    }
    nakShare = share;
  }

  /**
   * Holds the data line low, or lets it go.
   *
   * @param held whether it is held low
   */
  public synchronized void stuck(boolean held) {
    stuck = held;
  }

  /**
   * Stretches the clock in every transfer.
   *
   * @param nanos how long, nanoseconds; 0 ends it
   * @throws IllegalArgumentException if negative
   */
  public synchronized void slow(long nanos) {
    if (nanos < 0) {
      throw new IllegalArgumentException("nanos is " + nanos + "; 0 or more is allowed");
    }
    slowNanos = nanos;
  }

  /** Mends everything. */
  public synchronized void clear() {
    nakShare = 0;
    stuck = false;
    slowNanos = 0;
  }

  /** Whether the next transfer goes unacknowledged; draws from the generator. */
  synchronized boolean drawNak() {
    return nakShare > 0 && (nakShare >= 1 || random.nextDouble() < nakShare);
  }

  synchronized boolean isStuck() {
    return stuck;
  }

  synchronized long slowNanos() {
    return slowNanos;
  }
}
