package io.pitchwatch.mqtt;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.pitchwatch.mqtt.homie.DeviceTopics;
import io.pitchwatch.mqtt.link.Arrival;
import io.pitchwatch.mqtt.link.BrokerAddress;
import io.pitchwatch.mqtt.link.Payload;
import io.pitchwatch.mqtt.link.Publication;
import io.pitchwatch.mqtt.link.Standing;
import io.pitchwatch.mqtt.tree.DeviceTree;
import io.pitchwatch.mqtt.tree.Display;
import io.pitchwatch.mqtt.tree.Ruling;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class LinkInnerTest {

  private static final long SECOND = 1_000_000_000;

  private final DeviceTopics topics = new DeviceTopics("homie", "heron");
  private final DeviceTree tree = DeviceTree.of(Heron.COACH, List.of("floor"));
  private final Ledger ledger = new Ledger();
  private final CommandDesk desk = new CommandDesk(tree, topics, ledger, new Display(tree, topics));
  private final List<Publication> out = new ArrayList<>();

  private static Arrival arrival(String topic, byte[] bytes, boolean retained) {
    return new Arrival(
        topic, Payload.of(bytes), bytes.length, retained, Optional.empty(), Optional.empty(), 0);
  }

  @Test
  void anAcceptedCommandIsEchoedByteForByte() {
    byte[] laid = "{ \"wheels\" : [ ] }".getBytes(java.nio.charset.StandardCharsets.UTF_8);
    Ruling ruling = desk.take(arrival("homie/5/heron/visit/laid/set", laid, false), out::add);
    assertEquals(new Ruling.Accepted(), ruling);
    assertEquals("homie/5/heron/visit/laid", out.get(0).topic().text());
    assertEquals(Payload.of(laid), out.get(0).payload());
    assertTrue(out.get(0).retained());
  }

  /** Homie 5.0, "QoS and retained messages": not retained, quality of service 0. */
  @Test
  void aMomentaryCommandIsEchoedAsAnEvent() {
    byte[] now = {'n', 'o', 'w'};
    desk.take(arrival("homie/5/heron/upkeep/zero/set", now, false), out::add);
    assertEquals(0, out.get(0).qos());
    assertFalse(out.get(0).retained());
    assertEquals(List.of("zero"), ledger.entries());
  }

  @Test
  void anOversizeCommandChangesNothing() {
    byte[] large = new byte[8 * 1024 + 1];
    Ruling ruling = desk.take(arrival("homie/5/heron/visit/laid/set", large, false), out::add);
    assertEquals(new Ruling.Refused("found 8193 bytes; allowed are 8192"), ruling);
    assertEquals(List.of(), out);
  }

  @Test
  void aCommandThatIsNotTextChangesNothing() {
    byte[] bytes = {(byte) 0xC3, 0x28};
    Ruling ruling = desk.take(arrival("homie/5/heron/visit/stay/set", bytes, false), out::add);
    assertEquals(new Ruling.Refused("found bytes that are not UTF-8 text"), ruling);
    assertEquals(List.of(), ledger.entries());
  }

  @Test
  void theDescriptionKeepsItsNumberWhileItStaysTheSame() {
    Payload first = DescriptionVersion.of(tree.description(), Optional.empty());
    assertEquals(Payload.of(tree.description().json(1)), first);
    assertEquals(first, DescriptionVersion.of(tree.description(), Optional.of(first)));
  }

  @Test
  void theDescriptionsNumberRisesWhenItChanges() {
    DeviceTree larger = DeviceTree.of(Heron.COACH, List.of("floor", "rear"));
    Payload old = Payload.of(tree.description().json(41));
    assertEquals(
        Payload.of(larger.description().json(42)),
        DescriptionVersion.of(larger.description(), Optional.of(old)));
  }

  @Test
  void anotherPartysDescriptionDoesNotDisturb() {
    for (String text : new String[] {"", "x", "[]", "{\"version\": \"7\"}", "{\"version\": 1e9}"}) {
      assertEquals(
          Payload.of(tree.description().json(1)),
          DescriptionVersion.of(tree.description(), Optional.of(Payload.of(text))),
          text);
    }
  }

  @Test
  void leftoversAreWhatStoodAndIsNoMore() {
    Payload mark = Payload.of("mark");
    Leftovers leftovers = new Leftovers(topics, mark);
    byte[] one = {'1'};
    assertTrue(leftovers.take(arrival("homie/5/heron/fridge-old/within", one, true)));
    assertTrue(leftovers.take(arrival("homie/5/heron/floor/roll", one, true)));
    assertTrue(leftovers.take(arrival("homie/5/heron/visit/stay/set", one, true)));
    assertTrue(leftovers.take(arrival("homie/5/heron/$description", new byte[] {'{', '}'}, true)));
    assertFalse(leftovers.isComplete());
    assertTrue(leftovers.take(arrival("homie/5/heron/$log/debug", mark.bytes(), false)));
    assertTrue(leftovers.isComplete());
    assertFalse(leftovers.take(arrival("homie/5/heron/floor/roll", one, false)));
    assertEquals(
        List.of("homie/5/heron/fridge-old/within"),
        leftovers.strays(Set.of("homie/5/heron/floor/roll", "homie/5/heron/$description")));
    assertEquals(Optional.of(Payload.of("{}")), leftovers.description());
  }

  @Test
  void aStrangerCannotFloodTheLog() {
    RateLimit limit = new RateLimit();
    int passed = 0;
    for (int i = 0; i < 100_000; i++) {
      passed += limit.passes(i * SECOND / 1000) ? 1 : 0;
    }
    assertEquals(104, passed, "100 s at one a second, after five at once");
    assertEquals(100_000 - 104, limit.takeSuppressed());
  }

  @Test
  void aTakeoverIsNotFoughtOver() {
    Dialling dialling = new Dialling(1, "contested", 0);
    assertTrue(dialling.isDue(0));
    dialling.connected(0);
    dialling.ended(new Standing.TakenOver(""), 2 * SECOND);
    assertFalse(dialling.isDue(31 * SECOND));
    assertTrue(dialling.isDue(63 * SECOND));
  }

  @Test
  void anOutageIsProbedSoonAndThenAtMostHalfAMinuteApart() {
    Dialling dialling = new Dialling(1, "contested", 0);
    long now = 0;
    for (int i = 0; i < 100; i++) {
      dialling.ended(new Standing.Unreachable(""), now);
      long limit = i == 0 ? SECOND / 2 : 30 * SECOND;
      assertTrue(dialling.isDue(now + limit), "attempt " + i);
      now += limit;
    }
  }

  @Test
  void settingsRefuseAKeepAliveThatBreaksThePromise() {
    MqttSettings settings = MqttSettings.of(new BrokerAddress("b", 1, false), 1);
    assertTrue(settings.keepAlive().toMillis() * 3 / 2 <= 10_000);
    assertThrows(IllegalArgumentException.class, () -> settings.withKeepAlive(Duration.ZERO));
  }

  /** Mosquitto 2.0 says nothing when another client takes a place: the pattern has to. */
  @Test
  void endingsWithoutReasonOneAfterTheOtherAreTakenForATakeover() {
    Dialling dialling = new Dialling(1, "contested", 0);
    Standing.Ended lost = new Standing.Lost("", true);
    for (int i = 0; i < 2; i++) {
      dialling.connected(0);
      assertEquals(lost, dialling.ended(lost, SECOND));
    }
    dialling.connected(0);
    assertEquals(new Standing.TakenOver("contested"), dialling.ended(lost, SECOND));
    assertFalse(dialling.isDue(30 * SECOND));
  }

  @Test
  void aBrokerThatComesAndGoesIsNotTakenForATakeover() {
    Dialling dialling = new Dialling(1, "contested", 0);
    Standing.Ended lost = new Standing.Lost("", true);
    for (int i = 0; i < 20; i++) {
      dialling.connected(0);
      assertEquals(lost, dialling.ended(lost, SECOND));
      dialling.ended(new Standing.Unreachable(""), 2 * SECOND);
    }
    for (int i = 0; i < 20; i++) {
      dialling.connected(0);
      assertEquals(lost, dialling.ended(lost, 61 * SECOND));
    }
    for (int i = 0; i < 20; i++) {
      dialling.connected(0);
      dialling.brokerWasAway();
      assertEquals(lost, dialling.ended(lost, SECOND));
    }
    Standing.Ended broken = new Standing.Lost("", false);
    for (int i = 0; i < 20; i++) {
      dialling.connected(0);
      assertEquals(broken, dialling.ended(broken, SECOND));
    }
  }
}
