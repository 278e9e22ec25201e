package io.pitchwatch.sim.scenario;

import io.pitchwatch.sim.world.Attitude;
import io.pitchwatch.sim.world.Climate;
import io.pitchwatch.sim.world.Course;
import io.pitchwatch.sim.world.Happenings;
import io.pitchwatch.sim.world.Rain;
import io.pitchwatch.sim.world.Site;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Reads the timeline, event by event in order of time: what moves the coach. */
final class EventReader {

  private static final int MOST_TIMES = 10_000;
  private static final double DEFAULT_LINE_HZ = 32.5;
  private static final double DEFAULT_LEVEL_G = 0.022;
  private static final double DEFAULT_STEP_LEAN_RAD = Math.toRadians(0.02);
  private static final double DEFAULT_ROCK_RAD = Math.toRadians(0.08);
  private static final double DEFAULT_SPEED_MPS = 40 / 3.6;
  private static final double DEFAULT_BRAKING_S = 4;
  private static final double SLIDE_S = 30;
  private static final double TANK_S = 600;
  private static final double HOUR_S = 3600;
  private static final double SUN_LAG_S = 1800;
  private static final List<String> MOTION =
      List.of("drive", "stop", "engine", "walk", "wind", "slide-out", "tank", "sun", "rain");

  /** Everything that can happen. */
  static final List<String> VERBS =
      Stream.of(MOTION, GroundworkReader.VERBS, SurroundingsReader.VERBS)
          .flatMap(List::stream)
          .toList();

  private final Happenings happenings;
  private final SurroundingsReader around = new SurroundingsReader();
  private final List<Climate.Sun> spells = new ArrayList<>();
  private final GroundworkReader groundwork;
  private Site site;
  private double underWayFromS = Double.NaN;
  private double standsFromS;
  private double speedMps = DEFAULT_SPEED_MPS;
  private @Nullable Section lastDrive;

  EventReader(CoachPlan coach, Happenings happenings, Site site) {
    this.happenings = happenings;
    this.groundwork = new GroundworkReader(coach, happenings, around::note);
    this.site = site;
  }

  /** The times at which an event happens: once, or again and again. */
  static List<Timed> times(Section event) {
    double atS = event.quantity("at", Dimension.TIME);
    if (atS < 0) {
      event.complain("at", "0 or more");
    }
    double everyS = event.has("every") ? event.positive("every", Dimension.TIME, 1) : 0;
    long times = event.whole("times", 1, 1, MOST_TIMES);
    if (event.has("every") != event.has("times")) {
      event.complain("every", "every and times together");
    }
    List<Timed> all = new ArrayList<>();
    for (int i = 0; i < times; i++) {
      all.add(new Timed(atS + i * everyS, event));
    }
    return all;
  }

  /**
   * An event at its time.
   *
   * @param atS when, seconds
   * @param event what
   */
  record Timed(double atS, Section event) {}

  /** Reads one event; later ones must not lie before it. */
  void read(Timed timed) {
    double atS = timed.atS();
    Section event = timed.event();
    String does = event.choice("does", null, VERBS);
    if (MOTION.contains(does)) {
      moving(does, atS, event);
    } else if (GroundworkReader.VERBS.contains(does)) {
      groundwork.read(does, atS, event);
    } else if (!does.isEmpty()) {
      around.read(does, atS, event);
    }
    if (!does.isEmpty()) {
      event.finish();
    }
  }

  private void moving(String does, double atS, Section event) {
    switch (does) {
      case "drive" -> drive(atS, event);
      case "stop" -> stop(atS, event);
      case "engine" ->
          happenings.engine(
              atS,
              untilS(atS, event),
              event.amount("line", Dimension.FREQUENCY, DEFAULT_LINE_HZ),
              event.amount("level", Dimension.ACCELERATION, DEFAULT_LEVEL_G));
      case "walk" ->
          happenings.walk(
              atS,
              untilS(atS, event),
              (int) event.whole("people", 1, 1, 20),
              event.amount("lean", Dimension.ANGLE, DEFAULT_STEP_LEAN_RAD));
      case "wind" ->
          happenings.wind(
              atS, untilS(atS, event), event.amount("rock", Dimension.ANGLE, DEFAULT_ROCK_RAD));
      case "slide-out" ->
          happenings.shift(
              atS, event.amount("lasts", Dimension.TIME, SLIDE_S), Course.SMOOTH, lean(event));
      case "tank" ->
          happenings.shift(
              atS, event.amount("lasts", Dimension.TIME, TANK_S), Course.LINEAR, lean(event));
      case "rain" ->
          happenings.rain(
              new Rain.Shower(
                  atS,
                  event.has("lasts") ? event.positive("lasts", Dimension.TIME, 1) : HOUR_S,
                  event.amount("amount", Dimension.LENGTH, 0)));
      default ->
          spells.add(
              new Climate.Sun(
                  atS,
                  event.amount("lasts", Dimension.TIME, Double.POSITIVE_INFINITY),
                  event.quantity("rise", Dimension.WARMTH),
                  event.amount("lag", Dimension.TIME, SUN_LAG_S)));
    }
  }

  /** Until when something lasts, seconds; for ever if it does not say. */
  private static double untilS(double atS, Section event) {
    return atS + event.amount("lasts", Dimension.TIME, Double.POSITIVE_INFINITY);
  }

  private static Attitude lean(Section event) {
    if (!event.has("roll") && !event.has("pitch")) {
      event.complain("roll", "roll or pitch, " + Dimension.ANGLE.allowed());
    }
    return new Attitude(
        event.quantity("roll", Dimension.ANGLE, 0), event.quantity("pitch", Dimension.ANGLE, 0));
  }

  private void drive(double atS, Section event) {
    if (!Double.isNaN(underWayFromS)) {
      event.complain("does", "a stop before the next drive");
    }
    if (atS < standsFromS) {
      event.complain("at", "when the coach stands again, after " + standsFromS + " s");
    }
    speedMps = Math.max(0.5, event.amount("speed", Dimension.SPEED, DEFAULT_SPEED_MPS));
    if (event.has("lasts")) {
      double endS = atS + event.amount("lasts", Dimension.TIME, 0);
      double brakeS = Math.max(atS, endS - DEFAULT_BRAKING_S);
      happenings.travel(new Happenings.Trip(atS, brakeS, endS, speedMps), site);
      standsFromS = endS;
    } else {
      underWayFromS = atS;
      lastDrive = event;
    }
  }

  /** Braking begins at the event and lasts as it says; then the coach stands. */
  private void stop(double atS, Section event) {
    double brakingS = event.amount("lasts", Dimension.TIME, DEFAULT_BRAKING_S);
    site = SiteReader.site(event, site);
    if (Double.isNaN(underWayFromS)) {
      event.complain("does", "a drive before it");
      return;
    }
    happenings.travel(new Happenings.Trip(underWayFromS, atS, atS + brakingS, speedMps), site);
    underWayFromS = Double.NaN;
    standsFromS = atS + brakingS;
  }

  /** Checks what only the whole timeline shows. */
  void finish() {
    if (lastDrive != null && !Double.isNaN(underWayFromS)) {
      lastDrive.complain("does", "lasts, or a stop after it");
    }
  }

  /** Spells of sun, for the climate. */
  List<Climate.Sun> spells() {
    return spells;
  }

  /** All that was read. */
  Script script(Climate climate) {
    return new Script(happenings.in(climate), around.switches(), around.due());
  }
}
