package io.pitchwatch.config;

import io.pitchwatch.attitude.Mounting;
import io.pitchwatch.coach.Coach;
import java.net.URI;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * All that the owner's file says, defaults filled in. docs/config.md explains every key.
 *
 * @param file the file it was read from
 * @param coach the coach
 * @param sensors at least one; the first is the one that is believed when all are well
 * @param mqtt how the broker is reached
 * @param page the page
 * @param store what must last
 */
public record Config(
    Path file, Coach coach, List<Sensor> sensors, Mqtt mqtt, Page page, Store store) {

  /** Copies the list. */
  public Config {
    sensors = List.copyOf(sensors);
  }

  /** The same with other sensors. */
  Config with(List<Sensor> others) {
    return new Config(file, coach, others, mqtt, page, store);
  }

  /**
   * One accelerometer.
   *
   * @param id its name in topics and texts
   * @param chip what it is
   * @param bus number of the I2C bus
   * @param address 7 bits
   * @param mounting which way the chip's axes point
   */
  public record Sensor(String id, Chip chip, int bus, int address, Mounting mounting) {}

  /**
   * How the broker is reached.
   *
   * @param url scheme mqtt or mqtts, host and port, nothing else
   * @param broker whether the built-in broker is started at that address
   * @param login empty: no credentials, which only another broker can allow
   * @param caFile PEM file of the certificates to trust instead of the usual ones; only with mqtts
   * @param tree root topic, one level
   * @param announce roots of the topics that discovery messages are published under; may be empty
   */
  public record Mqtt(
      URI url,
      Broker broker,
      Optional<Login> login,
      Optional<Path> caFile,
      String tree,
      List<String> announce) {

    /** Copies the list. */
    public Mqtt {
      announce = List.copyOf(announce);
    }
  }

  /** Which broker. */
  public enum Broker {
    /** The built-in one, started by the daemon. */
    OWN,
    /** One that runs already. */
    OTHER
  }

  /**
   * A user and where the password is.
   *
   * @param user name
   * @param passwordFile file whose first line is the password; it need not exist yet
   */
  public record Login(String user, Path passwordFile) {}

  /**
   * The page.
   *
   * @param enabled whether it is served
   * @param port TCP port
   * @param bind address to listen on
   * @param websocket where the page finds the broker, scheme ws or wss; empty when the broker
   *     serves WebSocket at the MQTT port
   */
  public record Page(boolean enabled, int port, String bind, Optional<URI> websocket) {}

  /**
   * What must last.
   *
   * @param directory where it is kept, absolute; it need not exist yet
   */
  public record Store(Path directory) {}
}
