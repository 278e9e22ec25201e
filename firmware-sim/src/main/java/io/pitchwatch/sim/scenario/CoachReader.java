package io.pitchwatch.sim.scenario;

import io.pitchwatch.sim.world.Axle;
import io.pitchwatch.sim.world.Chassis;
import io.pitchwatch.sim.world.JackPair;
import io.pitchwatch.sim.world.Surface;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Reads axles, jacks, pieces and pads as the service's config has them; what else stands in their
 * tables is the service's business. A scenario that describes no axle gets a small two-axle coach.
 */
final class CoachReader {

  private static final double USUAL_DROOP_M = 0.08;
  private static final double LEAST_DROOP_M = 0.01;
  private static final double COUPLING_M = 4;
  private static final double COUPLING_SHARE = 0.1;
  private static final double USUAL_FOOT_M = 0.15;
  private static final List<Axle> USUAL_AXLES =
      List.of(
          new Axle("front", 0, 1.9, 2600, USUAL_DROOP_M, 2600, 0.02, false),
          new Axle("rear", -4.2, 1.75, 4400, USUAL_DROOP_M, 4400, 0.035, true));

  private CoachReader() {}

  /** Reads the coach from the file that describes it. */
  static CoachPlan read(Section file, double rollArmM) {
    Map<String, Double> footprints = new HashMap<>();
    List<Axle> axles = axles(file, footprints);
    List<JackPair> jackPairs = new ArrayList<>();
    for (Section section : file.tables("jack-pair")) {
      jackPairs.add(jackPair(section));
    }
    jackPairs.sort(Comparator.comparingDouble(JackPair::xM).reversed());
    return new CoachPlan(
        chassis(file, axles, jackPairs, rollArmM),
        footprints,
        slabs(file, "piece"),
        slabs(file, "pad"));
  }

  private static Chassis chassis(
      Section file, List<Axle> axles, List<JackPair> jackPairs, double rollArmM) {
    try {
      return new Chassis(axles, jackPairs, rollArmM);
    } catch (IllegalArgumentException e) {
      file.complain("axle", "axles on which a coach can stand: " + e.getMessage());
      return new Chassis(USUAL_AXLES, List.of(), 0);
    }
  }

  private static List<Axle> axles(Section file, Map<String, Double> footprints) {
    List<Axle> axles = new ArrayList<>();
    for (Section section : file.tables("axle")) {
      Axle axle = axle(section);
      axles.add(axle);
      footprints.put(axle.id(), section.positive("footprint", Dimension.LENGTH, 0.3));
    }
    if (axles.isEmpty()) {
      axles.addAll(USUAL_AXLES);
    } else if (axles.size() == 1) {
      axles.add(coupling(axles.get(0)));
    }
    axles.sort(Comparator.comparingDouble(Axle::xM).reversed());
    return axles;
  }

  /** What a coach with one axle leans on in front: it carries little, and lets the body roll. */
  private static Axle coupling(Axle axle) {
    return new Axle(
        "coupling",
        axle.xM() + COUPLING_M,
        axle.trackM(),
        COUPLING_SHARE * axle.loadKg(),
        axle.droopM(),
        1e-3 * axle.stiffnessShare(),
        Surface.tyreContactM2(COUPLING_SHARE * axle.loadKg()),
        false);
  }

  private static Axle axle(Section section) {
    double loadKg = section.positive("load", Dimension.MASS, 3000);
    double droopM = section.amount("droop", Dimension.LENGTH, 0);
    return new Axle(
        section.text("id"),
        section.quantity("position", Dimension.LENGTH),
        section.positive("track", Dimension.LENGTH, 1.9),
        loadKg,
        droopM < LEAST_DROOP_M ? USUAL_DROOP_M : droopM,
        section.number("stiffness", loadKg, 1e-3, 1e3),
        Surface.tyreContactM2(loadKg / 2),
        section.flag("parking-brake", false));
  }

  private static JackPair jackPair(Section section) {
    double footM = section.positive("foot", Dimension.LENGTH, USUAL_FOOT_M);
    return new JackPair(
        section.text("id"),
        section.quantity("position", Dimension.LENGTH),
        section.positive("spacing", Dimension.LENGTH, 1.5),
        section.amount("clearance", Dimension.LENGTH, 0.3),
        section.positive("stroke", Dimension.LENGTH, 0.4),
        section.positive("capacity", Dimension.MASS, 5000),
        Math.PI / 4 * footM * footM);
  }

  private static Map<String, CoachPlan.Slab> slabs(Section file, String key) {
    Map<String, CoachPlan.Slab> slabs = new LinkedHashMap<>();
    for (Section section : file.tables(key)) {
      double areaM2 =
          section.positive("length", Dimension.LENGTH, 0.3)
              * section.positive("width", Dimension.LENGTH, 0.3);
      double thicknessM = section.positive("thickness", Dimension.LENGTH, 0.04);
      slabs.put(section.text("id"), new CoachPlan.Slab(thicknessM, areaM2));
    }
    return slabs;
  }
}
