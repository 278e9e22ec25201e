package io.pitchwatch.mqtt;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.pitchwatch.floor.FloorState;
import io.pitchwatch.visit.Phase;
import io.pitchwatch.visit.Report.AlertReport;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.locks.LockSupport;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What the link says, on every broker. */
abstract class LinkSays extends LinkBench {

  @Test
  void everythingIsSaidInOrderRetainedAndOnce() throws Exception {
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
  void aSlowLineGetsTheLatestNotABacklog() throws Exception {
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
  void aCleanStopLeavesNothingMeasuredStanding() throws Exception {
    Set<Thread> before = Thread.getAllStackTraces().keySet();
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
    Await.until(
        "no thread of the link is left",
        () ->
            Thread.getAllStackTraces().keySet().stream()
                .filter(thread -> !before.contains(thread))
                .map(Thread::getName)
                .noneMatch(name -> name.contains("heron") || name.startsWith("mqtt-")));
    assertFalse(observer.all(STATE).contains("lost"));
  }

  @Test
  void oldNewsIsCalledUnknownWhateverTheReportSays() throws Exception {
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
  void whatIsNoMoreIsTakenAway() throws Exception {
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
        List.of(),
        Thread.getAllStackTraces().keySet().stream()
            .map(Thread::getName)
            .filter(name -> name.startsWith("MQTT Ping") && name.contains("heron"))
            .toList());
  }

  /** A clock without battery jumps when the network comes: only labels may change. */
  @Test
  void aWallClockThatJumpsByYearsOnlyChangesLabels() throws Exception {
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
