package io.pitchwatch.command;

import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Orders from other threads, waiting for the rounds. Bounded: a flood loses orders, not memory. */
final class Inbox {

  /** More than people can mean before the next round. */
  static final int CAPACITY = 64;

  private static final Logger LOG = LoggerFactory.getLogger(Inbox.class);

  private final BlockingQueue<Runnable> orders = new ArrayBlockingQueue<>(CAPACITY);

  /** Leaves an order, to be carried out on the thread of the rounds; never waits. */
  void leave(Runnable order) {
    if (!orders.offer(order)) {
      LOG.warn("more than {} orders at once; one was dropped", CAPACITY);
    }
  }

  /** Carries out what was left, waiting up to the given time for a first order. */
  void carryOut(long waitNanos) throws InterruptedException {
    @Nullable Runnable order = orders.poll(waitNanos, TimeUnit.NANOSECONDS);
    for (int i = 0; order != null && i < CAPACITY; i++) {
      try {
        order.run();
      } catch (RuntimeException e) {
        LOG.error("an order failed", e);
      }
      order = orders.poll();
    }
  }
}
