package io.pitchwatch.settling;

/**
 * A change of lean that came at once and stayed: an event, not settling.
 *
 * @param kind how it came about
 * @param atNanos monotonic time of the first minute after it
 * @param rollRad change of roll, radians
 * @param pitchRad change of pitch, radians
 */
public record GroundEvent(Kind kind, long atNanos, double rollRad, double pitchRad) {

  /** How a change came about. */
  public enum Kind {
    /** While the coach stood: a slide-out, a jack, people who sat down. */
    STEP,
    /** The coach itself was moved: driven, or set on something else. */
    MOVED
  }
}
