package io.pitchwatch.mqtt;

import io.pitchwatch.mqtt.link.Backoff;
import io.pitchwatch.mqtt.link.Standing;
import java.util.concurrent.TimeUnit;

/** When to try again, depending on how the last connection or attempt ended. */
final class Dialling {

  private static final long SECOND = TimeUnit.SECONDS.toNanos(1);

  /** A connection that lasted so long was a good one: the next wait is short again. */
  private static final long WORTH_IT_NANOS = 60 * SECOND;

  /**
   * So many connections in a row that lasted no minute and were closed without a reason by a broker
   * that was there all the time, as a will that it published shows, are taken for a takeover:
   * Mosquitto 2.0 gives no reason for one.
   */
  private static final int CONTESTED = 3;

  private final String contested;
  private final Backoff outage;
  private final Backoff unwelcome;
  private final Backoff takeover;
  private boolean connected;
  private long connectedAtNanos;
  private long notBeforeNanos;
  private int shortLives;

  /**
   * The first attempt is due at once.
   *
   * @param seed of the random part of the waits
   * @param contested what to say when another client seems to be in our place
   */
  Dialling(long seed, String contested, long nowNanos) {
    this.contested = contested;
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

  /** The broker published nobody's will since: it was away, not another client there. */
  void brokerWasAway() {
    shortLives = 0;
  }

  /**
   * Plans the next attempt.
   *
   * @return how it ended, as it is to be understood
   */
  Standing.Ended ended(Standing.Ended how, long nowNanos) {
    boolean worthIt = connected && nowNanos - connectedAtNanos >= WORTH_IT_NANOS;
    if (worthIt) {
      outage.reset();
      unwelcome.reset();
    }
    boolean shortLife = connected && !worthIt && how instanceof Standing.Lost lost && lost.closed();
    shortLives = shortLife ? shortLives + 1 : 0;
    connected = false;
    Standing.Ended understood = shortLives < CONTESTED ? how : new Standing.TakenOver(contested);
    notBeforeNanos = nowNanos + backoff(understood).nextNanos();
    return understood;
  }

  private Backoff backoff(Standing.Ended how) {
    if (how instanceof Standing.TakenOver) {
      return takeover;
    }
    return how instanceof Standing.Unwelcome ? unwelcome : outage;
  }
}
