package io.pitchwatch.command;

import java.io.PrintWriter;
import java.time.Duration;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Supplier;

/** Says that something goes on when it takes longer than a second. */
final class Patience {

  private Patience() {}

  /**
   * Does the work, and says every few seconds that it is still at it.
   *
   * @throws IllegalStateException if the work fails or is interrupted
   */
  static <T> T over(PrintWriter err, String what, Supplier<T> work) {
    CompletableFuture<T> done = CompletableFuture.supplyAsync(work);
    Duration waited = Duration.ofSeconds(1);
    try {
      while (true) {
        try {
          return done.get(waited.equals(Duration.ofSeconds(1)) ? 1 : 5, TimeUnit.SECONDS);
        } catch (TimeoutException e) {
          err.println(what + " takes a while (" + waited.toSeconds() + " s so far) ...");
          err.flush();
          waited = waited.plusSeconds(5);
        }
      }
    } catch (ExecutionException e) {
      throw new IllegalStateException(what + " failed", e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(what + " was interrupted", e);
    }
  }
}
