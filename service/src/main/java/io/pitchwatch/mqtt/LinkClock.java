package io.pitchwatch.mqtt;

import java.time.Instant;
import java.util.function.LongFunction;
import java.util.function.LongSupplier;

/**
 * The two kinds of time the link needs.
 *
 * @param nanos monotonic nanoseconds, for every interval
 * @param wall wall time of a monotonic instant, for labels only; it may jump by years
 */
public record LinkClock(LongSupplier nanos, LongFunction<Instant> wall) {

  /** The machine's own clocks. */
  public static LinkClock system() {
    return new LinkClock(System::nanoTime, at -> Instant.now().plusNanos(at - System.nanoTime()));
  }
}
