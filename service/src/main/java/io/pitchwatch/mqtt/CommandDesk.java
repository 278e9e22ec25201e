package io.pitchwatch.mqtt;

import io.pitchwatch.mqtt.homie.DeviceTopics;
import io.pitchwatch.mqtt.homie.Property;
import io.pitchwatch.mqtt.link.Arrival;
import io.pitchwatch.mqtt.link.Filter;
import io.pitchwatch.mqtt.link.Payload;
import io.pitchwatch.mqtt.link.Publication;
import io.pitchwatch.mqtt.tree.CoachNode;
import io.pitchwatch.mqtt.tree.Commands;
import io.pitchwatch.mqtt.tree.DeviceTree;
import io.pitchwatch.mqtt.tree.Display;
import io.pitchwatch.mqtt.tree.Ruling;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/** Takes what arrives under {@code /set}: understands it, hands it on, echoes it, or refuses it. */
final class CommandDesk {

  /** Longest command, bytes. */
  private static final int LONGEST = 8 * 1024;

  private final Map<String, Route> routes = new LinkedHashMap<>();
  private final DeviceTopics topics;
  private final Commands commands;
  private final Display display;

  CommandDesk(DeviceTree tree, DeviceTopics topics, Commands commands, Display display) {
    this.topics = topics;
    this.commands = commands;
    this.display = display;
    for (CoachNode node : tree.nodes()) {
      for (Property property : node.node().properties()) {
        if (property.settable()) {
          routes.put(topics.set(node.node(), property).text(), new Route(node, property));
        }
      }
    }
  }

  /** All topics under which commands arrive. */
  List<Filter> filters() {
    List<Filter> filters = new ArrayList<>();
    routes.forEach((topic, route) -> filters.add(new Filter(topic, route.qos())));
    return filters;
  }

  /** Whether the topic is one of them. */
  boolean knows(String topic) {
    return routes.containsKey(topic);
  }

  /**
   * Takes a command.
   *
   * @param arrival under a topic that this desk knows, not retained
   * @param out takes the echo of what was accepted
   */
  Ruling take(Arrival arrival, Consumer<Publication> out) {
    Route route = routes.get(arrival.topic());
    if (route == null) {
      return new Ruling.Refused("no command belongs there");
    }
    if (arrival.length() > LONGEST) {
      return new Ruling.Refused("found " + arrival.length() + " bytes; allowed are " + LONGEST);
    }
    Optional<String> text = arrival.payload().text();
    if (text.isEmpty()) {
      return new Ruling.Refused("found bytes that are not UTF-8 text");
    }
    Ruling ruling = route.node().set(route.property(), text.get(), commands);
    if (ruling instanceof Ruling.Accepted) {
      out.accept(echo(route, text.get(), arrival.atNanos()));
    }
    return ruling;
  }

  private Publication echo(Route route, String text, long nowNanos) {
    return route.property().retained()
        ? display.echo(route.node().node(), route.property(), text, nowNanos)
        : Publication.event(topics.value(route.node().node(), route.property()), Payload.of(text));
  }

  private record Route(CoachNode node, Property property) {

    /** Momentary commands come at once or not at all (Homie 5.0, "QoS choices explained"). */
    int qos() {
      return property.retained() ? 2 : 1;
    }
  }
}
