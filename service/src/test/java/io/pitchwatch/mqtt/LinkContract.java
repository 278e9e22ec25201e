package io.pitchwatch.mqtt;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.pitchwatch.floor.FloorState;
import io.pitchwatch.mqtt.homie.LogLevel;
import io.pitchwatch.mqtt.link.Credentials;
import io.pitchwatch.visit.Phase;
import io.pitchwatch.visit.Report.AlertReport;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.locks.LockSupport;
import java.util.stream.Collectors;
import org.eclipse.paho.mqttv5.common.MqttException;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the link does on every broker, whatever the broker does. */
abstract class LinkContract {

  static final String BASE = "homie/5/heron/";
  static final String STATE = BASE + "$state";
  static final String ROLL = BASE + "floor/roll";
  static final String WARN = BASE + "$log/warn";
  private static final long SECOND = 1_000_000_000;

  @TempDir Path directory;
  final Ledger ledger = new Ledger();
  private final List<AutoCloseable> toClose = new ArrayList<>();
  private BrokerProcess broker;

  /** The broker under test, not started. */
  abstract BrokerProcess broker(Path directory);

  @BeforeEach
  void prepare() {
    broker = later(broker(directory));
  }

  @AfterEach
  void tidy() throws Exception {
    for (int i = toClose.size() - 1; i >= 0; i--) {
      toClose.get(i).close();
    }
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
  private Map<String, String> standing() throws Exception {
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

  @Test
  void everythingIsSaidInOrderRetainedAndOnce() throws Exception {
    broker.start();
    Observer observer = dashboard();
    CoachLink link = link(broker.settings());
    link.publish(Heron.parked(1.234, -0.5));
    observer.awaitLast(STATE, "ready");
    List<String> topics =
        observer.all().stream().filter(h -> h.qos() == 2).map(Observer.Heard::topic).toList();
    assertEquals(List.of("init", "ready"), observer.all(STATE));
    assertEquals(STATE, topics.get(0));
    assertTrue(topics.indexOf(BASE + "$description") < topics.indexOf(ROLL));
    assertEquals(STATE, topics.get(topics.size() - 1));
    assertEquals(List.of("1.23"), observer.all(ROLL));
    try (Observer newcomer = broker.dashboard()) {
      newcomer.hear("homie/5/heron/floor/roll");
      newcomer.awaitLast(ROLL, "1.23");
      Observer.Heard heard = newcomer.all().get(0);
      assertTrue(heard.retained());
      assertEquals(2, heard.qos());
    }
    Map<String, String> all = standing();
    assertEquals("right", all.get(BASE + "floor/low-side"));
    assertEquals("rear", all.get(BASE + "floor/low-end"));
    assertEquals("true", all.get(BASE + "fridge-galley/within"));
    assertEquals("good", all.get(BASE + "floor/verdict"));
    assertEquals(
        List.of(),
        Schemas.faults("homie-description", all.getOrDefault(BASE + "$description", "")));
    assertEquals(
        List.of(),
        Schemas.faults(
            "hub-discovery", all.getOrDefault("homeassistant/device/pitchwatch-heron/config", "")));
    assertEquals(List.of(), Schemas.faults("laid", all.getOrDefault(BASE + "visit/laid", "")));
  }

  @Test
  void aBrokerAbsentAtStartIsWaitedForWhileCallersAreNot() throws Exception {
    CoachLink link = link(broker.settings());
    long begin = System.nanoTime();
    for (int i = 0; i < 10_000; i++) {
      link.publish(Heron.parked(i / 10_000.0, 0));
    }
    assertTrue(System.nanoTime() - begin < 2 * SECOND, "10,000 calls without a broker");
    Await.until("away is told", () -> ledger.entries().stream().anyMatch(e -> e.contains("away")));
    broker.start();
    Observer observer = dashboard();
    observer.awaitLast(STATE, "ready");
    observer.awaitLast(ROLL, "1.00");
  }

  @Test
  void aBrokerThatRestartsEmptyIsToldEverythingAgain() throws Exception {
    broker.start();
    CoachLink link = link(broker.settings());
    link.publish(
        Heron.with(Heron.parked(1, 0), new AlertReport("fridge-galley", "Too much lean", 1)));
    ledger.await("ready");
    Map<String, String> before = standing();
    broker.stop();
    link.publish(
        Heron.with(Heron.parked(1, 0), new AlertReport("fridge-galley", "Too much lean", 1)));
    broker.start();
    Await.until("ready again", () -> ledger.count("ready") == 2);
    Map<String, String> after = standing();
    before.remove(BASE + "floor/taken-at");
    after.remove(BASE + "floor/taken-at");
    assertEquals(before, after);
    assertEquals("Too much lean", after.get(BASE + "$alert/fridge-galley"));
  }

  @Test
  void aBrokerKilledOverAndOverLosesNothingForLong() throws Exception {
    broker.start();
    CoachLink link = link(broker.settings());
    link.publish(Heron.parked(0, 0));
    ledger.await("ready");
    for (int i = 1; i <= 3; i++) {
      broker.kill();
      link.publish(Heron.parked(i, 0));
      broker.start();
      dashboard().awaitLast(ROLL, i + ".00");
    }
    dashboard().awaitLast(STATE, "ready");
  }

  @Test
  void aBrokerThatHangsIsLeftAndComeBackTo() throws Exception {
    broker.start();
    CoachLink link = link(broker.settings());
    link.publish(Heron.parked(0, 0));
    ledger.await("ready");
    broker.hang();
    try {
      long begin = System.nanoTime();
      int i = 0;
      while (ledger.entries().stream().noneMatch(e -> e.startsWith("away"))) {
        long call = System.nanoTime();
        link.publish(Heron.parked(1 + (i++ % 100) / 100.0, 0));
        assertTrue(System.nanoTime() - call < SECOND / 2, "one call to publish");
        assertTrue(System.nanoTime() - begin < 30 * SECOND, "still not noticed");
        LockSupport.parkNanos(SECOND / 50);
      }
    } finally {
      broker.goOn();
    }
    link.publish(Heron.parked(2.5, 0));
    Observer observer = dashboard();
    observer.awaitLast(ROLL, "2.50");
    observer.awaitLast(STATE, "ready");
  }

  @Test
  void aSlowLineGetsTheLatestNotABacklog() throws Exception {
    broker.start();
    Wire wire = later(new Wire(broker.address()));
    CoachLink link = link(through(wire));
    link.publish(Heron.parked(0, 0));
    ledger.await("ready");
    Observer observer = dashboard();
    observer.awaitLast(ROLL, "0.00");
    wire.slow(200);
    for (int i = 1; i <= 400; i++) {
      link.publish(Heron.parked(i / 100.0, i / 200.0));
      LockSupport.parkNanos(SECOND / 200);
    }
    observer.awaitLast(ROLL, "4.00");
    int said = observer.all(ROLL).size();
    assertTrue(said <= 8, said + " values said in two seconds");
  }

  @Test
  void aDaemonThatVanishesIsCalledLostByItsWill() throws Exception {
    broker.start();
    Wire wire = later(new Wire(broker.address()));
    CoachLink link = link(through(wire));
    link.publish(Heron.parked(0, 0));
    ledger.await("ready");
    Observer observer = dashboard();
    observer.awaitLast(STATE, "ready");
    wire.cut();
    Await.until("lost, then ready", () -> observer.all(STATE).contains("lost"));
    observer.awaitLast(STATE, "ready");
    List<String> states = observer.all(STATE);
    assertTrue(states.indexOf("lost") < states.lastIndexOf("init"), states.toString());
  }

  @Test
  void aCleanStopLeavesNothingMeasuredStanding() throws Exception {
    broker.start();
    CoachLink link = link(broker.settings());
    link.publish(Heron.parked(1, 1));
    ledger.await("ready");
    Observer observer = dashboard();
    observer.awaitLast(STATE, "ready");
    observer.forget();
    link.close();
    observer.awaitLast(STATE, "disconnected");
    List<String> topics = observer.all().stream().map(Observer.Heard::topic).toList();
    assertEquals(STATE, topics.get(topics.size() - 1));
    observer.awaitLast(BASE + "floor/verdict", "unknown");
    observer.awaitLast(BASE + "floor/state", "unknown");
    for (String gone : List.of("floor/roll", "fridge-galley/within", "sensor-floor/health")) {
      observer.awaitLast(BASE + gone, "");
    }
    Await.until("no thread of the link is left", () -> threads("heron").isEmpty());
    assertFalse(observer.all(STATE).contains("lost"));
  }

  private static List<String> threads(String part) {
    return Thread.getAllStackTraces().keySet().stream()
        .map(Thread::getName)
        .filter(name -> name.contains(part) || name.startsWith("mqtt-"))
        .toList();
  }

  @Test
  void oldNewsIsCalledUnknownWhateverTheReportSays() throws Exception {
    broker.start();
    CoachLink link = link(broker.settings());
    long takenAt = System.nanoTime() - 6 * SECOND;
    link.publish(Heron.report(0, 0, Phase.PARKED, FloorState.STEADY, takenAt));
    Observer observer = dashboard();
    observer.awaitLast(STATE, "ready");
    observer.awaitLast(BASE + "floor/verdict", "good");
    observer.awaitLast(BASE + "floor/verdict", "unknown");
    assertTrue(System.nanoTime() - takenAt < 10 * SECOND, "within ten seconds of the sample");
    observer.awaitLast(BASE + "floor/state", "unknown");
    observer.awaitLast(ROLL, "");
    observer.awaitLast(BASE + "fridge-galley/margin", "");
    observer.awaitLast(BASE + "sensor-floor/health", "failed");
  }

  @Test
  void noValueIsSaidFasterThanTwiceASecond() throws Exception {
    broker.start();
    CoachLink link = link(broker.settings());
    link.publish(Heron.report(0, 0, Phase.ARRIVING, FloorState.UNSETTLED, System.nanoTime()));
    ledger.await("ready");
    Observer observer = dashboard();
    observer.awaitLast(STATE, "ready");
    observer.forget();
    long begin = System.nanoTime();
    int i = 0;
    while (System.nanoTime() - begin < 4 * SECOND) {
      double roll = 5 * Math.sin(i++ / 7.0);
      link.publish(
          Heron.report(roll, -roll, Phase.ARRIVING, FloorState.UNSETTLED, System.nanoTime()));
      LockSupport.parkNanos(SECOND / 20);
    }
    int said = observer.all(ROLL).size();
    assertTrue(said >= 4 && said <= 9, said + " values in 4 s");
  }

  @Test
  void commandsReachTheServiceAndAreEchoed() throws Exception {
    broker.start();
    CoachLink link = link(broker.settings());
    link.publish(Heron.parked(0, 0));
    ledger.await("ready");
    Observer observer = dashboard();
    observer.publish(BASE + "visit/stay/set", "season");
    ledger.await("stay SEASON");
    observer.awaitLast(BASE + "visit/stay", "season");
    observer.publish(BASE + "upkeep/zero/set", "now".getBytes(StandardCharsets.UTF_8), 0, false);
    ledger.await("zero");
    observer.awaitLast(BASE + "upkeep/zero", "now");
    observer.publish(BASE + "visit/surface/set", "soft");
    observer.publish(BASE + "upkeep/acknowledge/set", "fridge-galley");
    observer.publish(BASE + "upkeep/shelve/set", "{\"alert\": \"fridge-galley\", \"minutes\": 5}");
    ledger.await("surface SOFT");
    ledger.await("acknowledge fridge-galley");
    ledger.await("shelve fridge-galley 5.0");
    link.log(LogLevel.INFO, "zero taken");
    observer.awaitLast(BASE + "$log/info", "zero taken");
  }

  @Test
  void aRetainedCommandIsIgnoredAndSaid() throws Exception {
    broker.start();
    Observer observer = dashboard();
    observer.publish(BASE + "visit/stay/set", "season".getBytes(StandardCharsets.UTF_8), 1, true);
    CoachLink link = link(broker.settings());
    link.publish(Heron.parked(0, 0));
    observer.awaitPart(WARN, "visit/stay/set ignored");
    observer.awaitLast(STATE, "ready");
    observer.publish(
        BASE + "visit/stay/set", "overnight".getBytes(StandardCharsets.UTF_8), 1, true);
    Await.until("said twice", () -> observer.all(WARN).size() == 2);
    observer.awaitLast(BASE + "visit/stay", "stay");
    assertEquals(List.of("ready"), ledger.entries());
  }

  @Test
  void whatMakesNoSenseChangesNothingAndIsAnswered() throws Exception {
    broker.start();
    CoachLink link = link(broker.settings());
    link.publish(Heron.parked(0, 0));
    ledger.await("ready");
    Observer observer = dashboard();
    observer.publish(BASE + "visit/stay/set", "forever");
    observer.awaitPart(WARN, "found \"forever\"; allowed are overnight, stay, season");
    observer.publish(BASE + "visit/stay/set", new byte[] {(byte) 0xC3, 0x28}, 1, false);
    observer.awaitPart(WARN, "not UTF-8");
    observer.publish(BASE + "visit/laid/set", new byte[10_000], 1, false);
    observer.awaitPart(WARN, "found 10000 bytes");
    observer.publish(BASE + "visit/laid/set", new byte[100_000], 1, false);
    observer.awaitPart(WARN, "found 100000 bytes");
    observer.publish(BASE + "upkeep/check/set", "");
    observer.awaitPart(WARN, "needs a response topic");
    observer.publish(BASE + "visit/stay/set", "overnight");
    ledger.await("stay OVERNIGHT");
    assertEquals(List.of("ready", "stay OVERNIGHT"), ledger.entries());
  }

  @Test
  void aMessageWithoutMeasureDoesNotReachUs() throws Exception {
    broker.start();
    CoachLink link = link(broker.settings());
    link.publish(Heron.parked(0, 0));
    ledger.await("ready");
    try (Observer reckless = broker.dashboard()) {
      reckless.publish(BASE + "visit/laid/set", new byte[1_000_000], 0, false);
    }
    Observer observer = dashboard();
    observer.publish(BASE + "visit/stay/set", "season");
    ledger.await("stay SEASON");
    assertEquals(List.of("ready", "stay SEASON"), ledger.entries());
  }

  @Test
  void aFloodOfCommandsDrownsNothing() throws Exception {
    broker.start();
    CoachLink link = link(broker.settings());
    link.publish(Heron.parked(0, 0));
    ledger.await("ready");
    Observer observer = dashboard();
    long longest = 0;
    byte[] nonsense = "nonsense".getBytes(StandardCharsets.UTF_8);
    for (int i = 0; i < 5_000; i++) {
      observer.publish(BASE + "visit/stay/set", nonsense, 0, false);
      long call = System.nanoTime();
      link.publish(Heron.parked(1, 0));
      longest = Math.max(longest, System.nanoTime() - call);
    }
    assertTrue(longest < SECOND / 2, "longest call to publish: " + longest / 1e6 + " ms");
    observer.publish(BASE + "visit/stay/set", "season");
    Await.until(
        "a good command gets through",
        () -> {
          publishQuietly(observer, BASE + "visit/surface/set", "soft");
          return ledger.entries().contains("surface SOFT");
        });
    observer.awaitLast(ROLL, "1.00");
    assertTrue(observer.all(WARN).size() < 60, observer.all(WARN).size() + " complaints");
  }

  private static void publishQuietly(Observer observer, String topic, String text) {
    try {
      observer.publish(topic, text);
    } catch (MqttException e) {
      throw new AssertionError(e);
    }
  }

  @Test
  void twoDaemonsOfOneCoachDoNotFight() throws Exception {
    broker.start();
    Ledger second = new Ledger();
    CoachLink one = link(broker.settings());
    one.publish(Heron.parked(1, 0));
    ledger.await("ready");
    CoachLink other = link(broker.settings(), second);
    other.publish(Heron.parked(2, 0));
    second.await("ready");
    Await.until(
        "one of them says so: " + ledger.entries() + second.entries(),
        () -> isTakenOver(ledger) || isTakenOver(second));
    boolean firstYields = isTakenOver(ledger);
    Observer observer = dashboard();
    observer.awaitLast(STATE, "ready");
    one.publish(Heron.parked(1.5, 0));
    other.publish(Heron.parked(2.5, 0));
    observer.awaitLast(ROLL, firstYields ? "2.50" : "1.50");
    observer.forget();
    one.publish(Heron.parked(1.7, 0));
    other.publish(Heron.parked(2.7, 0));
    observer.awaitLast(ROLL, firstYields ? "2.70" : "1.70");
    assertEquals(List.of(), observer.all(STATE));
  }

  private static boolean isTakenOver(Ledger each) {
    return each.entries().stream().anyMatch(e -> e.contains("two daemons"));
  }

  @Test
  void aWrongPasswordIsSaidClearlyAndAMendedOneUsed() throws Exception {
    broker.start();
    Path wrong = Files.writeString(directory.resolve("wrong"), "not-it\n");
    MqttSettings settings = broker.settings().with(new Credentials("pitchwatch", wrong));
    CoachLink link = link(settings);
    link.publish(Heron.parked(0, 0));
    Await.until(
        "the user and the file are named",
        () ->
            ledger.entries().stream()
                .anyMatch(e -> e.contains("user pitchwatch") && e.contains(wrong.toString())));
    Files.writeString(wrong, Files.readString(broker.daemon().passwordFile()));
    ledger.await("ready");
  }

  @Test
  void noCredentialsWhereSomeAreNeededIsSaidClearly() throws Exception {
    broker.start();
    CoachLink link = link(MqttSettings.of(broker.address(), 1));
    link.publish(Heron.parked(0, 0));
    Await.until(
        "what is missing is said",
        () -> ledger.entries().stream().anyMatch(e -> e.contains("none are configured")));
  }

  @Test
  void aDoorSlammedInTheFaceIsTriedAgain() throws Exception {
    broker.start();
    Wire wire = later(new Wire(broker.address()));
    wire.slam(true);
    CoachLink link = link(through(wire));
    link.publish(Heron.parked(1, 0));
    Await.until("it called twice", () -> wire.callers() >= 2);
    wire.slam(false);
    Observer observer = dashboard();
    observer.awaitLast(ROLL, "1.00");
    observer.awaitLast(STATE, "ready");
  }

  @Test
  void whatIsNoMoreIsTakenAway() throws Exception {
    broker.start();
    Device larger = new Device(Heron.COACH, List.of("floor", "rear"), "0.1.0");
    CoachLink before = link(broker.settings(), new Ledger(), larger);
    before.publish(
        Heron.with(Heron.parked(0, 0), new AlertReport("door-washroom", "It swings", 1)));
    Observer observer = dashboard();
    observer.awaitLast(STATE, "ready");
    observer.awaitLast(BASE + "$alert/door-washroom", "It swings");
    String first = observer.last(BASE + "$description").orElseThrow();
    assertTrue(first.contains("\"version\":1,"), first);
    before.close();
    observer.awaitLast(STATE, "disconnected");
    CoachLink after = link(broker.settings());
    after.publish(Heron.parked(0, 0));
    ledger.await("ready");
    observer.awaitLast(BASE + "$alert/door-washroom", "");
    Map<String, String> all = standing();
    String second = all.getOrDefault(BASE + "$description", "");
    assertTrue(second.contains("\"version\":2,"), second);
    Set<String> rear =
        all.keySet().stream()
            .filter(t -> t.contains("sensor-rear"))
            .collect(Collectors.toCollection(TreeSet::new));
    assertEquals(Set.of(), rear);
  }

  @Test
  void theDescriptionKeepsItsNumberThroughRestarts() throws Exception {
    broker.start();
    for (int i = 0; i < 2; i++) {
      Ledger each = new Ledger();
      CoachLink link = link(broker.settings(), each);
      link.publish(Heron.parked(0, 0));
      each.await("ready");
      String description = standing().getOrDefault(BASE + "$description", "");
      assertTrue(description.contains("\"version\":1,"), description);
      link.close();
    }
  }

  @Test
  void hubsAreToldWhenTheyComeUpAndForgottenWhenNotWanted() throws Exception {
    broker.start();
    String config = "homeassistant/device/pitchwatch-heron/config";
    CoachLink link = link(broker.settings());
    link.publish(Heron.parked(0.5, 0));
    ledger.await("ready");
    Observer hub = dashboard();
    Await.until("config stands", () -> hub.all(config).size() == 1);
    hub.awaitLast(ROLL, "0.50");
    hub.forget();
    hub.publish("homeassistant/status", "online");
    Await.until("config again", () -> hub.all(config).size() == 1);
    hub.awaitLast(ROLL, "0.50");
    List<String> topics = hub.all().stream().map(Observer.Heard::topic).toList();
    assertTrue(topics.indexOf(config) < topics.indexOf(ROLL), "first config, then state");
    link.close();
    CoachLink shy = link(broker.settings().announcing(List.of()), new Ledger());
    shy.publish(Heron.parked(0.5, 0));
    hub.awaitLast(config, "");
  }

  @Test
  void noTimerOfPahosRunsOnWallTime() throws Exception {
    broker.start();
    CoachLink link = link(broker.settings());
    link.publish(Heron.parked(0, 0));
    ledger.await("ready");
    Observer observer = dashboard();
    observer.awaitLast(STATE, "ready");
    // Silence for longer than the broker would stand without pings.
    long begin = System.nanoTime();
    Await.until("5 s of silence", () -> System.nanoTime() - begin > 5 * SECOND);
    assertEquals(List.of("ready"), observer.all(STATE));
    assertEquals(
        List.of(), threads("MQTT Ping").stream().filter(name -> name.contains("heron")).toList());
  }

  /** A clock without battery jumps when the network comes: only labels may change. */
  @Test
  void aWallClockThatJumpsByYearsOnlyChangesLabels() throws Exception {
    broker.start();
    Duration[] jump = {Duration.ZERO};
    LinkClock clock =
        new LinkClock(System::nanoTime, at -> Instant.parse("2026-06-01T12:00:00Z").plus(jump[0]));
    CoachLink link =
        later(
            CoachLink.start(new LinkParts(Heron.DEVICE, broker.settings(), ledger, ledger, clock)));
    Observer observer = dashboard();
    for (long days : new long[] {0, 3650, -3650}) {
      jump[0] = Duration.ofDays(days);
      long begin = System.nanoTime();
      Await.until(
          "the label follows by " + days + " days",
          () -> {
            link.publish(Heron.report(0, 0, Phase.ARRIVING, FloorState.STEADY, System.nanoTime()));
            String year = days == 0 ? "2026" : days > 0 ? "2036" : "2016";
            return observer.last(BASE + "floor/taken-at").orElse("").startsWith(year);
          });
      assertTrue(System.nanoTime() - begin < 10 * SECOND, "label after " + days + " days");
    }
    observer.awaitLast(STATE, "ready");
    assertFalse(observer.all(STATE).contains("lost"));
    assertEquals(List.of("ready"), ledger.entries());
  }
}
