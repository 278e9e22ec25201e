package io.pitchwatch.sim.scenario;

import io.pitchwatch.sim.world.Attitude;
import io.pitchwatch.sim.world.Axle;
import io.pitchwatch.sim.world.Course;
import io.pitchwatch.sim.world.Happenings;
import io.pitchwatch.sim.world.JackPair;
import io.pitchwatch.sim.world.Side;
import io.pitchwatch.sim.world.Stack;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Consumer;

/** Reads the events that change what is between coach and ground: lay, jack, settle. */
final class GroundworkReader {

  /** What can happen. */
  static final List<String> VERBS = List.of("lay", "jack", "settle");

  private static final double CLIMB_S = 20;
  private static final double JACK_S = 15;

  private final CoachPlan coach;
  private final Happenings happenings;
  private final Consumer<Due> due;

  /**
   * A reader.
   *
   * @param coach whose wheels and jacks the events name
   * @param happenings receives what happens to the coach
   * @param due receives what its owner would tell the service of it
   */
  GroundworkReader(CoachPlan coach, Happenings happenings, Consumer<Due> due) {
    this.coach = coach;
    this.happenings = happenings;
    this.due = due;
  }

  void read(String does, double atS, Section event) {
    switch (does) {
      case "lay" -> lay(atS, event);
      case "jack" -> jack(atS, event);
      default -> settle(atS, event);
    }
  }

  private void lay(double atS, Section event) {
    double overS = event.amount("lasts", Dimension.TIME, CLIMB_S);
    int abreast = (int) event.whole("abreast", 1, 1, 10);
    Happenings.Wheel wheel = wheel(event);
    double heightM = event.amount("lift", Dimension.LENGTH, 0);
    double widthM = coach.footprintM().getOrDefault(wheel.axle(), 0.3);
    double areaM2 = heightM > 0 ? widthM * widthM : coach.bareM2(wheel.axle());
    if (event.has("lift") == event.has("layers")) {
      event.complain("lift", "either lift, or layers from the ground up");
    }
    List<String> layers = words(event, "layers", coach.pieces());
    if (!layers.isEmpty()) {
      heightM = thicknessM(layers, coach.pieces());
      areaM2 = coach.pieceM2(layers.get(0)) * abreast;
    }
    happenings.lay(atS, overS, wheel, new Stack(heightM, areaM2));
    Map<String, String> told = new LinkedHashMap<>();
    told.put("axle", wheel.axle());
    told.put("side", wheel.side().label());
    told.put("lift", metres(heightM));
    told.put("layers", String.join(",", layers));
    told.put("abreast", Integer.toString(abreast));
    due.accept(new Due(atS, "lay", told));
  }

  private void jack(double atS, Section event) {
    double overS = event.amount("lasts", Dimension.TIME, JACK_S);
    List<String> pairs = coach.chassis().jackPairs().stream().map(JackPair::id).toList();
    String pair = event.choice("pair", pairs.isEmpty() ? "" : pairs.get(0), pairs);
    boolean up = event.flag("up", false);
    if (up && (event.has("raise") || event.has("pads-left") || event.has("pads-right"))) {
      event.complain("up", "up alone, or raise and pads");
    }
    double raiseM = event.quantity("raise", Dimension.LENGTH, 0);
    double leftM = thicknessM(words(event, "pads-left", coach.pads()), coach.pads());
    double rightM = thicknessM(words(event, "pads-right", coach.pads()), coach.pads());
    if (pairs.isEmpty()) {
      event.complain("pair", "a coach that has jacks");
      return;
    }
    happenings.jack(atS, overS, pair, new Happenings.JackOrder(raiseM, leftM, rightM, up));
    Map<String, String> told = new LinkedHashMap<>();
    told.put("pair", pair);
    told.put("up", Boolean.toString(up));
    told.put("raise", metres(raiseM));
    told.put("pad-left", metres(leftM));
    told.put("pad-right", metres(rightM));
    due.accept(new Due(atS, "jack", told));
  }

  /** Either a wheel sinks by so much, or the whole floor leans by so much more. */
  private void settle(double atS, Section event) {
    Course course = Course.labelled(event.choice("law", "linear", List.of("linear", "log")));
    double overS = event.amount("lasts", Dimension.TIME, 0);
    if (event.has("roll") || event.has("pitch")) {
      double rollRad = event.quantity("roll", Dimension.ANGLE, 0);
      double pitchRad = event.quantity("pitch", Dimension.ANGLE, 0);
      happenings.shift(atS, overS, course, new Attitude(rollRad, pitchRad));
      return;
    }
    double depthM = event.quantity("sink", Dimension.LENGTH);
    happenings.sink(atS, overS, wheel(event), new Happenings.Sink(depthM, course));
  }

  private Happenings.Wheel wheel(Section event) {
    List<String> axles = coach.chassis().axles().stream().map(Axle::id).toList();
    String axle = event.choice("axle", null, axles);
    String side = event.choice("side", null, List.of("left", "right"));
    return new Happenings.Wheel(
        axles.contains(axle) ? axle : axles.get(0),
        side.isEmpty() ? Side.LEFT : Side.valueOf(side.toUpperCase(Locale.ROOT)));
  }

  private static List<String> words(Section event, String key, Map<String, CoachPlan.Slab> known) {
    return event.choices(key, known.keySet().stream().sorted().toList());
  }

  private static double thicknessM(List<String> words, Map<String, CoachPlan.Slab> known) {
    double sumM = 0;
    for (Map.Entry<String, CoachPlan.Slab> slab : known.entrySet()) {
      sumM += Collections.frequency(words, slab.getKey()) * slab.getValue().thicknessM();
    }
    return sumM;
  }

  private static String metres(double value) {
    return String.format(Locale.ROOT, "%.4f", value);
  }
}
