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
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Translates the owner's config into what each edge wants to know. */
final class Edges {

  private static final Logger LOG = LoggerFactory.getLogger(Edges.class);

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
        mqtt.announce(),
        credentials(mqtt.login().orElseThrow()));
  }

  static PageSettings page(Config config) {
    Config.Page page = config.page();
    BrokerAddress broker = BrokerAddress.parse(config.mqtt().url().toString());
    io.pitchwatch.page.BrokerAddress webSocket =
        page.websocket().isPresent()
            ? new io.pitchwatch.page.BrokerAddress.At(page.websocket().get())
            : new io.pitchwatch.page.BrokerAddress.SameHost(broker.port());
    return new PageSettings(
        page.bind(),
        page.port(),
        config.coach(),
        config.mqtt().tree(),
        webSocket,
        config.mqtt().login().isPresent());
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
