package io.pitchwatch.alarms;

/**
 * A time that runs out.
 *
 * @param mode whether it runs
 * @param nanos monotonic time at which it runs out when running; what is left when held; else 0
 */
public record Timer(Mode mode, long nanos) {

  /** Not started. */
  public static final Timer OFF = new Timer(Mode.OFF, 0);

  /** Whether a time runs. */
  public enum Mode {
    OFF,
    RUNNING,
    HELD
  }

  /** One that runs out after a while, nanoseconds. */
  static Timer running(long lastsNanos, long nowNanos) {
    return new Timer(Mode.RUNNING, nowNanos + lastsNanos);
  }

  boolean isOn() {
    return mode != Mode.OFF;
  }

  boolean isOver(long nowNanos) {
    return mode == Mode.RUNNING && nowNanos - nanos >= 0;
  }

  /** The same, with what is left kept for later; the same object unless it runs. */
  Timer held(long nowNanos) {
    return mode == Mode.RUNNING ? new Timer(Mode.HELD, leftNanos(nowNanos)) : this;
  }

  /** The same, going on with what was left; the same object unless it is held. */
  Timer resumed(long nowNanos) {
    return mode == Mode.HELD ? running(nanos, nowNanos) : this;
  }

  /** What is left, at least 0, nanoseconds; 0 when off. */
  long leftNanos(long nowNanos) {
    return mode == Mode.RUNNING ? Math.max(0, nanos - nowNanos) : nanos;
  }
}
