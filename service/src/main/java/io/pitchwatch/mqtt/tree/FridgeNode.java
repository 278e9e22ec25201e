package io.pitchwatch.mqtt.tree;

import io.pitchwatch.mqtt.homie.Datatype;
import io.pitchwatch.mqtt.homie.Node;
import io.pitchwatch.mqtt.homie.Property;
import io.pitchwatch.visit.Report;
import io.pitchwatch.visit.Report.FridgeReport;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.LongFunction;

/** One fridge: inside its limits or not, and by how much. */
public final class FridgeNode implements CoachNode {

  static final Property WITHIN = Property.plain("within", "Inside its limits", Datatype.BOOLEAN);
  static final Property MARGIN =
      Property.number("margin", "Distance to the nearer limit", Property.DEGREE, 2);
  static final Property OUTSIDE =
      Property.number("outside-minutes", "Outside since parking", "min", 0).withFormat("0:");

  private final String fridge;
  private final Node node;

  /**
   * The node of one fridge.
   *
   * @param fridge the owner's name for it
   */
  public FridgeNode(String fridge) {
    this.fridge = fridge;
    this.node = new Node("fridge-" + fridge, "Fridge " + fridge, List.of(WITHIN, MARGIN, OUTSIDE));
  }

  @Override
  public Node node() {
    return node;
  }

  @Override
  public List<Reading> read(Report report, LongFunction<Instant> wall) {
    double marginDeg = Double.NaN;
    double minutes = Double.NaN;
    for (FridgeReport each : report.fridges()) {
      if (each.id().equals(fridge) && !Double.isNaN(each.marginRad())) {
        marginDeg = Math.toDegrees(each.marginRad());
        minutes = each.outsideMinutes();
      }
    }
    boolean known = !Double.isNaN(marginDeg);
    return new Readings(node, report.floor().takenAtNanos())
        .put(WITHIN, known ? Value.of(Boolean.toString(marginDeg >= 0)) : Value.UNKNOWN)
        .put(MARGIN, Value.of(marginDeg))
        .put(OUTSIDE, Value.of(minutes))
        .list();
  }

  @Override
  public Optional<Guard> guard(Property property) {
    return Optional.of(FloorNode.KNOWN);
  }
}
