package io.pitchwatch.mqtt;

import io.pitchwatch.mqtt.link.BrokerAddress;
import io.pitchwatch.mqtt.link.Credentials;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/**
 * How the link reaches its broker and what it announces there.
 *
 * @param broker where it listens
 * @param credentials empty: none are sent
 * @param caFile certificates, PEM, that vouch for the broker; empty: those of the Java runtime
 * @param tree first level of all topics, of a-z, 0-9 and -
 * @param announce first levels under which home-automation hubs listen for discovery messages;
 *     empty: nothing is announced, and what was announced before is removed
 * @param keepAlive longest silence on the connection, whole seconds; after one and a half of it the
 *     broker takes the daemon for lost
 * @param seed of the random part of the waits between attempts
 */
public record MqttSettings(
    BrokerAddress broker,
    Optional<Credentials> credentials,
    Optional<Path> caFile,
    String tree,
    List<String> announce,
    Duration keepAlive,
    long seed) {

  /** Nine seconds after a power cut the broker says lost: less than the ten that are promised. */
  public static final Duration DEFAULT_KEEP_ALIVE = Duration.ofSeconds(6);

  /** Where the most common hub listens. */
  public static final List<String> DEFAULT_ANNOUNCE = List.of("homeassistant");

  /** The convention's own first level. */
  public static final String DEFAULT_TREE = "homie";

  private static final Duration LONGEST_KEEP_ALIVE = Duration.ofMinutes(10);

  /**
   * Copies the list.
   *
   * @throws IllegalArgumentException if the keep-alive is not 1 s to 10 min
   */
  public MqttSettings {
    announce = List.copyOf(announce);
    if (keepAlive.toSeconds() < 1 || keepAlive.compareTo(LONGEST_KEEP_ALIVE) > 0) {
      throw new IllegalArgumentException(
          "keep-alive is " + keepAlive + "; it must be 1 s to 10 min");
    }
  }

  /** Settings for a broker that asks for no credentials, all else as usual. */
  public static MqttSettings of(BrokerAddress broker, long seed) {
    return new MqttSettings(
        broker,
        Optional.empty(),
        Optional.empty(),
        DEFAULT_TREE,
        DEFAULT_ANNOUNCE,
        DEFAULT_KEEP_ALIVE,
        seed);
  }

  /** The same with credentials. */
  public MqttSettings with(Credentials newCredentials) {
    return new MqttSettings(
        broker, Optional.of(newCredentials), caFile, tree, announce, keepAlive, seed);
  }

  /** The same with another keep-alive. */
  public MqttSettings withKeepAlive(Duration newKeepAlive) {
    return new MqttSettings(broker, credentials, caFile, tree, announce, newKeepAlive, seed);
  }

  /** The same, announcing elsewhere. */
  public MqttSettings announcing(List<String> prefixes) {
    return new MqttSettings(broker, credentials, caFile, tree, prefixes, keepAlive, seed);
  }
}
