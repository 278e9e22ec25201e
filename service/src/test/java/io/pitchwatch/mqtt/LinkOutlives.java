package io.pitchwatch.mqtt;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.pitchwatch.mqtt.link.Credentials;
import io.pitchwatch.visit.Report.AlertReport;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.locks.LockSupport;
import org.junit.jupiter.api.Test;

/** What the link outlives, whatever the broker does. */
abstract class LinkOutlives extends LinkBench {

  @Test
  void aBrokerAbsentAtStartIsWaitedForWhileCallersAreNot() throws Exception {
    broker.stop();
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
  void aDaemonThatVanishesIsCalledLostByItsWill() throws Exception {
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
  void twoDaemonsOfOneCoachDoNotFight() throws Exception {
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
    Path wrong = Files.writeString(directory().resolve("wrong"), "not-it\n");
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
    CoachLink link = link(MqttSettings.of(broker.address(), 1));
    link.publish(Heron.parked(0, 0));
    Await.until(
        "what is missing is said",
        () -> ledger.entries().stream().anyMatch(e -> e.contains("none are configured")));
  }

  @Test
  void aDoorSlammedInTheFaceIsTriedAgain() throws Exception {
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
}
