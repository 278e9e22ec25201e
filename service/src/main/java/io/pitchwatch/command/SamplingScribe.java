package io.pitchwatch.command;

import io.pitchwatch.store.Scribe;
import io.pitchwatch.store.Written;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.LongSupplier;
import java.util.function.LongUnaryOperator;
import java.util.function.Supplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Waits for the disk, so that nothing is said to be kept before it is, and goes on sampling
 * meanwhile: a card may hang for longer than a chip can hold its samples.
 */
final class SamplingScribe implements Scribe {

  private static final Logger LOG = LoggerFactory.getLogger(SamplingScribe.class);

  private static final long NOT_SAMPLING_NANOS = 1_000_000_000L;

  private final Executor disk;
  private final LongUnaryOperator poll;
  private final LongSupplier clock;

  /**
   * A scribe for the thread that samples.
   *
   * @param disk does the writing
   * @param poll does what is due with the sensors; takes monotonic time and returns that at which
   *     to call again
   * @param clock monotonic time, nanoseconds
   */
  SamplingScribe(Executor disk, LongUnaryOperator poll, LongSupplier clock) {
    this.disk = disk;
    this.poll = poll;
    this.clock = clock;
  }

  @Override
  public Written write(Supplier<Written> writing) {
    CompletableFuture<Written> written = CompletableFuture.supplyAsync(writing, disk);
    boolean interrupted = false;
    try {
      while (!written.isDone()) {
        interrupted |= waited(written, interrupted ? NOT_SAMPLING_NANOS : sample());
      }
      return written.join();
    } finally {
      if (interrupted) {
        Thread.currentThread().interrupt();
      }
    }
  }

  /** Returns for how long nothing is due. */
  private long sample() {
    long nowNanos = clock.getAsLong();
    try {
      return Math.max(0, poll.applyAsLong(nowNanos) - nowNanos);
    } catch (RuntimeException e) {
      // Whoever waits for the disk must not leave before it is done with what both work on.
      LOG.error("sampling failed while something was written", e);
      return NOT_SAMPLING_NANOS;
    }
  }

  /** Waits for the writing, up to the given time; returns whether it was interrupted. */
  private static boolean waited(CompletableFuture<Written> written, long nanos) {
    try {
      written.get(nanos, TimeUnit.NANOSECONDS);
    } catch (TimeoutException | ExecutionException e) {
      return false;
    } catch (InterruptedException e) {
      return true;
    }
    return false;
  }
}
