package io.pitchwatch.mqtt.discovery;

import io.pitchwatch.mqtt.homie.Topic;

/**
 * Topics between one device and hubs that listen under one prefix.
 *
 * @param prefix first level or levels of the hub's topics
 * @param device unique id of the device among all that announce themselves there
 */
public record HubTopics(String prefix, String device) {

  /** Where the device announces itself; retained. */
  public Topic config() {
    return new Topic(prefix + "/device/" + device + "/config");
  }

  /** Where the hub says {@code online} when it comes up. */
  public Topic status() {
    return new Topic(prefix + "/status");
  }
}
