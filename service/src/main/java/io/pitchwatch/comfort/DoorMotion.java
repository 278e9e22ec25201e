package io.pitchwatch.comfort;

/**
 * How a door that was let go at rest came to its end.
 *
 * @param end where it ended
 * @param openRad opening angle at the end, radians
 * @param seconds from letting go to the end
 * @param edgeSpeedMps speed of the leaf's free edge as it meets the frame or the stop, metres a
 *     second; 0 where it came to rest between them
 */
public record DoorMotion(End end, double openRad, double seconds, double edgeSpeedMps) {

  /** Edge speed below which a door is said to close gently: our own figure. */
  public static final double GENTLE_MPS = 0.3;

  /** Where a leaf may end. */
  public enum End {
    /** Met its frame. */
    SHUT,
    /** Met its stop. */
    STOP,
    /** Came to rest in between, held by friction. */
    RESTS,
    /** Still swinging to and fro when the time given was over. */
    SWINGS
  }

  /** Whether it ended without a knock. */
  public boolean gentle() {
    return edgeSpeedMps < GENTLE_MPS;
  }
}
