package io.pitchwatch.mqtt;

import io.pitchwatch.mqtt.homie.LogLevel;
import io.pitchwatch.visit.Report;
import java.util.ArrayDeque;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;

/**
 * The coach on its broker: says what reports say, takes commands and checks, and stays there
 * through every outage. All of it happens on one thread of its own; callers never wait.
 */
public final class CoachLink implements AutoCloseable {

  /** All daemons call themselves so, followed by the coach's id. */
  public static final String CLIENT_ID_PREFIX = "pitchwatch-";

  /** Longest rest between two rounds: how late the link may notice that a report grew old. */
  private static final long REST_NANOS = TimeUnit.MILLISECONDS.toNanos(250);

  private static final long FAREWELL_NANOS = TimeUnit.SECONDS.toNanos(3);
  private static final long CLOSING_MILLIS = TimeUnit.SECONDS.toMillis(8);
  private static final int MOST_WISHES = 32;

  private final LinkParts parts;
  private final LinkLoop loop;
  private final Thread thread;
  private final ArrayDeque<Wish> wishes = new ArrayDeque<>();
  private final RateLimit failures = new RateLimit();
  private volatile boolean closing;

  /** A link that has not begun. */
  private CoachLink(LinkParts parts) {
    this.parts = parts;
    this.loop = new LinkLoop(parts, this::wake);
    this.thread = new Thread(this::run, "mqtt-link");
    this.thread.setDaemon(true);
  }

  /** Begins to connect, and never stops trying until it is closed. */
  public static CoachLink start(LinkParts parts) {
    CoachLink link = new CoachLink(parts);
    link.thread.start();
    return link;
  }

  /** Says what is new in the report, once it can; only the latest counts. Never waits or throws. */
  public void publish(Report report) {
    loop.latest(report);
    wake();
  }

  /**
   * Says something in the process's log and under {@code $log}. Never waits; while too much is
   * said, the newest is left out.
   *
   * @param level how bad
   * @param text for people
   */
  public void log(LogLevel level, String text) {
    synchronized (wishes) {
      if (wishes.size() < MOST_WISHES) {
        wishes.add(new Wish(level, text));
      }
    }
    wake();
  }

  /** Says that nothing is measured any more, takes leave of the broker, and ends the thread. */
  @Override
  public void close() {
    closing = true;
    wake();
    try {
      thread.join(CLOSING_MILLIS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private void wake() {
    LockSupport.unpark(thread);
  }

  private void run() {
    try {
      while (!closing) {
        round();
        LockSupport.parkNanos(this, REST_NANOS);
      }
      farewell();
    } catch (Error e) {
      parts.watch().wornOut("the link to the broker ended: " + e);
      throw e;
    }
  }

  /** A fault of ours in one round must not end the link. */
  private void round() {
    long nowNanos = parts.clock().nanos().getAsLong();
    try {
      sayWishes();
      loop.round(nowNanos);
    } catch (RuntimeException e) {
      if (failures.passes(nowNanos)) {
        LinkLog.local(LogLevel.ERROR, "a round of the link failed: " + e);
      }
    }
  }

  private void sayWishes() {
    synchronized (wishes) {
      wishes.forEach(wish -> loop.log().say(wish.level(), wish.text()));
      wishes.clear();
    }
  }

  private void farewell() {
    long nowNanos = parts.clock().nanos().getAsLong();
    long deadlineNanos = nowNanos + FAREWELL_NANOS;
    loop.sayFarewell(nowNanos);
    while (!loop.isFarewellSaid(nowNanos) && nowNanos - deadlineNanos < 0) {
      LockSupport.parkNanos(this, TimeUnit.MILLISECONDS.toNanos(50));
      nowNanos = parts.clock().nanos().getAsLong();
    }
    loop.close();
  }

  private record Wish(LogLevel level, String text) {}
}
