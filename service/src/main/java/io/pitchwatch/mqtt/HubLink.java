package io.pitchwatch.mqtt;

import io.pitchwatch.mqtt.discovery.HubAnnouncement;
import io.pitchwatch.mqtt.discovery.HubTopics;
import io.pitchwatch.mqtt.homie.DeviceTopics;
import io.pitchwatch.mqtt.link.Arrival;
import io.pitchwatch.mqtt.link.Filter;
import io.pitchwatch.mqtt.link.Payload;
import io.pitchwatch.mqtt.link.Publication;
import io.pitchwatch.mqtt.tree.DeviceTree;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Keeps home-automation hubs informed of what there is to show. */
final class HubLink {

  private static final Payload ONLINE = Payload.of("online");
  private static final String PREFIX_OF_IDS = "pitchwatch-";

  private final List<HubTopics> hubs = new ArrayList<>();
  private final List<HubTopics> formerHubs = new ArrayList<>();
  private final Payload message;

  HubLink(DeviceTree tree, DeviceTopics topics, MqttSettings settings, String version) {
    String device = PREFIX_OF_IDS + topics.device();
    settings.announce().forEach(prefix -> hubs.add(new HubTopics(prefix, device)));
    MqttSettings.DEFAULT_ANNOUNCE.stream()
        .filter(prefix -> !settings.announce().contains(prefix))
        .forEach(prefix -> formerHubs.add(new HubTopics(prefix, device)));
    message = Payload.of(new HubAnnouncement(tree, topics, device, version).json());
  }

  /** The announcements, and the removal of one that is no longer wanted. */
  List<Publication> all() {
    List<Publication> all = new ArrayList<>();
    hubs.forEach(hub -> all.add(announcement(hub, message)));
    formerHubs.forEach(hub -> all.add(announcement(hub, Payload.NOTHING)));
    return all;
  }

  /** Quality of service 1: many brokers do not let us announce, and Paho survives that refusal. */
  private static Publication announcement(HubTopics hub, Payload payload) {
    return new Publication(hub.config(), payload, 1, true, Optional.empty(), Optional.empty());
  }

  /** Where hubs say that they came up. */
  List<Filter> filters() {
    return hubs.stream().map(hub -> new Filter(hub.status().text(), 1)).toList();
  }

  /** Whether a hub came up just now, and has to be told everything. */
  boolean isBirth(Arrival arrival) {
    return !arrival.retained()
        && arrival.payload().equals(ONLINE)
        && hubs.stream().anyMatch(hub -> hub.status().text().equals(arrival.topic()));
  }
}
