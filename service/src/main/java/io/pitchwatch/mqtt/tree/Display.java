package io.pitchwatch.mqtt.tree;

import io.pitchwatch.mqtt.homie.DeviceTopics;
import io.pitchwatch.mqtt.homie.Node;
import io.pitchwatch.mqtt.homie.Property;
import io.pitchwatch.mqtt.link.Publication;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.function.Consumer;

/** What all properties show, so that only what changes is said, and not too often. */
public final class Display {

  private final IdentityHashMap<Node, IdentityHashMap<Property, Shown>> byNode =
      new IdentityHashMap<>();
  private final List<Shown> inOrder = new ArrayList<>();

  /** Nothing is shown yet; every retained property of the tree has its place. */
  public Display(DeviceTree tree, DeviceTopics topics) {
    for (CoachNode each : tree.nodes()) {
      IdentityHashMap<Property, Shown> properties = new IdentityHashMap<>();
      for (Property property : each.node().properties()) {
        if (property.retained()) {
          Shown shown = new Shown(topics.value(each.node(), property), property);
          properties.put(property, shown);
          inOrder.add(shown);
        }
      }
      byNode.put(each.node(), properties);
    }
  }

  /**
   * Shows what changed.
   *
   * @param readings of nodes of the tree
   * @param pace how closely it is watched
   * @param out takes what is to be published
   */
  public void show(List<Reading> readings, Pace pace, long nowNanos, Consumer<Publication> out) {
    for (Reading each : readings) {
      shown(each.node(), each.property()).show(each.value(), pace, nowNanos).ifPresent(out);
    }
  }

  /** Shows an accepted command byte for byte. */
  public Publication echo(Node node, Property property, String payload, long nowNanos) {
    return shown(node, property).echo(payload, nowNanos);
  }

  /** All that stands, in the order of the tree; removals for what is not known. */
  public List<Publication> all() {
    return inOrder.stream().map(Shown::publication).toList();
  }

  private Shown shown(Node node, Property property) {
    IdentityHashMap<Property, Shown> properties = byNode.get(node);
    Shown shown = properties == null ? null : properties.get(property);
    if (shown == null) {
      throw new IllegalArgumentException(
          node.id() + "/" + property.id() + " is not a retained property of this tree");
    }
    return shown;
  }
}
