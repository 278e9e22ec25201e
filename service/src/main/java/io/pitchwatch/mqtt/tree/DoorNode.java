package io.pitchwatch.mqtt.tree;

import io.pitchwatch.coach.Words;
import io.pitchwatch.comfort.DoorReport;
import io.pitchwatch.comfort.DoorTendency;
import io.pitchwatch.mqtt.homie.Node;
import io.pitchwatch.mqtt.homie.Property;
import io.pitchwatch.visit.Report;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.LongFunction;

/** One door: what it does by itself. */
public final class DoorNode implements CoachNode {

  static final Property TENDENCY =
      Property.choice("tendency", "By itself", Words.of(DoorTendency.values()));

  private final String door;
  private final Node node;

  /**
   * The node of one door.
   *
   * @param door the owner's name for it
   */
  public DoorNode(String door) {
    this.door = door;
    this.node = new Node("door-" + door, "Door " + door, List.of(TENDENCY));
  }

  @Override
  public Node node() {
    return node;
  }

  @Override
  public List<Reading> read(Report report, LongFunction<Instant> wall) {
    Value tendency = Value.UNKNOWN;
    for (DoorReport each : report.doors()) {
      if (each.id().equals(door)) {
        tendency = Value.of(each.tendency());
      }
    }
    return new Readings(node, report.floor().takenAtNanos()).put(TENDENCY, tendency).list();
  }

  @Override
  public Optional<Guard> guard(Property property) {
    return Optional.of(FloorNode.KNOWN);
  }
}
