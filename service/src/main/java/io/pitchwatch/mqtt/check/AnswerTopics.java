package io.pitchwatch.mqtt.check;

import io.pitchwatch.mqtt.homie.DeviceTopics;
import io.pitchwatch.mqtt.homie.Topic;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Where answers may be sent: a stranger's wish must not make us speak where others take our word
 * for ours.
 *
 * @param closed nothing at or below these
 */
record AnswerTopics(List<Topic> closed) {

  private static final int LONGEST = 256;

  AnswerTopics {
    closed = List.copyOf(closed);
  }

  /** All but the device's own tree and what lies below the hubs' prefixes. */
  static AnswerTopics outside(DeviceTopics topics, List<String> hubPrefixes) {
    return new AnswerTopics(
        Stream.concat(Stream.of(topics.root()), hubPrefixes.stream().map(Topic::new)).toList());
  }

  /** The topic, if answers may be sent there. */
  Optional<Topic> permitted(String text) {
    if (text.length() > LONGEST || text.startsWith("$")) {
      return Optional.empty();
    }
    try {
      Topic topic = new Topic(text);
      return closed.stream().anyMatch(topic::isWithin) ? Optional.empty() : Optional.of(topic);
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  /** What is allowed, for who asked for something else. */
  String allowed() {
    return "the response topic must be a topic without wildcards, at most "
        + LONGEST
        + " characters, outside of "
        + closed;
  }
}
