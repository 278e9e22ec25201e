package io.pitchwatch.alarms;

/**
 * What of an alarm must survive a restart: the same as {@link Alarm}, with durations in place of
 * instants, since the monotonic clock starts anew.
 *
 * @param active whether the condition held
 * @param acknowledged whether somebody said that they know
 * @param suppressed whether it meant nothing
 * @param ageNanos how long ago the condition began
 * @param turnLeftNanos how long it took until {@code active} would have changed; −1 when it would
 *     not
 * @param shelfLeftNanos how long it would have been put aside still; −1 when it was not
 * @param quietLeftNanos how long there would have been no other notice; −1 when one was free to go
 * @param owed whether somebody should still be told
 * @param notices how often somebody was told
 */
public record AlarmMemory(
    boolean active,
    boolean acknowledged,
    boolean suppressed,
    long ageNanos,
    long turnLeftNanos,
    long shelfLeftNanos,
    long quietLeftNanos,
    boolean owed,
    long notices) {

  private static final long NONE = -1;

  /** What to remember of an alarm. */
  public static AlarmMemory of(Alarm alarm, long nowNanos) {
    return new AlarmMemory(
        alarm.active(),
        alarm.acknowledged(),
        alarm.suppressed(),
        nowNanos - alarm.sinceNanos(),
        left(alarm.turn(), nowNanos),
        left(alarm.shelf(), nowNanos),
        left(alarm.quiet(), nowNanos),
        alarm.owed(),
        alarm.notices());
  }

  /**
   * The alarm again.
   *
   * @param awayNanos how long nobody watched, nanoseconds; 0 where no clock can tell
   * @param nowNanos monotonic time now
   */
  public Alarm recall(long awayNanos, long nowNanos) {
    return new Alarm(
        active,
        acknowledged,
        suppressed,
        nowNanos - ageNanos - awayNanos,
        // Nobody knows whether the condition held meanwhile.
        turnLeftNanos == NONE ? Timer.OFF : new Timer(Timer.Mode.HELD, turnLeftNanos),
        timer(shelfLeftNanos - awayNanos, shelfLeftNanos, nowNanos),
        timer(quietLeftNanos - awayNanos, quietLeftNanos, nowNanos),
        owed,
        notices);
  }

  private static long left(Timer timer, long nowNanos) {
    return timer.isOn() ? timer.leftNanos(nowNanos) : NONE;
  }

  private static Timer timer(long leftNanos, long storedNanos, long nowNanos) {
    return storedNanos == NONE ? Timer.OFF : Timer.running(Math.max(0, leftNanos), nowNanos);
  }
}
