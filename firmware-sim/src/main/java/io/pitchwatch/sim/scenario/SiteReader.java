package io.pitchwatch.sim.scenario;

import io.pitchwatch.sim.world.Attitude;

/** Reads how the ground lies: roll and pitch, or a slope and where the coach heads on it. */
final class SiteReader {

  private static final double STEEPEST_RAD = Math.toRadians(20);

  private SiteReader() {}

  /**
   * The lean of the ground under the coach. On a plane of slope β a coach headed γ from the fall
   * line has tan pitch = tan β cos γ and tan roll = tan β sin γ (apparent dip); γ above 0 turns the
   * nose to the left of straight down, so that the right side is the low one.
   */
  static Attitude lie(Section section) {
    boolean bySlope = section.has("slope") || section.has("heading");
    if (bySlope && (section.has("roll") || section.has("pitch"))) {
      section.complain("slope", "either slope and heading, or roll and pitch");
    }
    double slope = angle(section, "slope");
    double heading = section.quantity("heading", Dimension.ANGLE, 0);
    double roll = angle(section, "roll");
    double pitch = angle(section, "pitch");
    if (bySlope) {
      roll = Math.atan(Math.tan(slope) * Math.sin(heading));
      pitch = Math.atan(Math.tan(slope) * Math.cos(heading));
    }
    return new Attitude(roll, pitch);
  }

  private static double angle(Section section, String key) {
    double found = section.quantity(key, Dimension.ANGLE, 0);
    if (Math.abs(found) > STEEPEST_RAD) {
      section.complain(key, "at most 20 deg");
      return 0;
    }
    return found;
  }
}
