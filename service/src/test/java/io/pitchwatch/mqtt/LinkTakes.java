package io.pitchwatch.mqtt;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.pitchwatch.mqtt.homie.LogLevel;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.eclipse.paho.mqttv5.common.MqttException;
import org.junit.jupiter.api.Test;

/** What the link takes, on every broker. */
abstract class LinkTakes extends LinkBench {

  @Test
  void commandsReachTheServiceAndAreEchoed() throws Exception {
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
  void historyIsSentToTheTokenOfWhoAsked() throws Exception {
    CoachLink link = link(broker.settings());
    link.publish(Heron.parked(0, 0));
    ledger.await("ready");
    Observer observer = dashboard();
    observer.publish(BASE + "upkeep/history/set", "{\"hours\": 6, \"reply\": \"page-1\"}");
    observer.awaitLast(BASE + "upkeep/history/answer/page-1", "{}");
    observer.publish(BASE + "upkeep/history/set", "{\"hours\": 6}");
    observer.awaitPart(WARN, "needs a response topic (MQTT 5), or a reply");
    assertEquals(List.of("ready", "history 6.0"), ledger.entries());
  }

  @Test
  void aRetainedCommandIsIgnoredAndSaid() throws Exception {
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
}
