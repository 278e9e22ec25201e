package io.pitchwatch.mqtt;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.eclipse.paho.mqttv5.common.MqttException;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/**
 * A broker to be shared by the tests of one class, emptied before each, and links that are closed
 * after it.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
abstract class LinkBench {

  static final String BASE = "homie/5/heron/";
  static final String STATE = BASE + "$state";
  static final String ROLL = BASE + "floor/roll";
  static final String WARN = BASE + "$log/warn";
  static final long SECOND = 1_000_000_000;

  private Path directory = Path.of("");
  private final List<AutoCloseable> toClose = new ArrayList<>();
  BrokerProcess broker;
  Ledger ledger = new Ledger();

  /** The broker under test, not started. */
  abstract BrokerProcess broker(Path place);

  @BeforeAll
  void bringBroker(@TempDir Path place) {
    directory = place;
    broker = broker(place);
  }

  @AfterAll
  void takeBrokerAway() {
    broker.close();
  }

  @BeforeEach
  void prepare() throws MqttException {
    ledger = new Ledger();
    if (!broker.isRunning()) {
      broker.start();
    }
    broker.wipe();
  }

  @AfterEach
  void tidy() throws Exception {
    for (int i = toClose.size() - 1; i >= 0; i--) {
      toClose.get(i).close();
    }
    toClose.clear();
  }

  Path directory() {
    return directory;
  }

  <T extends AutoCloseable> T later(T each) {
    toClose.add(each);
    return each;
  }

  CoachLink link(MqttSettings settings) {
    return link(settings, ledger);
  }

  CoachLink link(MqttSettings settings, Ledger into) {
    return link(settings, into, Heron.DEVICE);
  }

  CoachLink link(MqttSettings settings, Ledger into, Device device) {
    return later(CoachLink.start(new LinkParts(device, settings, into, into, LinkClock.system())));
  }

  MqttSettings through(Wire wire) {
    MqttSettings direct = broker.settings();
    return MqttSettings.of(wire.address(), 1)
        .with(direct.credentials().orElseThrow())
        .withKeepAlive(direct.keepAlive());
  }

  Observer dashboard() throws MqttException {
    return later(broker.dashboard()).hear("homie/5/#").hear("homeassistant/#");
  }

  /** Everything that stands, as a newcomer hears it. */
  Map<String, String> standing() throws Exception {
    try (Observer newcomer = broker.dashboard()) {
      newcomer.hear("homie/5/#").hear("homeassistant/#");
      newcomer.awaitLast(STATE, "ready");
      newcomer.settle();
      return newcomer.all().stream()
          .filter(Observer.Heard::retained)
          .collect(
              Collectors.toMap(
                  Observer.Heard::topic, Observer.Heard::text, (a, b) -> b, TreeMap::new));
    }
  }
}
