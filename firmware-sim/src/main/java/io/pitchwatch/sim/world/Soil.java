package io.pitchwatch.sim.world;

/**
 * How ground goes on sinking after it has given at once.
 *
 * @param consolidates settlement from water pressed out, as a share of what gave at once
 * @param halfwayS when half of that is done, seconds
 * @param creep strain per decade of time, Cα
 * @param softensMPerS how fast a bare tyre sinks where the ground is soaked, m/s; our own figure
 */
public record Soil(double consolidates, double halfwayS, double creep, double softensMPerS) {

  /** Ground that does not move. */
  public static final Soil NONE = new Soil(0, 1, 0, 0);

  private static final double HOUR_S = 3600;
  private static final double MILLI = 1e-3;

  /** Checks the figures. */
  public Soil {
    Check.atLeast("consolidates", consolidates, 0);
    Check.above("halfwayS", halfwayS, 0);
    Check.atLeast("creep", creep, 0);
    Check.atLeast("softensMPerS", softensMPerS, 0);
  }

  /**
   * Usual ground of a kind: Cα after Das (normally consolidated 0.005 to 0.03, organic 0.04 and
   * more) for soils, little for gravel and asphalt.
   */
  public static Soil of(Surface surface) {
    return switch (surface) {
      case CONCRETE -> NONE;
      case ASPHALT -> new Soil(0, 1, 0.0002, 0);
      case GRAVEL -> new Soil(0.1, HOUR_S, 0.001, 0.03 * MILLI / HOUR_S);
      case GRASS -> new Soil(0.4, 6 * HOUR_S, 0.005, 1.5 * MILLI / HOUR_S);
      case SOFT -> new Soil(0.8, 12 * HOUR_S, 0.02, 8 * MILLI / HOUR_S);
    };
  }

  /** Whether anything ever moves. */
  boolean moves() {
    return consolidates > 0 || creep > 0 || softensMPerS > 0;
  }
}
