package io.pitchwatch.mqtt.link;

import io.pitchwatch.mqtt.homie.Topic;
import java.util.Optional;

/**
 * One message to go out.
 *
 * @param topic where to
 * @param payload what
 * @param qos quality of service: 0, 1 or 2
 * @param retained whether it stands for those who come later
 * @param responseTopic where an answer is wanted; empty if none is
 * @param correlation by what the answer is known to belong to the request; empty if neither
 */
public record Publication(
    Topic topic,
    Payload payload,
    int qos,
    boolean retained,
    Optional<Topic> responseTopic,
    Optional<Payload> correlation) {

  /** A value that stands; quality of service 2 (Homie 5.0, "QoS and retained messages"). */
  public static Publication standing(Topic topic, Payload payload) {
    return new Publication(topic, payload, 2, true, Optional.empty(), Optional.empty());
  }

  /** Takes away what stands under the topic. */
  public static Publication removal(Topic topic) {
    return standing(topic, Payload.NOTHING);
  }

  /** A momentary event; quality of service 0 (Homie 5.0, "QoS and retained messages"). */
  public static Publication event(Topic topic, Payload payload) {
    return new Publication(topic, payload, 0, false, Optional.empty(), Optional.empty());
  }

  /** A request (MQTT 5.0, 4.10). */
  public static Publication request(
      Topic topic, Payload payload, Topic responseTopic, Payload correlation) {
    return new Publication(
        topic, payload, 1, false, Optional.of(responseTopic), Optional.of(correlation));
  }

  /** The answer to a request (MQTT 5.0, 4.10). */
  public static Publication answer(Topic topic, Payload payload, Optional<Payload> correlation) {
    return new Publication(topic, payload, 1, false, Optional.empty(), correlation);
  }
}
