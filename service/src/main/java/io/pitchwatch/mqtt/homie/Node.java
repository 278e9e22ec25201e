package io.pitchwatch.mqtt.homie;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * One node of the device.
 *
 * @param id topic level of the node
 * @param name for people
 * @param properties in the order of the description
 */
public record Node(String id, String name, List<Property> properties) {

  /**
   * Checks the ids; copies the list.
   *
   * @throws IllegalArgumentException if an id is malformed or used twice
   */
  public Node {
    Ids.require("node id", id);
    Set<String> seen = new HashSet<>();
    for (Property property : properties) {
      if (!seen.add(property.id())) {
        throw new IllegalArgumentException(id + " has property " + property.id() + " twice");
      }
    }
    properties = List.copyOf(properties);
  }

  /** The property with the given id. */
  public Optional<Property> property(String propertyId) {
    return properties.stream().filter(p -> p.id().equals(propertyId)).findFirst();
  }
}
