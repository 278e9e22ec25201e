package io.pitchwatch.mqtt;

import java.time.Duration;
import java.util.concurrent.locks.LockSupport;
import java.util.function.BooleanSupplier;

/**
 * Waits for what another process or thread will do; a condition and a limit, never a mere pause.
 */
public final class Await {

  private static final long LOOK_NANOS = Duration.ofMillis(5).toNanos();
  private static final Duration LIMIT = Duration.ofSeconds(20);

  private Await() {}

  /** Waits until the condition holds, at most 20 s. */
  public static void until(String what, BooleanSupplier condition) {
    until(what, LIMIT, condition);
  }

  /** Waits until the condition holds. */
  public static void until(String what, Duration limit, BooleanSupplier condition) {
    long deadline = System.nanoTime() + limit.toNanos();
    while (!condition.getAsBoolean()) {
      if (System.nanoTime() - deadline > 0) {
        throw new AssertionError("not within " + limit + ": " + what);
      }
      LockSupport.parkNanos(LOOK_NANOS);
    }
  }
}
