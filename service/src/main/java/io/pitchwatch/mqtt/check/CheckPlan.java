package io.pitchwatch.mqtt.check;

import io.pitchwatch.mqtt.homie.DeviceTopics;
import io.pitchwatch.mqtt.link.BrokerAddress;
import io.pitchwatch.mqtt.link.Credentials;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;

/**
 * Whom to ask, and for how long to wait.
 *
 * @param broker where the coach's broker listens
 * @param credentials empty: none are sent
 * @param caFile certificates, PEM, that vouch for the broker; empty: those of the Java runtime
 * @param topics of the coach
 * @param patience longest wait for the answer, all in all
 */
public record CheckPlan(
    BrokerAddress broker,
    Optional<Credentials> credentials,
    Optional<Path> caFile,
    DeviceTopics topics,
    Duration patience) {

  /** Connecting over a weak line takes some seconds, and the daemon waits two for a new sample. */
  public static final Duration DEFAULT_PATIENCE = Duration.ofSeconds(15);
}
