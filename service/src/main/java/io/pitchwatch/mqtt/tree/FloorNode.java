package io.pitchwatch.mqtt.tree;

import io.pitchwatch.coach.Words;
import io.pitchwatch.comfort.Verdict;
import io.pitchwatch.floor.FloorReading;
import io.pitchwatch.floor.FloorState;
import io.pitchwatch.mqtt.homie.Datatype;
import io.pitchwatch.mqtt.homie.Node;
import io.pitchwatch.mqtt.homie.Property;
import io.pitchwatch.visit.Report;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.function.LongFunction;

/** How the floor leans, and what to think of it. */
public final class FloorNode implements CoachNode {

  /**
   * A lean smaller than this is called even, in degrees: over a track of 2 m it is less than 2 mm,
   * the thinnest thing anyone lays.
   */
  static final double EVEN_DEG = 0.05;

  static final Property ROLL =
      Property.number("roll", "Roll, positive: right side low", Property.DEGREE, 2);
  static final Property PITCH =
      Property.number("pitch", "Pitch, positive: front low", Property.DEGREE, 2);
  static final Property UNCERTAINTY =
      Property.number("uncertainty", "Standard error of both", Property.DEGREE, 3);
  static final Property LOW_SIDE = Property.choice("low-side", "Low side", "left", "right", "even");
  static final Property LOW_END = Property.choice("low-end", "Low end", "front", "rear", "even");
  static final Property STATE =
      Property.choice("state", "At rest or moving", Words.of(FloorState.values()));
  static final Property VERDICT =
      Property.choice("verdict", "Level enough for this stay", Words.of(Verdict.values()));
  static final Property TAKEN_AT =
      Property.plain("taken-at", "Time of the figures", Datatype.DATETIME);

  private static final Node NODE =
      new Node(
          "floor",
          "Floor",
          List.of(ROLL, PITCH, UNCERTAINTY, LOW_SIDE, LOW_END, STATE, VERDICT, TAKEN_AT));

  /** What rests on samples of the floor rests on this. */
  static final Guard KNOWN = new Guard(NODE, STATE, Words.of(FloorState.UNKNOWN));

  @Override
  public Node node() {
    return NODE;
  }

  @Override
  public List<Reading> read(Report report, LongFunction<Instant> wall) {
    FloorReading floor = report.floor();
    double rollDeg = floor.lean().rollDeg();
    double pitchDeg = floor.lean().pitchDeg();
    double errorDeg = Math.toDegrees(floor.uncertaintyRad());
    boolean known = floor.state() != FloorState.UNKNOWN;
    // That nothing is known is known now; there may never have been a sample.
    return new Readings(NODE, known ? floor.takenAtNanos() : report.atNanos())
        .put(ROLL, Value.of(rollDeg))
        .put(PITCH, Value.of(pitchDeg))
        .put(UNCERTAINTY, Value.of(errorDeg))
        .put(LOW_SIDE, low(rollDeg, errorDeg, "right", "left"))
        .put(LOW_END, low(pitchDeg, errorDeg, "front", "rear"))
        .put(STATE, Value.of(floor.state()))
        .put(VERDICT, Value.of(report.verdict()))
        .put(TAKEN_AT, known ? label(floor, wall) : Value.UNKNOWN)
        .list();
  }

  private static Value label(FloorReading floor, LongFunction<Instant> wall) {
    return Value.of(wall.apply(floor.takenAtNanos()).truncatedTo(ChronoUnit.SECONDS).toString());
  }

  @Override
  public Optional<Guard> guard(Property property) {
    boolean speaksForItself = property.equals(STATE) || property.equals(VERDICT);
    return speaksForItself ? Optional.empty() : Optional.of(KNOWN);
  }

  /** Even: below {@link #EVEN_DEG}, or not told from zero by two standard errors. */
  private static Value low(double deg, double errorDeg, String positive, String negative) {
    if (Double.isNaN(deg + errorDeg)) {
      return Value.UNKNOWN;
    }
    if (Math.abs(deg) < EVEN_DEG || Math.abs(deg) < 2 * errorDeg) {
      return Value.of("even");
    }
    return Value.of(deg > 0 ? positive : negative);
  }
}
