package io.pitchwatch.mqtt.broker;

import io.pitchwatch.mqtt.link.Credentials;
import java.nio.file.Path;
import java.util.List;

/**
 * How the built-in broker is to run.
 *
 * @param host address to listen on; a loopback one unless the owner says otherwise
 * @param port TCP port, for MQTT and for MQTT over WebSocket
 * @param directory where the passwords of the other accounts are
 * @param tree first level of the devices' topics
 * @param hubPrefixes first levels of the hubs' topics
 * @param daemon the daemon's account; its password file is made when it is missing
 */
public record OwnBrokerSettings(
    String host,
    int port,
    Path directory,
    String tree,
    List<String> hubPrefixes,
    Credentials daemon) {

  /** Reads everything, sends commands and questions. */
  public static final String DASHBOARD = "dashboard";

  /** Reads everything. */
  public static final String GUEST = "guest";

  /**
   * Copies the list.
   *
   * @throws IllegalArgumentException if the daemon calls itself like one of the other accounts
   */
  public OwnBrokerSettings {
    hubPrefixes = List.copyOf(hubPrefixes);
    if (daemon.user().equals(DASHBOARD) || daemon.user().equals(GUEST)) {
      throw new IllegalArgumentException(
          "user is " + daemon.user() + "; it must not be " + DASHBOARD + " or " + GUEST);
    }
  }

  /** The file with the password of the given other account. */
  public PasswordFile passwordFile(String user) {
    return new PasswordFile(directory.resolve("mqtt-" + user + "-password"));
  }
}
