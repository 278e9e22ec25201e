package io.pitchwatch.mqtt;

import io.pitchwatch.mqtt.link.Backoff;
import io.pitchwatch.mqtt.link.Standing;
import java.util.concurrent.TimeUnit;

/** When to try again, depending on how the last connection or attempt ended. */
final class Dialling {

  private static final long SECOND = TimeUnit.SECONDS.toNanos(1);

  /** A connection that lasted so long was a good one: the next wait is short again. */
  private static final long WORTH_IT_NANOS = 60 * SECOND;

  private final Backoff outage;
  private final Backoff unwelcome;
  private final Backoff takeover;
  private boolean connected;
  private long connectedAtNanos;
  private long notBeforeNanos;

  /**
   * The first attempt is due at once.
   *
   * @param seed of the random part of the waits
   */
  Dialling(long seed, long nowNanos) {
    outage = new Backoff(SECOND / 2, 30 * SECOND, seed);
    unwelcome = new Backoff(5 * SECOND, 300 * SECOND, seed + 1);
    // Two daemons that take each other's place at every attempt would do nothing else.
    takeover = new Backoff(60 * SECOND, 1800 * SECOND, seed + 2);
    notBeforeNanos = nowNanos;
  }

  boolean isDue(long nowNanos) {
    return nowNanos - notBeforeNanos >= 0;
  }

  void connected(long nowNanos) {
    connected = true;
    connectedAtNanos = nowNanos;
  }

  /** Plans the next attempt. */
  void ended(Standing.Ended how, long nowNanos) {
    if (connected && nowNanos - connectedAtNanos >= WORTH_IT_NANOS) {
      outage.reset();
      unwelcome.reset();
      if (!(how instanceof Standing.TakenOver)) {
        takeover.reset();
      }
    }
    connected = false;
    Backoff backoff = outage;
    if (how instanceof Standing.TakenOver) {
      backoff = takeover;
    } else if (how instanceof Standing.Unwelcome) {
      backoff = unwelcome;
    }
    notBeforeNanos = nowNanos + backoff.nextNanos();
  }
}
