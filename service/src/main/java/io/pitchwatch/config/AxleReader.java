package io.pitchwatch.config;

import static io.pitchwatch.config.Range.length;
import static io.pitchwatch.config.Range.mass;

import io.pitchwatch.coach.Axle;
import java.util.ArrayList;
import java.util.List;

/** Reads [[axle]]: front to back, at least one. */
final class AxleReader {

  private static final int MOST = 4;

  private static final Axle STAND_IN = new Axle("x", 0, 1, 1, 0, 1, 1, false, false);

  private AxleReader() {}

  /** The axles; a stand-in where there are none, the fault being noted. */
  static List<Axle> read(Section root) {
    List<Section> sections = root.tables("axle", MOST);
    if (sections.isEmpty() && root.sound("axle")) {
      root.missing("axle", "at least one table [[axle]]");
    }
    boolean jacks = root.has("jack-pair");
    boolean brakeNamed = sections.stream().anyMatch(section -> section.has("parking-brake"));
    List<Axle> axles = new ArrayList<>();
    double[] stiffness = new double[sections.size()];
    for (int i = 0; i < sections.size(); i++) {
      stiffness[i] = sections.get(i).number("stiffness", 0.001, 1000, "in proportion to load");
      boolean braked = !brakeNamed && i == sections.size() - 1;
      axles.add(axle(sections.get(i), jacks, braked));
    }
    Ids.refuseRepeats(sections, axles.stream().map(Axle::id).toList());
    refuseDisorder(sections, axles);
    fillIn(stiffness, axles);
    for (int i = 0; i < stiffness.length; i++) {
      axles.set(i, with(stiffness[i], axles.get(i)));
    }
    return axles.isEmpty() ? List.of(STAND_IN) : axles;
  }

  private static Axle axle(Section section, boolean jacks, boolean braked) {
    Range droop = length("0 mm", "1 m");
    Axle axle =
        new Axle(
            section.id(),
            section.quantity("position", length("-30 m", "30 m")),
            section.quantity("track", length("500 mm", "4 m")),
            section.quantity("load", mass("50 kg", "30 t")),
            section.quantity(
                "droop", droop, 0, jacks ? null : "0 mm; needed where there are jacks"),
            section.quantity("footprint", length("50 mm", "2 m")),
            1,
            section.flag("twin", false),
            section.flag("parking-brake", braked));
    if (axle.footprintMm() >= axle.trackMm() && section.sound("footprint", "track")) {
      section.fault("footprint", "a footprint not narrower than the track", "less than the track");
    }
    section.refuseUnknown();
    return axle;
  }

  /** What is not given is to the axle's load as what is given is to the other axles' loads. */
  private static void fillIn(double[] stiffness, List<Axle> axles) {
    double given = 0;
    double carriedKg = 0;
    for (int i = 0; i < stiffness.length; i++) {
      if (!Double.isNaN(stiffness[i])) {
        given += stiffness[i];
        carriedKg += axles.get(i).loadKg();
      }
    }
    double perKg = carriedKg > 0 ? given / carriedKg : 1;
    for (int i = 0; i < stiffness.length; i++) {
      if (Double.isNaN(stiffness[i])) {
        stiffness[i] = perKg * axles.get(i).loadKg();
      }
    }
  }

  private static Axle with(double stiffness, Axle axle) {
    return new Axle(
        axle.id(),
        axle.positionMm(),
        axle.trackMm(),
        axle.loadKg(),
        axle.droopMm(),
        axle.footprintMm(),
        stiffness,
        axle.twin(),
        axle.parkingBrake());
  }

  private static void refuseDisorder(List<Section> sections, List<Axle> axles) {
    for (int i = 1; i < axles.size(); i++) {
      boolean sound = sections.get(i).sound("position") && sections.get(i - 1).sound("position");
      if (sound && axles.get(i).positionMm() >= axles.get(i - 1).positionMm()) {
        sections
            .get(i)
            .fault(
                "position",
                "an axle not behind the one before it",
                "axles front to back: a position less than the one before, forward is positive");
      }
    }
  }
}
