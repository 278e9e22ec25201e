package io.pitchwatch.mqtt.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.pitchwatch.mqtt.Ledger;
import io.pitchwatch.mqtt.Schemas;
import io.pitchwatch.mqtt.homie.DeviceTopics;
import io.pitchwatch.mqtt.link.Arrival;
import io.pitchwatch.mqtt.link.Payload;
import io.pitchwatch.mqtt.link.Publication;
import io.pitchwatch.mqtt.tree.Commands;
import io.pitchwatch.mqtt.tree.HistoryRequest;
import io.pitchwatch.mqtt.tree.Ruling;
import java.lang.reflect.Proxy;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class HistoryDeskTest {

  private static final long SECOND = 1_000_000_000;

  private final Ledger ledger = new Ledger();
  private final List<Publication> answers = new ArrayList<>();
  private int woken;

  private HistoryDesk desk(Commands commands) {
    return new HistoryDesk(
        new DeviceTopics("homie", "heron"), List.of("homeassistant"), commands, () -> woken++);
  }

  private static Arrival asks(String payload, Optional<String> responseTopic, long atNanos) {
    return new Arrival(
        "homie/5/heron/upkeep/history/set",
        Payload.of(payload),
        payload.length(),
        false,
        responseTopic,
        Optional.of(Payload.of("c")),
        atNanos);
  }

  @Test
  void aClientWithoutResponseTopicsNamesAToken() {
    HistoryDesk desk = desk(ledger);
    assertEquals(
        new Ruling.Accepted(),
        desk.take(asks("{\"hours\": 6, \"reply\": \"page-1\"}", Optional.empty(), 0)));
    desk.answer(answers::add);
    assertEquals(List.of("history 6.0"), ledger.entries());
    assertEquals(1, woken);
    assertEquals("homie/5/heron/upkeep/history/answer/page-1", answers.get(0).topic().text());
    assertEquals(false, answers.get(0).retained());
    assertEquals(Optional.of("{}"), answers.get(0).payload().text());
  }

  @Test
  void aResponseTopicGetsItsCorrelationBackAndNoBytesAskForTheLastDay() {
    HistoryDesk desk = desk(ledger);
    assertEquals(new Ruling.Accepted(), desk.take(asks("", Optional.of("pitchwatch/answer/x"), 0)));
    desk.answer(answers::add);
    assertEquals(List.of("history 24.0"), ledger.entries());
    assertEquals("pitchwatch/answer/x", answers.get(0).topic().text());
    assertEquals(Optional.of(Payload.of("c")), answers.get(0).correlation());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{\"hours\": 6}",
        "{\"hours\": -6, \"reply\": \"x\"}",
        "{\"hours\": 6, \"reply\": \"x/../y\"}",
        "{\"hours\": 6, \"reply\": \"\"}",
        "{\"reply\": \"a-token-that-is-longer-than-thirty-two\"}",
        "{\"step\": \"week\", \"reply\": \"x\"}",
        "{\"from\": \"yesterday\", \"reply\": \"x\"}",
        "{\"from\": \"2026-06-01T12:00:00Z\", \"hours\": 2, \"reply\": \"x\"}",
        "{\"weeks\": 2, \"reply\": \"x\"}",
        "[]",
        "now",
      })
  void whatMakesNoSenseIsRefusedAndLooksNothingUp(String payload) {
    assertInstanceOf(
        Ruling.Refused.class, desk(ledger).take(asks(payload, Optional.empty(), 0)), payload);
    assertEquals(List.of(), ledger.entries());
  }

  @ParameterizedTest
  @ValueSource(strings = {"homie/5/heron/floor/roll", "homeassistant/x", "a/+", "$SYS/x"})
  void noAnswerGoesWhereOthersTakeOurWordForOurs(String topic) {
    Ruling ruling = desk(ledger).take(asks("{}", Optional.of(topic), 0));
    assertInstanceOf(Ruling.Refused.class, ruling);
    assertEquals(List.of(), ledger.entries());
  }

  @Test
  void aFewAtATimeAndALostOneDoesNotKeepOthersOutForEver() {
    HistoryDesk desk = desk(deaf());
    for (int i = 0; i < HistoryDesk.MOST_WAITING; i++) {
      assertEquals(
          new Ruling.Accepted(), desk.take(asks("{\"reply\": \"x\"}", Optional.empty(), i)));
    }
    Arrival soon = asks("{\"reply\": \"x\"}", Optional.empty(), 10 * SECOND);
    assertInstanceOf(Ruling.Refused.class, desk.take(soon));
    Arrival later = asks("{\"reply\": \"x\"}", Optional.empty(), 31 * SECOND);
    assertEquals(new Ruling.Accepted(), desk.take(later));
  }

  /** A service that never answers, as when its disk hangs. */
  private static Commands deaf() {
    return (Commands)
        Proxy.newProxyInstance(
            HistoryDeskTest.class.getClassLoader(),
            new Class<?>[] {Commands.class},
            (proxy, method, args) -> null);
  }

  @Test
  void theRequestsSchemaAgreesWithTheDesk() throws Exception {
    for (String good : List.of("{}", "{\"hours\": 48, \"step\": \"hour\", \"reply\": \"a-1\"}")) {
      assertEquals(List.of(), Schemas.faults("history-request", good));
      HistoryRequest.parse(good);
    }
    for (String bad :
        List.of("{\"hours\": 0}", "{\"reply\": \"A\"}", "{\"step\": \"week\"}", "{\"x\": 1}")) {
      assertTrue(!Schemas.faults("history-request", bad).isEmpty(), bad);
    }
  }
}
