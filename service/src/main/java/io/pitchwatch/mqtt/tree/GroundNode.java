package io.pitchwatch.mqtt.tree;

import io.pitchwatch.mqtt.homie.Datatype;
import io.pitchwatch.mqtt.homie.Node;
import io.pitchwatch.mqtt.homie.Property;
import io.pitchwatch.settling.GroundReport;
import io.pitchwatch.visit.Report;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.LongFunction;

/** The ground: whether it gives, how fast, and when the first limit is reached. */
public final class GroundNode implements CoachNode {

  static final Property SETTLING = Property.plain("settling", "The ground gives", Datatype.BOOLEAN);
  static final Property ROLL_RATE = Property.number("roll-rate", "Rate of roll", "°/h", 3);
  static final Property PITCH_RATE = Property.number("pitch-rate", "Rate of pitch", "°/h", 3);
  static final Property HOURS =
      Property.number("hours-to-limit", "Hours to the first limit", "h", 1).withFormat("0:");

  private final Node node =
      new Node("ground", "Ground", List.of(SETTLING, ROLL_RATE, PITCH_RATE, HOURS));

  @Override
  public Node node() {
    return node;
  }

  @Override
  public List<Reading> read(Report report, LongFunction<Instant> wall) {
    GroundReport ground = report.ground();
    boolean known = !Double.isNaN(ground.roll().rateRadPerHour());
    return new Readings(node, ground.atNanos())
        .put(SETTLING, known ? Value.of(Boolean.toString(ground.settling())) : Value.UNKNOWN)
        .put(ROLL_RATE, Value.of(Math.toDegrees(ground.roll().rateRadPerHour())))
        .put(PITCH_RATE, Value.of(Math.toDegrees(ground.pitch().rateRadPerHour())))
        .put(HOURS, Value.of(ground.toLimit().hours()))
        .list();
  }

  @Override
  public Optional<Guard> guard(Property property) {
    return Optional.of(FloorNode.KNOWN);
  }

  @Override
  public String wrong(Property property) {
    return "true";
  }
}
