package io.pitchwatch.sim.pi4j;

import java.util.function.LongSupplier;

/**
 * Scenario time: runs with the machine's monotonic clock until it is set, then stands until set.
 */
final class ScenarioClock implements LongSupplier {

  private final long startNanos = System.nanoTime();
  private volatile boolean standing;
  private volatile long setNanos;

  @Override
  public long getAsLong() {
    return standing ? setNanos : System.nanoTime() - startNanos;
  }

  boolean runsByItself() {
    return !standing;
  }

  synchronized void set(long nanos) {
    if (nanos < 0 || (standing && nanos < setNanos)) {
      throw new IllegalArgumentException(
          "nanos is " + nanos + "; no less than " + (standing ? setNanos : 0) + " is allowed");
    }
    setNanos = nanos;
    standing = true;
  }
}
