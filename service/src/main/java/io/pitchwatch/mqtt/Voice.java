package io.pitchwatch.mqtt;

import io.pitchwatch.mqtt.homie.DeviceTopics;
import io.pitchwatch.mqtt.homie.Node;
import io.pitchwatch.mqtt.homie.Property;
import io.pitchwatch.mqtt.homie.Topic;
import io.pitchwatch.mqtt.link.Publication;
import io.pitchwatch.mqtt.tree.AlertBoard;
import io.pitchwatch.mqtt.tree.CoachNode;
import io.pitchwatch.mqtt.tree.DeviceTree;
import io.pitchwatch.mqtt.tree.Display;
import io.pitchwatch.mqtt.tree.Pace;
import io.pitchwatch.visit.Report;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.LongFunction;

/** All that the coach says on the broker: what it is, what it measures, what stands against it. */
final class Voice {

  private final DeviceTree tree;
  private final DeviceTopics topics;
  private final HubLink hubs;
  private final LongFunction<Instant> wall;
  private final Display display;
  private final AlertBoard alerts;

  Voice(DeviceTree tree, DeviceTopics topics, HubLink hubs, LongFunction<Instant> wall) {
    this.tree = tree;
    this.topics = topics;
    this.hubs = hubs;
    this.wall = wall;
    this.display = new Display(tree, topics);
    this.alerts = new AlertBoard(topics);
  }

  Display display() {
    return display;
  }

  /** Says what is new in a report. */
  void say(Report report, Pace pace, long nowNanos, Consumer<Publication> out) {
    display.show(tree.read(report, wall), pace, nowNanos, out);
    alerts.show(report.alerts(), out);
  }

  /** Says everything, in the order in which a newcomer wants it; takes away what is no more. */
  List<Publication> everything(Leftovers leftovers) {
    List<Publication> all = new ArrayList<>();
    all.add(
        Publication.standing(
            topics.description(),
            DescriptionVersion.of(tree.description(), leftovers.description())));
    all.addAll(display.all());
    all.addAll(alerts.all());
    for (String stray : leftovers.strays(known())) {
      all.add(Publication.removal(new Topic(stray)));
    }
    all.addAll(hubs.all());
    return all;
  }

  /** Says everything a hub wants that just came up: first what there is, then how it stands. */
  List<Publication> forHub() {
    List<Publication> all = new ArrayList<>(hubs.all());
    all.addAll(display.all());
    return all;
  }

  private Set<String> known() {
    Set<String> known = new HashSet<>();
    known.add(topics.state().text());
    known.add(topics.description().text());
    for (CoachNode each : tree.nodes()) {
      Node node = each.node();
      for (Property property : node.properties()) {
        known.add(topics.value(node, property).text());
      }
    }
    alerts.all().forEach(alert -> known.add(alert.topic().text()));
    return known;
  }
}
