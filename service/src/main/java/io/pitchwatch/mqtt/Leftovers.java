package io.pitchwatch.mqtt;

import io.pitchwatch.mqtt.homie.DeviceState;
import io.pitchwatch.mqtt.homie.DeviceTopics;
import io.pitchwatch.mqtt.link.Arrival;
import io.pitchwatch.mqtt.link.Payload;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What stood under the device's topics on the broker before this connection: the last description,
 * and values of nodes or alerts that are no more, which nobody else would ever take away.
 *
 * <p>Filled on the connection's threads, read on the link's.
 */
final class Leftovers {

  private static final int MOST = 2_000;
  private static final String COMMAND = "/set";

  private final Map<String, Payload> found = new LinkedHashMap<>();
  private final DeviceTopics topics;
  private final Payload mark;
  private boolean complete;

  /**
   * Nothing found yet.
   *
   * @param topics of the device
   * @param mark what we send ourselves once the broker has begun to tell: when it comes back, the
   *     broker has told all that stood
   */
  Leftovers(DeviceTopics topics, Payload mark) {
    this.topics = topics;
    this.mark = mark;
  }

  /**
   * Takes a message while the broker still tells.
   *
   * @return false if it is not about leftovers
   */
  synchronized boolean take(Arrival arrival) {
    if (complete) {
      return false;
    }
    if (arrival.payload().equals(mark)) {
      complete = true;
    } else if (arrival.retained() && found.size() < MOST) {
      found.put(arrival.topic(), isOfInterest(arrival) ? arrival.payload() : Payload.NOTHING);
    }
    return true;
  }

  private boolean isOfInterest(Arrival arrival) {
    return arrival.topic().equals(topics.description().text())
        || arrival.topic().equals(topics.state().text());
  }

  /** Whether all was told; nothing more is taken then. */
  synchronized boolean isComplete() {
    return complete;
  }

  /** Stops waiting for more. */
  synchronized void giveUp() {
    complete = true;
  }

  /** The description that stood. */
  synchronized Optional<Payload> description() {
    return Optional.ofNullable(found.get(topics.description().text()));
  }

  /** Whether a will of this device stood there: the broker saw a connection break. */
  synchronized boolean hasWill() {
    Payload state = found.getOrDefault(topics.state().text(), Payload.NOTHING);
    return state.equals(Payload.of(DeviceState.LOST.word()));
  }

  /** Topics that stood and are none of the given ones; commands are not ours to take away. */
  synchronized List<String> strays(Set<String> known) {
    List<String> strays = new ArrayList<>();
    for (String topic : found.keySet()) {
      if (!known.contains(topic) && !topic.endsWith(COMMAND)) {
        strays.add(topic);
      }
    }
    return strays;
  }
}
