package io.pitchwatch.sim.scenario;

import io.pitchwatch.sim.world.Attitude;
import io.pitchwatch.sim.world.Ground;
import io.pitchwatch.sim.world.Site;
import io.pitchwatch.sim.world.Soil;
import io.pitchwatch.sim.world.Surface;
import java.util.stream.Stream;

/** Reads how the ground lies: roll and pitch, or a slope and where the coach heads on it. */
final class SiteReader {

  private static final double STEEPEST_RAD = Math.toRadians(20);

  private SiteReader() {}

  /**
   * Where the coach stands; what the section does not say is as it was before.
   *
   * @param before where it stood before
   */
  static Site site(Section section, Site before) {
    boolean lies = Stream.of("roll", "pitch", "slope", "heading").anyMatch(section::has);
    Attitude lie = lies ? lie(section) : before.ground().lie();
    double modulusPa = before.ground().modulusPa();
    Soil soil = before.soil();
    if (section.has("surface")) {
      String label = section.choice("surface", Surface.GRASS.label(), Surface.labels());
      modulusPa = Surface.labelled(label).modulusPa();
      soil = Soil.of(Surface.labelled(label));
    }
    if (section.has("stiffness")) {
      modulusPa = section.positive("stiffness", Dimension.PRESSURE, modulusPa);
    }
    double uneven = section.number("uneven", before.uneven(), 0, 1);
    return new Site(new Ground(lie, modulusPa), soil, uneven);
  }

  /**
   * The lean of the ground under the coach. On a plane of slope β a coach headed γ from the fall
   * line has tan pitch = tan β cos γ and tan roll = tan β sin γ (apparent dip); γ above 0 turns the
   * nose to the left of straight down, so that the right side is the low one.
   */
  private static Attitude lie(Section section) {
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
