package io.pitchwatch.sim.world;

/**
 * An axle as a mechanism: a beam on two wheels, sprung against the body.
 *
 * @param id its name
 * @param xM along the coach, forward positive, metres
 * @param trackM between the wheel stations, metres
 * @param loadKg what it carries on level ground, kilograms
 * @param droopM how far the body may rise before the tyres are free of load, metres; at least 0.01
 * @param stiffnessShare share of the coach's roll stiffness, relative to the other axles' figures
 * @param contactM2 area on which one wheel station stands on bare ground, square metres
 * @param parkingBrake whether it holds the parking brake
 */
public record Axle(
    String id,
    double xM,
    double trackM,
    double loadKg,
    double droopM,
    double stiffnessShare,
    double contactM2,
    boolean parkingBrake) {

  /** Checks every figure. */
  public Axle {
    Check.finite("xM", xM);
    Check.above("trackM", trackM, 0);
    Check.above("loadKg", loadKg, 0);
    Check.above("droopM", droopM, 0.01 - 1e-12);
    Check.above("stiffnessShare", stiffnessShare, 0);
    Check.above("contactM2", contactM2, 0);
  }

  /** Rate of the spring at one wheel: load falls evenly to nothing over the droop, N/m. */
  double springNPerM() {
    return loadKg * Sway.G / 2 / droopM;
  }
}
