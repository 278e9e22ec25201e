package io.pitchwatch.sim.world;

/**
 * What lies under a wheel station.
 *
 * @param heightM metres; 0 for bare ground
 * @param areaM2 on which it, or the tyre, stands on the ground, square metres
 */
public record Stack(double heightM, double areaM2) {

  /** Checks the figures. */
  public Stack {
    Check.atLeast("heightM", heightM, 0);
    Check.above("areaM2", areaM2, 0);
  }
}
