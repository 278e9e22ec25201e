package io.pitchwatch.sim.world;

/**
 * How the coach's floor lies.
 *
 * @param rollRad above 0: right side low, radians
 * @param pitchRad above 0: front low, radians
 */
public record Attitude(double rollRad, double pitchRad) {

  /** Level. */
  public static final Attitude LEVEL = new Attitude(0, 0);
}
