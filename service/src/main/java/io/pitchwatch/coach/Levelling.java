package io.pitchwatch.coach;

/**
 * What the owner allows when levelling, and how level is level enough.
 *
 * @param stepMm tallest step a tyre is asked to climb, millimetres
 * @param stackMm tallest stack, millimetres
 * @param twistRad most that one axle's lift may differ from another's, as roll, radians
 * @param contactMm how far past contact a jack goes, millimetres
 * @param overnightRad tolerance for a night, radians
 * @param stayRad tolerance for a stay, radians
 * @param seasonRad tolerance for a season, radians
 */
public record Levelling(
    double stepMm,
    double stackMm,
    double twistRad,
    double contactMm,
    double overnightRad,
    double stayRad,
    double seasonRad) {

  /** Checks every figure. */
  public Levelling {
    Require.positive("step", stepMm);
    Require.positive("stack", stackMm);
    Require.notNegative("twist", twistRad);
    Require.notNegative("contact", contactMm);
    Require.positive("overnight", overnightRad);
    Require.positive("stay", stayRad);
    Require.positive("season", seasonRad);
  }

  /** No piece is laid that is thicker, millimetres: it would be too tall a step, or stack. */
  public double thickestMm() {
    return Math.min(stepMm, stackMm);
  }

  /** The tolerance, in radians, for the given kind of stay. */
  public double toleranceRad(Stay stay) {
    return switch (stay) {
      case OVERNIGHT -> overnightRad;
      case STAY -> stayRad;
      case SEASON -> seasonRad;
    };
  }
}
