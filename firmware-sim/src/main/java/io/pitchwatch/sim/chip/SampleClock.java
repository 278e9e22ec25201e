package io.pitchwatch.sim.chip;

/**
 * The chip's own clock: when its samples fall due. Instants are computed from the sample's number,
 * not summed, so that months of them do not drift.
 */
final class SampleClock {

  private final double rateFactor;
  private boolean running;
  private long firstNanos;
  private double periodNanos;
  private long taken;

  /**
   * A stopped clock.
   *
   * @param ppm how much faster than nominal it runs, millionths
   */
  SampleClock(double ppm) {
    rateFactor = 1 + ppm * 1e-6;
  }

  /** Starts anew: the first sample falls due after a delay, then one each nominal period. */
  void start(long nowNanos, double delayNanos, double nominalPeriodNanos) {
    running = true;
    periodNanos = nominalPeriodNanos / rateFactor;
    firstNanos = nowNanos + Math.round(delayNanos / rateFactor);
    taken = 0;
  }

  void stop() {
    running = false;
  }

  boolean isRunning() {
    return running;
  }

  /** How many samples have fallen due and were not yet taken. */
  long due(long nowNanos) {
    if (!running || nowNanos < firstNanos) {
      return 0;
    }
    return Math.max(0, (long) Math.floor((nowNanos - firstNanos) / periodNanos) + 1 - taken);
  }

  /** How many fell due, after leaving out all but the newest. */
  int dueOfNewest(int most, long nowNanos) {
    long due = due(nowNanos);
    if (due > most) {
      skip(due - most);
      return most;
    }
    return (int) due;
  }

  /** Takes the next sample: the instant at which it fell due, nanoseconds. */
  long take() {
    return firstNanos + Math.round(periodNanos * taken++);
  }

  /** Leaves out samples that nobody will ever see. */
  void skip(long samples) {
    taken += samples;
  }
}
