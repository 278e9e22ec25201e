package io.pitchwatch.mqtt.tree;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.pitchwatch.mqtt.Heron;
import io.pitchwatch.mqtt.Ledger;
import io.pitchwatch.mqtt.Schemas;
import io.pitchwatch.visit.Guide;
import io.pitchwatch.visit.Report;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CommandsTest {

  private static final String LAID =
      "{\"wheels\": [{\"axle\": \"rear\", \"side\": \"right\", \"layers\": "
          + "[{\"piece\": \"sheet\", \"abreast\": 1}, {\"piece\": \"block\", \"abreast\": 2}], "
          + "\"stair\": [[{\"piece\": \"block\", \"abreast\": 2}]]}]}";
  private static final String SHELVE = "{\"alert\": \"fridge-galley\", \"minutes\": 60}";

  private final Ledger ledger = new Ledger();
  private final VisitNode visit = new VisitNode(Heron.COACH);
  private final UpkeepNode upkeep = new UpkeepNode(List.of("floor"));

  private Ruling set(CoachNode node, String property, String payload) {
    return node.set(node.node().property(property).orElseThrow(), payload, ledger);
  }

  @ParameterizedTest
  @CsvSource({
    "stay, overnight, stay OVERNIGHT",
    "stay, season, stay SEASON",
    "surface, soft, surface SOFT",
    "mark, now, mark",
    "site, ' Alder Bend ', site Alder Bend",
    "site, '', 'site '",
    "site, '\u0000', 'site '"
  })
  void ofTheVisitAreHandedOn(String property, String payload, String entry) {
    assertEquals(new Ruling.Accepted(), set(visit, property, payload));
    assertEquals(List.of(entry), ledger.entries());
  }

  @Test
  void ofUpkeepAreHandedOn() throws Exception {
    set(upkeep, "zero", "now");
    set(upkeep, "acknowledge", "fridge-galley");
    set(upkeep, "shelve", SHELVE);
    assertEquals(
        List.of("zero", "acknowledge fridge-galley", "shelve fridge-galley 60.0"),
        ledger.entries());
    assertEquals(List.of(), Schemas.faults("shelve", SHELVE));
  }

  @ParameterizedTest
  @CsvSource({
    "undo, now, care UNDO",
    "drift, forget, care DRIFT_FORGET",
    "reversal, first, care REVERSAL_FIRST",
    "reversal, second, care REVERSAL_SECOND",
    "reversal, cancel, care REVERSAL_CANCEL",
    "align, before, care ALIGN_BEFORE",
    "align, front-up, care ALIGN_FRONT_UP",
    "align, rear-up, care ALIGN_REAR_UP",
    "align, cancel, care ALIGN_CANCEL",
    "calibrate, start, care CALIBRATE_START",
    "calibrate, accept, care CALIBRATE_ACCEPT",
    "calibrate, cancel, care CALIBRATE_CANCEL",
  })
  void ofCareAreHandedOn(String property, String payload, String entry) {
    assertEquals(new Ruling.Accepted(), set(upkeep, property, payload));
    assertEquals(List.of(entry), ledger.entries());
  }

  @ParameterizedTest
  @CsvSource({
    "undo, now-rear, care UNDO of rear",
    "drift, forget-front, care DRIFT_FORGET of front",
    "drift, forget, care DRIFT_FORGET",
    "calibrate, start-rear, care CALIBRATE_START of rear",
    "calibrate, accept, care CALIBRATE_ACCEPT",
  })
  void ofCareMayNameOneOfTwoSensors(String property, String payload, String entry) {
    UpkeepNode two = new UpkeepNode(List.of("front", "rear"));
    assertEquals(new Ruling.Accepted(), set(two, property, payload));
    assertEquals(List.of(entry), ledger.entries());
    Ruling.Refused refused = (Ruling.Refused) set(two, "calibrate", "start-roof");
    assertTrue(
        refused.why().endsWith("allowed are start, accept, cancel, start-front, start-rear"),
        refused.why());
  }

  @Test
  void ofCareThatMakeNoSenseNameWhatIsAllowed() {
    Ruling.Refused refused = (Ruling.Refused) set(upkeep, "align", "sideways");
    assertTrue(refused.why().endsWith("allowed are before, front-up, rear-up, cancel"));
    assertEquals(List.of(), ledger.entries());
  }

  @Test
  void guideIsWhatItsSchemaSays() throws Exception {
    Guide guide =
        new Guide(
            Guide.Task.REVERSAL,
            "first reading taken",
            "turn the coach \"round\"",
            "zero none, heading none, calibration none");
    assertEquals(List.of(), Schemas.faults("guide", GuideDocument.write(guide)));
    assertEquals(
        "{\"task\":\"none\",\"said\":\"\",\"next\":\"\",\"undo\":\"\"}",
        GuideDocument.write(Guide.IDLE));
  }

  @ParameterizedTest
  @CsvSource({
    "stay, forever",
    "stay, Season",
    "stay, 'season '",
    "stay, ''",
    "surface, moon",
    "mark, later",
    "site, 'Alder\nBend'",
    "site, 'a name that goes on and on and on and on and on and on and on and on and on and on'",
    "laid, '[]'",
    "laid, '{\"wheels\": [{\"axle\": \"tag\", \"side\": \"left\", \"layers\": []}]}'",
    "laid, '{\"wheels\": [], \"wheels\": []}'",
    "laid, '{\"wheels\": []} {}'",
    "laid, '{\"wheels\": null}'",
  })
  void ofTheVisitThatMakeNoSenseChangeNothing(String property, String payload) {
    Ruling ruling = set(visit, property, payload);
    assertTrue(ruling instanceof Ruling.Refused, payload);
    assertEquals(List.of(), ledger.entries());
  }

  @ParameterizedTest
  @CsvSource({
    "zero, NOW",
    "acknowledge, 'Fridge galley'",
    "acknowledge, ''",
    "shelve, '{\"alert\": \"x\"}'",
    "shelve, '{\"alert\": \"x\", \"minutes\": -1}'",
    "shelve, '{\"alert\": \"x\", \"minutes\": 1e400}'",
    "shelve, '{\"alert\": \"x\", \"minutes\": \"1\"}'",
    "shelve, '{\"alert\": \"x\", \"minutes\": 1, \"for\": 2}'",
  })
  void ofUpkeepThatMakeNoSenseChangeNothing(String property, String payload) {
    assertTrue(set(upkeep, property, payload) instanceof Ruling.Refused, payload);
    assertEquals(List.of(), ledger.entries());
  }

  @Test
  void refusedSayWhatWasFoundAndWhatIsAllowed() {
    assertEquals(
        new Ruling.Refused("found \"forever\"; allowed are overnight, stay, season"),
        set(visit, "stay", "forever"));
    assertEquals(
        new Ruling.Refused("laid has 12 of block; on board are 10"),
        set(visit, "laid", LAID.replace("\"abreast\": 2", "\"abreast\": 6")));
    assertEquals(
        new Ruling.Refused("wheels[0].axle is \"tag\"; it must be one of front, rear"),
        set(visit, "laid", LAID.replace("rear", "tag")));
  }

  @Test
  void repeatAStrangersTextShortAndHarmless() {
    Ruling.Refused refused = (Ruling.Refused) set(visit, "stay", "\n\u202e" + "x".repeat(5000));
    assertEquals(
        "found \"??" + "x".repeat(38) + "…\"; allowed are overnight, stay, season", refused.why());
  }

  @Test
  void keepWhatWasLaidByteForByteWhileTheReportSaysTheSame() throws Exception {
    assertEquals(new Ruling.Accepted(), set(visit, "laid", LAID));
    assertEquals(List.of("laid 1"), ledger.entries());
    Report agreed = Heron.with(Heron.parked(0, 0), Heron.laid());
    assertEquals(Value.of(LAID), laidIn(agreed));
    Report gone = Heron.parked(0, 0);
    assertEquals(Value.of("{\"wheels\":[]}"), laidIn(gone));
    assertEquals(List.of(), Schemas.faults("laid", LAID));
  }

  @Test
  void writeWhatIsLaidSoThatItReadsBack() throws Exception {
    String written = LaidDocument.write(Heron.laid());
    assertEquals(Heron.laid(), LaidDocument.parse(written, Heron.COACH));
    assertEquals(List.of(), Schemas.faults("laid", written));
  }

  private Value laidIn(Report report) {
    return visit.read(report, at -> java.time.Instant.EPOCH).stream()
        .filter(r -> r.property().id().equals("laid"))
        .findFirst()
        .orElseThrow()
        .value();
  }

  /** Whatever is sent, the answer is a sentence or a command that its schema allows too. */
  @Test
  void mutatedAtRandomAreRefusedOrRight() throws Exception {
    long seed = 20260603;
    SplittableRandom random = new SplittableRandom(seed);
    for (int i = 0; i < 20_000; i++) {
      boolean laid = random.nextBoolean();
      String payload = mutated(laid ? LAID : SHELVE, random);
      String where = "seed " + seed + ", case " + i + ": " + payload;
      Ruling ruling = laid ? set(visit, "laid", payload) : set(upkeep, "shelve", payload);
      if (ruling instanceof Ruling.Refused refused) {
        assertFalse(refused.why().isBlank(), where);
      } else if (i % 20 == 0) {
        assertEquals(List.of(), Schemas.faults(laid ? "laid" : "shelve", payload), where);
      }
    }
  }

  private static String mutated(String text, SplittableRandom random) {
    StringBuilder mutant = new StringBuilder(text);
    int changes = random.nextInt(1, 4);
    for (int i = 0; i < changes && mutant.length() > 1; i++) {
      int at = random.nextInt(mutant.length());
      switch (random.nextInt(4)) {
        case 0 -> mutant.deleteCharAt(at);
        case 1 -> mutant.insert(at, (char) random.nextInt(1, 0x250));
        case 2 -> mutant.setCharAt(at, "{}[]\",:0123456789eE-.\\ntf".charAt(random.nextInt(25)));
        default -> mutant.insert(at, text, 0, random.nextInt(text.length()));
      }
    }
    return mutant.toString();
  }
}
