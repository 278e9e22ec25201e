package io.pitchwatch.mqtt.link;

import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import java.util.function.LongSupplier;

/**
 * All that one connection needs to know.
 *
 * @param broker where it listens
 * @param clientId who we are to the broker; a second client of the same id takes the first one's
 *     place
 * @param credentials empty: none are sent
 * @param caFile certificates, PEM, that vouch for the broker; empty: those of the Java runtime
 * @param will what the broker says when we vanish; empty: nothing
 * @param keepAlive longest silence, whole seconds
 * @param nanos monotonic time
 */
public record SessionPlan(
    BrokerAddress broker,
    String clientId,
    Optional<Credentials> credentials,
    Optional<Path> caFile,
    Optional<Publication> will,
    Duration keepAlive,
    LongSupplier nanos) {

  /** What to say of another client in our place. */
  public String contested() {
    return "another client calls itself "
        + clientId
        + " at "
        + broker
        + "; do two daemons serve the same coach id?";
  }
}
