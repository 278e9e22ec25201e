package io.pitchwatch.mqtt.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.pitchwatch.comfort.Verdict;
import io.pitchwatch.floor.FloorState;
import io.pitchwatch.mqtt.Heron;
import io.pitchwatch.mqtt.Schemas;
import io.pitchwatch.mqtt.homie.DeviceTopics;
import io.pitchwatch.mqtt.link.Arrival;
import io.pitchwatch.mqtt.link.Payload;
import io.pitchwatch.mqtt.link.Publication;
import io.pitchwatch.mqtt.tree.DeviceTree;
import io.pitchwatch.mqtt.tree.Freshness;
import io.pitchwatch.mqtt.tree.Ruling;
import io.pitchwatch.visit.Phase;
import io.pitchwatch.visit.Report;
import io.pitchwatch.visit.Report.AlertReport;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CheckDeskTest {

  private static final long SECOND = 1_000_000_000;
  private static final long ASKED_AT = 100 * SECOND;

  private final CheckDesk desk =
      new CheckDesk(
          DeviceTree.of(Heron.COACH, List.of("floor")),
          new DeviceTopics("homie", "heron"),
          List.of("homeassistant"),
          at -> Instant.ofEpochSecond(0, at));
  private final List<Publication> answers = new ArrayList<>();

  private static Report takenAt(long nanos) {
    return Heron.report(1.2, -0.8, Phase.PARKED, FloorState.STEADY, nanos);
  }

  private Ruling ask(String responseTopic) {
    return desk.take(
        new Arrival(
            "homie/5/heron/upkeep/check/set",
            Payload.NOTHING,
            0,
            false,
            Optional.of(responseTopic),
            Optional.of(Payload.of("c")),
            ASKED_AT));
  }

  private CheckOutcome.Answer only() {
    assertEquals(1, answers.size());
    return AnswerReader.read(answers.get(0).payload().text().orElseThrow()).orElseThrow();
  }

  @Test
  void answersWithWhatWasReadAfterTheQuestionArrived() {
    assertEquals(new Ruling.Accepted(), ask("pitchwatch/answer/x"));
    desk.answer(takenAt(ASKED_AT), ASKED_AT + SECOND / 10, answers::add);
    assertEquals(List.of(), answers);
    desk.answer(takenAt(ASKED_AT + 1), ASKED_AT + SECOND / 5, answers::add);
    assertTrue(only().fresh());
    assertEquals(Verdict.GOOD, only().verdict());
    assertEquals("pitchwatch/answer/x", answers.get(0).topic().text());
    assertEquals(Optional.of(Payload.of("c")), answers.get(0).correlation());
    assertFalse(answers.get(0).retained());
  }

  @Test
  void answersWithoutNewsAfterAWhileAndSaysSo() {
    ask("pitchwatch/answer/x");
    desk.answer(takenAt(ASKED_AT - SECOND), ASKED_AT + CheckDesk.PATIENCE_NANOS, answers::add);
    assertFalse(only().fresh());
    assertEquals(Verdict.UNKNOWN, only().verdict());
  }

  /** A board may never have seen a sample: then there is no time one could be as old as. */
  @Test
  void whatIsNotKnownIsNeitherFreshNorOld() {
    ask("pitchwatch/answer/x");
    Report never =
        Heron.at(
            Freshness.stopped(Heron.report(0, 0, Phase.PARKED, FloorState.STEADY, 0)), ASKED_AT);
    desk.answer(never, ASKED_AT + CheckDesk.PATIENCE_NANOS, answers::add);
    assertFalse(only().fresh());
    String json = answers.get(0).payload().text().orElseThrow();
    assertTrue(json.contains("\"state\":{\"value\":\"unknown\",\"ageSeconds\":2.00}"), json);
  }

  @Test
  void whatTheSensorSaidBeforeItWasFoundWrongIsNotFresh() {
    ask("pitchwatch/answer/x");
    Report frozen = Freshness.stopped(takenAt(ASKED_AT + 1));
    desk.answer(frozen, ASKED_AT + CheckDesk.PATIENCE_NANOS, answers::add);
    assertFalse(only().fresh());
  }

  @Test
  void answersEachQuestionOnce() {
    ask("a");
    ask("b");
    desk.answer(takenAt(ASKED_AT + 1), ASKED_AT + 2, answers::add);
    desk.answer(takenAt(ASKED_AT + 1), ASKED_AT + 3, answers::add);
    assertEquals(List.of("a", "b"), answers.stream().map(a -> a.topic().text()).toList());
  }

  /** A stranger must not make the daemon speak where its word counts. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "#",
        "a/+",
        "$SYS/x",
        "homie/5/heron/floor/roll",
        "homie/5/heron/visit/stay/set",
        "homie/5/egret/$state",
        "homie/5",
        "homeassistant/device/x/config",
        "homeassistant",
        "a\0b"
      })
  void refusesAnswersWhereItsWordCounts(String responseTopic) {
    assertTrue(ask(responseTopic) instanceof Ruling.Refused);
    desk.answer(takenAt(ASKED_AT + 1), ASKED_AT + 2, answers::add);
    assertEquals(List.of(), answers);
  }

  @Test
  void refusesTopicsAndCorrelationsWithoutMeasure() {
    assertTrue(ask("x".repeat(257)) instanceof Ruling.Refused);
    Arrival large =
        new Arrival(
            "t",
            Payload.NOTHING,
            0,
            false,
            Optional.of("a"),
            Optional.of(Payload.of("x".repeat(1025))),
            ASKED_AT);
    assertTrue(desk.take(large) instanceof Ruling.Refused);
  }

  @Test
  void refusesQuestionsWithoutAPlaceForTheAnswer() {
    Arrival silent =
        new Arrival("t", Payload.NOTHING, 0, false, Optional.empty(), Optional.empty(), 0);
    assertTrue(desk.take(silent) instanceof Ruling.Refused);
  }

  @Test
  void letsSoManyWaitAndNoMore() {
    for (int i = 0; i < 8; i++) {
      assertEquals(new Ruling.Accepted(), ask("a" + i));
    }
    assertTrue(ask("a8") instanceof Ruling.Refused);
  }

  @Test
  void writesWhatItsSchemaSaysAndHowOldEachFigureIs() throws Exception {
    Report report =
        Heron.with(
            takenAt(ASKED_AT + SECOND),
            new AlertReport("fridge-galley", "The galley fridge …", ASKED_AT - 60 * SECOND));
    ask("a");
    desk.answer(report, ASKED_AT + SECOND + SECOND / 4, answers::add);
    String json = only().json();
    assertEquals(List.of(), Schemas.faults("check", json));
    assertTrue(json.contains("\"roll\":{\"value\":1.20,\"unit\":\"°\",\"ageSeconds\":0.25}"), json);
    assertTrue(json.contains("\"askedAt\":\"1970-01-01T00:01:40Z\""), json);
    assertTrue(json.contains("\"within\":{\"value\":true,\"ageSeconds\":0.25}"), json);
    assertTrue(json.contains("\"id\":\"fridge-galley\""), json);
    assertTrue(json.contains("\"ageSeconds\":61.25"), json);
  }

  @Test
  void writesNullForWhatIsNotKnown() throws Exception {
    ask("a");
    desk.answer(takenAt(ASKED_AT - 9 * SECOND), ASKED_AT + 3 * SECOND, answers::add);
    String json = only().json();
    assertEquals(List.of(), Schemas.faults("check", json));
    assertTrue(json.contains("\"roll\":{\"value\":null,\"unit\":\"°\",\"ageSeconds\":null}"), json);
    assertTrue(json.contains("\"verdict\":{\"value\":\"unknown\""), json);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "[]", "null", "{", "{\"fresh\": true", "good"})
  void nobodyReadsAnAnswerFromWhatIsNone(String text) {
    assertEquals(Optional.empty(), AnswerReader.read(text));
  }

  /** Never good news for want of news. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "{}",
        "{\"fresh\": true}",
        "{\"fresh\": \"true\", \"nodes\": {\"floor\": {\"verdict\": {\"value\": \"good\"}}}}",
        "{\"fresh\": true, \"nodes\": {\"floor\": {\"verdict\": {\"value\": \"fine\"}}}}",
        "{\"fresh\": true, \"floor\": {\"verdict\": {\"value\": \"good\"}}}",
      })
  void nobodyReadsGoodFromAnAnswerThatDoesNotSayIt(String text) {
    assertEquals(Verdict.UNKNOWN, AnswerReader.read(text).orElseThrow().verdict());
  }
}
