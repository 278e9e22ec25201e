package io.pitchwatch.alarms;

/**
 * One alarm at one instant. Immutable; times are monotonic nanoseconds.
 *
 * @param active whether the condition holds, after its delays and its deadband
 * @param acknowledged whether somebody said that they know
 * @param suppressed whether it means nothing at present
 * @param sinceNanos when the condition began; meaningful while not normal
 * @param turn the change of {@code active} that is under way
 * @param shelf whether it is put aside
 * @param quiet the time after a notice in which there is no other
 * @param owed whether somebody should still be told
 * @param notices how often somebody was told; a step that increases it is the moment to do so
 */
public record Alarm(
    boolean active,
    boolean acknowledged,
    boolean suppressed,
    long sinceNanos,
    Timer turn,
    Timer shelf,
    Timer quiet,
    boolean owed,
    long notices) {

  /** An alarm of which nothing was ever heard. */
  public static final Alarm NORMAL =
      new Alarm(false, true, false, 0, Timer.OFF, Timer.OFF, Timer.OFF, false, 0);

  /** The state by its standard name. */
  public AlarmState state() {
    if (suppressed) {
      return AlarmState.SUPPRESSED_BY_DESIGN;
    }
    if (shelf.isOn()) {
      return AlarmState.SHELVED;
    }
    if (active) {
      return acknowledged ? AlarmState.ACKNOWLEDGED : AlarmState.UNACKNOWLEDGED;
    }
    return acknowledged ? AlarmState.NORMAL : AlarmState.RETURNED_UNACKNOWLEDGED;
  }

  Alarm withActive(boolean nowActive, boolean nowAcknowledged, long nowSinceNanos) {
    return new Alarm(
        nowActive,
        nowAcknowledged,
        suppressed,
        nowSinceNanos,
        Timer.OFF,
        shelf,
        quiet,
        !nowAcknowledged && (nowActive || owed),
        notices);
  }

  Alarm withSuppressed(boolean nowSuppressed) {
    return new Alarm(
        false, true, nowSuppressed, sinceNanos, Timer.OFF, shelf, quiet, false, notices);
  }

  Alarm withTurn(Timer nowTurn) {
    return new Alarm(
        active, acknowledged, suppressed, sinceNanos, nowTurn, shelf, quiet, owed, notices);
  }

  Alarm withAcknowledged() {
    return new Alarm(active, true, suppressed, sinceNanos, turn, shelf, quiet, false, notices);
  }

  Alarm withShelf(Timer nowShelf) {
    return new Alarm(
        active, acknowledged, suppressed, sinceNanos, turn, nowShelf, quiet, owed, notices);
  }

  /** Off the shelf: what still holds is news again, as whoever put it aside wanted. */
  Alarm offTheShelf() {
    return new Alarm(
        active,
        acknowledged && !active,
        suppressed,
        sinceNanos,
        turn,
        Timer.OFF,
        quiet,
        active || owed,
        notices);
  }

  Alarm noticed(Timer nowQuiet) {
    return new Alarm(
        active, acknowledged, suppressed, sinceNanos, turn, shelf, nowQuiet, false, notices + 1);
  }
}
