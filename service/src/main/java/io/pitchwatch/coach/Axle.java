package io.pitchwatch.coach;

/**
 * One axle of the coach.
 *
 * @param id the owner's name for it
 * @param positionMm along x from any origin, forward positive, millimetres
 * @param trackMm between the centres of the left and right wheel stations, millimetres
 * @param loadKg load on the axle, kilograms
 * @param droopMm how far the body may rise before a tyre leaves the ground, millimetres
 * @param footprintMm width to be carried at one station: the tyre, or the pair's outer width, mm
 * @param stiffness share of roll stiffness, relative to the other axles' figures
 * @param twin whether the station has two tyres side by side
 * @param parkingBrake whether this axle holds the parking brake
 */
public record Axle(
    String id,
    double positionMm,
    double trackMm,
    double loadKg,
    double droopMm,
    double footprintMm,
    double stiffness,
    boolean twin,
    boolean parkingBrake) {

  /** Checks every figure. */
  public Axle {
    Require.id(id);
    Require.finite("position", positionMm);
    Require.positive("track", trackMm);
    Require.positive("load", loadKg);
    Require.notNegative("droop", droopMm);
    Require.positive("footprint", footprintMm);
    Require.positive("stiffness", stiffness);
  }

  /**
   * How fast its tyres unload as the body rises, kilograms a millimetre: all at the droop, which is
   * reckoned as a millimetre at the least.
   */
  public double unloadsKgPerMm() {
    return loadKg / Math.max(1, droopMm);
  }
}
