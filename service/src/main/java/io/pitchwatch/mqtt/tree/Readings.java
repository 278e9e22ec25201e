package io.pitchwatch.mqtt.tree;

import io.pitchwatch.mqtt.homie.Node;
import io.pitchwatch.mqtt.homie.Property;
import java.util.ArrayList;
import java.util.List;

/** Collects what the properties of one node after another say. */
public final class Readings {

  private final List<Reading> readings = new ArrayList<>();
  private final Node node;
  private final long takenAtNanos;

  Readings(Node node, long takenAtNanos) {
    this.node = node;
    this.takenAtNanos = takenAtNanos;
  }

  /** Says what one property says. */
  Readings put(Property property, Value value) {
    readings.add(new Reading(node, property, value, takenAtNanos));
    return this;
  }

  /** All that was put, in order. */
  List<Reading> list() {
    return readings;
  }
}
