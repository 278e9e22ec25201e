package io.pitchwatch.command;

import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.Executor;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Does one after the other what may take as long as a disk takes, so that nobody who samples waits
 * for it. Bounded: a disk that hangs loses history, not memory.
 */
final class Clerk implements Executor, AutoCloseable {

  /** More than happens in the minutes for which a memory card may hang. */
  private static final int CAPACITY = 256;

  private static final long CLOSING_SECONDS = 5;
  private static final Logger LOG = LoggerFactory.getLogger(Clerk.class);

  private final ThreadPoolExecutor thread =
      new ThreadPoolExecutor(
          1,
          1,
          0,
          TimeUnit.SECONDS,
          new ArrayBlockingQueue<>(CAPACITY),
          work -> new Thread(work, "clerk"));

  @Override
  public void execute(Runnable work) {
    try {
      thread.execute(() -> attempt(work));
    } catch (RejectedExecutionException e) {
      LOG.warn("the disk is too slow; something was not written");
    }
  }

  private static void attempt(Runnable work) {
    try {
      work.run();
    } catch (RuntimeException e) {
      LOG.error("what was to be written failed", e);
    }
  }

  /** Finishes what was left, within reason. */
  @Override
  public void close() {
    thread.shutdown();
    try {
      if (!thread.awaitTermination(CLOSING_SECONDS, TimeUnit.SECONDS)) {
        LOG.warn("the disk is too slow; the last minutes may not be written");
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
