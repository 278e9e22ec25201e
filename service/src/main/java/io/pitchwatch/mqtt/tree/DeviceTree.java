package io.pitchwatch.mqtt.tree;

import io.pitchwatch.coach.Coach;
import io.pitchwatch.coach.Door;
import io.pitchwatch.coach.Fridge;
import io.pitchwatch.mqtt.homie.Description;
import io.pitchwatch.mqtt.homie.Node;
import io.pitchwatch.visit.Report;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.LongFunction;

/**
 * All nodes of one coach. A new kind of node is one class and one line here.
 *
 * @param name of the device, for people
 * @param nodes in the order of the description
 */
public record DeviceTree(String name, List<CoachNode> nodes) {

  /** Copies the list. */
  public DeviceTree {
    nodes = List.copyOf(nodes);
  }

  /**
   * The tree of a coach.
   *
   * @param coach as its owner described it
   * @param sensors their names
   */
  public static DeviceTree of(Coach coach, List<String> sensors) {
    List<CoachNode> nodes = new ArrayList<>();
    nodes.add(new FloorNode());
    nodes.add(new PlanNode());
    for (Fridge fridge : coach.fridges()) {
      nodes.add(new FridgeNode(fridge.id()));
    }
    for (String sensor : sensors) {
      nodes.add(new SensorNode(sensor));
    }
    for (Door door : coach.doors()) {
      nodes.add(new DoorNode(door.id()));
    }
    nodes.add(new GroundNode());
    if (sensors.size() > 1) {
      nodes.add(new FrameNode());
    }
    nodes.add(new VisitNode(coach));
    nodes.add(new UpkeepNode(sensors));
    return new DeviceTree(coach.id(), nodes);
  }

  /** What the tree is. */
  public Description description() {
    List<Node> described = nodes.stream().map(CoachNode::node).toList();
    return new Description(name, described);
  }

  /** What the tree says of a report. */
  public List<Reading> read(Report report, LongFunction<Instant> wall) {
    List<Reading> readings = new ArrayList<>();
    for (CoachNode node : nodes) {
      readings.addAll(node.read(report, wall));
    }
    return readings;
  }
}
