package io.pitchwatch.sim.world;

/**
 * Two jacks, left and right, that share their pressure: both push alike, each as far as it finds
 * ground.
 *
 * @param id its name
 * @param xM along the coach, forward positive, metres
 * @param spacingM between the feet, metres
 * @param clearanceM foot to ground, retracted, coach level on its wheels, metres
 * @param strokeM longest travel, metres
 * @param capacityKg rated load of each jack, kilograms
 * @param footM2 area of a foot, or of the pads under it, square metres
 */
public record JackPair(
    String id,
    double xM,
    double spacingM,
    double clearanceM,
    double strokeM,
    double capacityKg,
    double footM2) {

  /** Checks every figure. */
  public JackPair {
    Check.finite("xM", xM);
    Check.above("spacingM", spacingM, 0);
    Check.atLeast("clearanceM", clearanceM, 0);
    Check.above("strokeM", strokeM, 0);
    Check.above("capacityKg", capacityKg, 0);
    Check.above("footM2", footM2, 0);
  }
}
