package io.pitchwatch.attitude;

/**
 * How the floor leans, as the two angles people read (ISO 8855:2011, 2.10 and 2.12).
 *
 * @param rollRad roll in radians; positive: the right side is low
 * @param pitchRad pitch in radians; positive: the front is low
 */
public record Lean(double rollRad, double pitchRad) {

  /** A floor without any lean. */
  public static final Lean LEVEL = new Lean(0, 0);

  /**
   * A lean given in degrees.
   *
   * @param rollDeg roll in degrees; positive: the right side is low
   * @param pitchDeg pitch in degrees; positive: the front is low
   */
  public static Lean ofDegrees(double rollDeg, double pitchDeg) {
    return new Lean(Math.toRadians(rollDeg), Math.toRadians(pitchDeg));
  }

  /** Whether neither angle is NaN. */
  public boolean isKnown() {
    return !Double.isNaN(rollRad + pitchRad);
  }

  /** By how much each angle is more than that of another lean. */
  public Lean minus(Lean other) {
    return new Lean(rollRad - other.rollRad, pitchRad - other.pitchRad);
  }

  /** Size of the larger of the two angles, radians; NaN when not known. */
  public double largestRad() {
    return Math.max(Math.abs(rollRad), Math.abs(pitchRad));
  }

  /** Roll in degrees; positive: the right side is low. */
  public double rollDeg() {
    return Math.toDegrees(rollRad);
  }

  /** Pitch in degrees; positive: the front is low. */
  public double pitchDeg() {
    return Math.toDegrees(pitchRad);
  }
}
