package io.pitchwatch.alarms;

/**
 * The course of an alarm as a state machine: (state, input, now) → state. What did not change is
 * the same object, and nothing is allocated then; a step that increases {@link Alarm#notices()} is
 * the moment to tell somebody.
 *
 * <p>States and terms are those of IEC 62682 and OPC UA Part 9. Three choices of our own: a
 * condition that is not known changes nothing and holds the delays; what comes off the shelf and
 * still holds is unacknowledged again; what is suppressed by design starts from normal afterwards,
 * since the coach then stands somewhere else.
 */
public final class AlarmCourse {

  /**
   * No two notices of one alarm are closer than this: about one in ten minutes is what a person can
   * manage (EEMUA 191, read in a secondary source).
   */
  public static final long QUIET_NANOS = 600_000_000_000L;

  /** Longest time that an alarm can be put aside: our own figure. */
  public static final long LONGEST_SHELF_NANOS = 24 * 3_600_000_000_000L;

  private AlarmCourse() {}

  /**
   * What was measured.
   *
   * @param rule how the alarm behaves
   * @param excess how far the value is beyond its limit; above 0 the condition holds; NaN when not
   *     known
   * @param underWay whether the coach is driven
   * @param nowNanos monotonic time
   */
  public static Alarm measured(
      AlarmRule rule, Alarm alarm, double excess, boolean underWay, long nowNanos) {
    boolean suppressed = underWay && rule.suppressedUnderWay();
    Alarm next = suppressed == alarm.suppressed() ? alarm : alarm.withSuppressed(suppressed);
    if (!suppressed) {
      next = turn(rule, next, excess, nowNanos);
    }
    if (next.shelf().isOver(nowNanos)) {
      next = next.offTheShelf();
    }
    return tell(next, nowNanos);
  }

  /** Somebody said that they know; changes nothing unless that was wanted. */
  public static Alarm acknowledged(Alarm alarm) {
    return alarm.acknowledged() ? alarm : alarm.withAcknowledged();
  }

  /**
   * Somebody put it aside.
   *
   * @param lastsNanos for how long, more than 0, at most {@link #LONGEST_SHELF_NANOS}
   * @throws IllegalArgumentException if the time is out of range
   */
  public static Alarm shelved(Alarm alarm, long lastsNanos, long nowNanos) {
    if (lastsNanos <= 0 || lastsNanos > LONGEST_SHELF_NANOS) {
      throw new IllegalArgumentException(
          "lastsNanos is " + lastsNanos + "; it must be 1 to " + LONGEST_SHELF_NANOS);
    }
    return alarm.withShelf(Timer.running(lastsNanos, nowNanos));
  }

  /** Somebody took it off the shelf; changes nothing unless it was there. */
  public static Alarm unshelved(Alarm alarm, long nowNanos) {
    return alarm.shelf().isOn() ? tell(alarm.offTheShelf(), nowNanos) : alarm;
  }

  private static Alarm turn(AlarmRule rule, Alarm alarm, double excess, long nowNanos) {
    Timer timer = alarm.turn();
    if (Double.isNaN(excess)) {
      Timer held = timer.held(nowNanos);
      return held.equals(timer) ? alarm : alarm.withTurn(held);
    }
    boolean held = timer.isOn() != alarm.active();
    boolean holds = held ? excess > -rule.deadband() : excess > 0;
    if (holds == alarm.active()) {
      return timer.isOn() ? alarm.withTurn(Timer.OFF) : alarm;
    }
    long delay = holds ? rule.onDelayNanos() : rule.offDelayNanos();
    Timer running = timer.isOn() ? timer.resumed(nowNanos) : Timer.running(delay, nowNanos);
    if (running.isOver(nowNanos)) {
      return turned(rule, alarm, holds, nowNanos);
    }
    return running.equals(timer) ? alarm : alarm.withTurn(running);
  }

  private static Alarm turned(AlarmRule rule, Alarm alarm, boolean holds, long nowNanos) {
    if (holds) {
      return alarm.withActive(true, false, nowNanos - rule.onDelayNanos());
    }
    boolean stays = rule.latching() && !alarm.acknowledged();
    return alarm.withActive(false, !stays, alarm.sinceNanos());
  }

  private static Alarm tell(Alarm alarm, long nowNanos) {
    boolean may =
        alarm.owed()
            && !alarm.suppressed()
            && !alarm.shelf().isOn()
            && (!alarm.quiet().isOn() || alarm.quiet().isOver(nowNanos));
    return may ? alarm.noticed(Timer.running(QUIET_NANOS, nowNanos)) : alarm;
  }
}
