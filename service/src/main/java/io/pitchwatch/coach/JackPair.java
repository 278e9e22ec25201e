package io.pitchwatch.coach;

/**
 * A pair of jacks that share their pressure, one left and one right.
 *
 * @param id the owner's name for it
 * @param positionMm along x, same origin as the axles, millimetres
 * @param spacingMm between the two feet, millimetres
 * @param clearanceMm foot to ground, retracted, the coach on its wheels, millimetres
 * @param strokeMm longest travel, millimetres
 * @param keepUnderMm travel that the owner wants to stay under, millimetres
 * @param capacityKg rated load of each jack, kilograms
 * @param footMm diameter of the foot, millimetres
 */
public record JackPair(
    String id,
    double positionMm,
    double spacingMm,
    double clearanceMm,
    double strokeMm,
    double keepUnderMm,
    double capacityKg,
    double footMm) {

  /** Checks every figure. */
  public JackPair {
    Require.id(id);
    Require.finite("position", positionMm);
    Require.positive("spacing", spacingMm);
    Require.notNegative("clearance", clearanceMm);
    Require.positive("stroke", strokeMm);
    Require.positive("keep-under", keepUnderMm);
    Require.positive("capacity", capacityKg);
    Require.positive("foot", footMm);
  }
}
