package io.pitchwatch.command;

import io.pitchwatch.config.Config;
import io.pitchwatch.mqtt.Device;
import io.pitchwatch.mqtt.LinkClock;
import io.pitchwatch.mqtt.LinkParts;
import io.pitchwatch.mqtt.LinkWatch;
import io.pitchwatch.mqtt.MqttSettings;
import io.pitchwatch.mqtt.broker.OwnBrokerSettings;
import io.pitchwatch.mqtt.link.BrokerAddress;
import io.pitchwatch.mqtt.link.Credentials;
import io.pitchwatch.mqtt.tree.Commands;
import io.pitchwatch.page.PageSettings;
import java.net.URI;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Translates the owner's config into what each edge wants to know. */
final class Edges {

  private static final Logger LOG = LoggerFactory.getLogger(Edges.class);

  private static final Set<String> LOOPBACK = Set.of("localhost", "127.0.0.1", "::1", "[::1]");

  private Edges() {}

  static LinkParts link(Config config, Commands commands, Service.Ending ending, LinkClock clock) {
    Device device =
        new Device(
            config.coach(),
            config.sensors().stream().map(Config.Sensor::id).toList(),
            Version.text());
    // Seeded by the clock, so that two daemons that lost one broker do not knock in step.
    MqttSettings settings = mqtt(config, clock.nanos().getAsLong());
    return new LinkParts(device, settings, commands, watch(ending), clock);
  }

  static MqttSettings mqtt(Config config, long seed) {
    Config.Mqtt mqtt = config.mqtt();
    return new MqttSettings(
        BrokerAddress.parse(mqtt.url().toString()),
        mqtt.login().map(Edges::credentials),
        mqtt.caFile(),
        mqtt.tree(),
        mqtt.announce(),
        MqttSettings.DEFAULT_KEEP_ALIVE,
        seed);
  }

  private static Credentials credentials(Config.Login login) {
    return new Credentials(login.user(), login.passwordFile());
  }

  static OwnBrokerSettings broker(Config config) {
    Config.Mqtt mqtt = config.mqtt();
    BrokerAddress address = BrokerAddress.parse(mqtt.url().toString());
    return new OwnBrokerSettings(
        address.host(),
        address.port(),
        config.store().directory(),
        mqtt.tree(),
        hubPrefixes(mqtt.announce()),
        credentials(mqtt.login().orElseThrow()));
  }

  /** Where announcements stand that the daemon has to take back, too. */
  private static List<String> hubPrefixes(List<String> announce) {
    return Stream.concat(announce.stream(), MqttSettings.DEFAULT_ANNOUNCE.stream())
        .distinct()
        .toList();
  }

  static PageSettings page(Config config) {
    Config.Page page = config.page();
    io.pitchwatch.page.BrokerAddress webSocket = webSocket(config);
    return new PageSettings(
        page.bind(),
        page.port(),
        config.coach(),
        config.mqtt().tree(),
        webSocket,
        config.mqtt().login().isPresent());
  }

  /** A broker on this machine is found where the page was found; another one by its own name. */
  static io.pitchwatch.page.BrokerAddress webSocket(Config config) {
    if (config.page().websocket().isPresent()) {
      return new io.pitchwatch.page.BrokerAddress.At(config.page().websocket().get());
    }
    BrokerAddress broker = BrokerAddress.parse(config.mqtt().url().toString());
    boolean here = LOOPBACK.contains(broker.host()) || config.mqtt().broker() == Config.Broker.OWN;
    return here
        ? new io.pitchwatch.page.BrokerAddress.SameHost(broker.port())
        : new io.pitchwatch.page.BrokerAddress.At(
            URI.create(
                (broker.tls() ? "wss://" : "ws://")
                    + broker.host()
                    + ":"
                    + broker.port()
                    + "/mqtt"));
  }

  private static LinkWatch watch(Service.Ending ending) {
    return new LinkWatch() {
      @Override
      public void ready() {
        LOG.info("the broker has the whole tree");
      }

      @Override
      public void away(String why) {
        LOG.warn("{}", why);
      }

      @Override
      public void wornOut(String why) {
        ending.wornOut().accept(why);
      }
    };
  }
}
