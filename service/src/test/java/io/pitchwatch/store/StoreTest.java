package io.pitchwatch.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.pitchwatch.alarms.AlarmMemory;
import io.pitchwatch.attitude.Alignment;
import io.pitchwatch.attitude.Calibration;
import io.pitchwatch.attitude.CalibrationQuality;
import io.pitchwatch.attitude.Lean;
import io.pitchwatch.attitude.SensorSetup;
import io.pitchwatch.attitude.TemperatureDrift;
import io.pitchwatch.attitude.Triad;
import io.pitchwatch.attitude.UpVector;
import io.pitchwatch.attitude.Zero;
import io.pitchwatch.coach.Direction;
import io.pitchwatch.coach.Stay;
import io.pitchwatch.coach.Surface;
import io.pitchwatch.levelling.Layer;
import io.pitchwatch.visit.Laid;
import io.pitchwatch.visit.Phase;
import io.pitchwatch.visit.SiteVisit;
import io.pitchwatch.visit.VisitState;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is kept is there again after a restart. */
class StoreTest {

  private static final Zero ZERO =
      new Zero(UpVector.of(Lean.ofDegrees(1.5, -2.25)), 1e-4, Double.NaN, "2026-05-01T12:00:00Z");
  private static final String KEPT_AT = "2026-06-01T12:00:00Z";
  private static final Zero LATER = new Zero(UpVector.LEVEL, 2e-4, 21.5, "");
  private static final List<Layer> ONE = List.of(new Layer("block", 2));
  private static final Laid LAID =
      new Laid(
          List.of(
              new Laid.Wheel(
                  "rear",
                  Direction.RIGHT,
                  List.of(new Layer("sheet", 1), new Layer("block", 2)),
                  List.of(ONE, ONE))));

  @TempDir Path directory;

  private Store open() {
    Store.Opening opening = Store.open(directory, 0, () -> 1_800_000_000L);
    assertEquals(List.of(), opening.troubles());
    return opening.store();
  }

  @Test
  void aZeroSurvivesARestartToTheLastBit() {
    try (Store store = open()) {
      assertEquals(Optional.empty(), store.kept().zero("floor"));
      assertEquals(new Written.Done(), store.kept().keepZero("floor", ZERO));
    }
    try (Store store = open()) {
      assertEquals(Optional.of(ZERO), store.kept().zero("floor"));
      assertEquals(Optional.empty(), store.kept().zero("rear"));
    }
  }

  @Test
  void theZeroBeforeIsKeptToGoBackTo() {
    try (Store store = open()) {
      store.kept().keepZero("floor", ZERO);
      store.kept().keepZero("floor", ZERO);
      assertEquals(SensorSetup.NONE, store.kept().setupBefore("floor"));
      store.kept().keepZero("floor", LATER);
    }
    try (Store store = open()) {
      assertEquals(Optional.of(LATER), store.kept().zero("floor"));
      assertEquals(ZERO, store.kept().setupBefore("floor").zero());
    }
  }

  @Test
  void driftThatWasLearntIsKeptForTheChipOfWhichItWasLearnt() {
    TemperatureDrift drift = new TemperatureDrift(new Triad(4e-4, -1e-4, 2e-6), 3e-5, -4.5, 31);
    try (Store store = open()) {
      assertEquals(Optional.empty(), store.kept().drift("floor", "MPU-6050"));
      assertEquals(new Written.Done(), store.kept().keepDrift("floor", "MPU-6050", drift, KEPT_AT));
    }
    try (Store store = open()) {
      assertEquals(Optional.of(drift), store.kept().drift("floor", "MPU-6050"));
      assertEquals(KEPT_AT, store.kept().driftDate("floor"));
      assertEquals("", store.kept().driftDate("rear"));
      KeptArchive.Opening copy = KeptArchive.read(directory);
      KeptArchive.Opening.Read read = assertInstanceOf(KeptArchive.Opening.Read.class, copy);
      assertEquals(Optional.of(drift), read.kept().drift("floor", "MPU-6050"), "while it is open");
      assertEquals(Optional.empty(), store.kept().drift("floor", "ADXL355"), "another chip there");
      assertEquals(Optional.empty(), store.kept().drift("rear", "MPU-6050"));
      store.kept().forgetDrift("floor");
    }
    try (Store store = open()) {
      assertEquals(Optional.empty(), store.kept().drift("floor", "MPU-6050"));
    }
  }

  @Test
  void allThatWasFoundOutAboutASensorIsKeptAndWhatWasBefore() {
    CalibrationQuality quality =
        new CalibrationQuality(
            new Triad(1e-4, 2e-4, 3e-4),
            new Triad(1e-3, 2e-3, 3e-3),
            new Triad(1e-5, 2e-5, 3e-5),
            0.02,
            0.0003,
            18);
    Calibration calibration =
        new Calibration(
            new Triad(1.01, 0.99, 1.02),
            new Triad(-0.01, 0.02, 0.003),
            new Triad(0.012, -0.009, 0.025),
            quality,
            "2026-05-01T10:00:00Z");
    Alignment.Found alignment = new Alignment.Found(0.05, 0.001, "2026-05-01T11:00:00Z");
    SensorSetup setup = new SensorSetup(calibration, ZERO, alignment);
    try (Store store = open()) {
      assertEquals(SensorSetup.NONE, store.kept().setup("floor"));
      assertEquals(new Written.Done(), store.kept().keepSetup("floor", setup));
      store.kept().keepReversalFirst("floor", LATER);
    }
    try (Store store = open()) {
      assertEquals(setup, store.kept().setup("floor"));
      assertEquals(SensorSetup.NONE, store.kept().setupBefore("floor"));
      assertEquals(Optional.of(LATER), store.kept().reversalFirst("floor"));
      store.kept().forgetReversal("floor");
      store.kept().keepSetup("floor", setup.with(LATER));
      store.kept().keepSetup("floor", setup.with(LATER));
    }
    try (Store store = open()) {
      assertEquals(setup, store.kept().setupBefore("floor"));
      assertEquals(Optional.empty(), store.kept().reversalFirst("floor"));
    }
  }

  @Test
  void theVisitGoesOnWhereItWas() {
    VisitState state = new VisitState(Phase.PARKED, Stay.SEASON, Surface.SOFT, LAID, true, 5);
    try (Store store = open()) {
      assertEquals(Optional.empty(), store.kept().visit(0));
      store.kept().keepVisit(state);
    }
    try (Store store = open()) {
      assertEquals(
          Optional.of(new VisitState(Phase.PARKED, Stay.SEASON, Surface.SOFT, LAID, false, 77)),
          store.kept().visit(77));
    }
  }

  @Test
  void alarmsAreKeptAsTheyWere() {
    AlarmMemory ground =
        new AlarmMemory(true, true, false, 1L << 60, -1, 3_600_000_000_001L, -1, false, 4);
    AlarmMemory sensor = new AlarmMemory(false, false, true, 0, 5, -1, 0, true, 0);
    try (Store store = open()) {
      assertEquals(Map.of(), store.kept().alarms());
      store.kept().keepAlarms(Map.of("ground", ground, "sensor-1", sensor));
    }
    try (Store store = open()) {
      assertEquals(Map.of("ground", ground, "sensor-1", sensor), store.kept().alarms());
    }
  }

  @Test
  void textsAreKeptByTopicAndForgotten() {
    String text = "{\"q\":\"'\\u0000\u20ac\"}";
    try (Store store = open()) {
      store.kept().keepText("alarm", "ground", text);
      store.kept().keepText("alarm", "fridge-galley", "b");
      store.kept().forgetText("alarm", "fridge-galley");
      assertThrows(
          IllegalArgumentException.class,
          () -> store.kept().keepText("alarm", "x", "x".repeat(Kept.LONGEST + 1)));
    }
    try (Store store = open()) {
      assertEquals(Optional.of(text), store.kept().text("alarm", "ground"));
      assertEquals(Map.of("ground", text), store.kept().texts("alarm"));
    }
  }

  @Test
  void whatHasNotChangedIsNotWrittenAgain() throws IOException {
    VisitState state = VisitState.atStart(0);
    try (Store store = open()) {
      store.kept().keepVisit(state);
      long bytes = bytes();
      for (int i = 0; i < 1000; i++) {
        assertEquals(new Written.Done(), store.kept().keepVisit(state));
      }
      assertEquals(bytes, bytes());
      store.kept().keepVisit(VisitState.atStart(0));
      assertEquals(bytes, bytes());
    }
  }

  private long bytes() throws IOException {
    try (Stream<Path> files = Files.list(directory)) {
      return files.mapToLong(file -> file.toFile().length()).sum();
    }
  }

  @Test
  void theSiteBookKnowsASiteWhenItIsAskedAgain() {
    SiteVisit first = visit(1, "Alder Bend");
    try (Store store = open()) {
      assertEquals(1, store.siteBook().nextNumber());
      store.siteBook().keep(first);
      store.siteBook().keep(visit(2, "Elsewhere"));
      store.siteBook().keep(visit(3, " alder bend "));
    }
    try (Store store = open()) {
      assertEquals(4, store.siteBook().nextNumber());
      assertEquals(
          List.of(first, visit(3, " alder bend ")), store.siteBook().visitsTo("ALDER BEND"));
      store.siteBook().forget(2);
      assertEquals(2, store.siteBook().visits().size());
    }
  }

  private static SiteVisit visit(long number, String site) {
    Lean unknown = new Lean(Double.NaN, Double.NaN);
    return new SiteVisit(
        number,
        site,
        1_700_000_000L,
        0,
        Stay.STAY,
        Surface.GRASS,
        Lean.ofDegrees(2.1, -0.8),
        unknown,
        unknown,
        "one block under each right wheel",
        "Right side up 38 mm: 1 block under each wheel");
  }

  @Test
  void aBookOfBeforePlansWereKeptIsReadWithoutThem() {
    try (Store store = open()) {
      store.siteBook().keep(visit(1, "Alder Bend"));
      String now = store.kept().text("site-visit", "0000000001").orElseThrow();
      String old = now.replaceFirst(",\"headline\":\"[^\"]*\"", "");
      assertNotEquals(now, old);
      store.kept().keepText("site-visit", "0000000001", old);
    }
    try (Store store = open()) {
      SiteVisit read = store.siteBook().visits().get(0);
      assertEquals("one block under each right wheel", read.laid());
      assertEquals("", read.plan());
    }
  }

  @Test
  void theSiteBookForgetsTheOldestVisits() {
    try (Store store = Store.inMemory(0)) {
      for (int i = 1; i <= SiteBook.MOST_VISITS + 5; i++) {
        store.siteBook().keep(visit(i, "x"));
      }
      List<SiteVisit> visits = store.siteBook().visits();
      assertEquals(SiteBook.MOST_VISITS, visits.size());
      assertEquals(6, visits.get(0).number());
    }
  }

  @Test
  void whatDoesNotFitASiteVisitIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> visit(0, "x"));
    assertThrows(IllegalArgumentException.class, () -> visit(1, "x".repeat(81)));
  }

  @Test
  void aTextThatIsNotARecordIsNone() {
    try (Store store = open()) {
      for (String text :
          List.of("", "{", "[]", "{\"x\":1}", "{\"x\":\"1\",\"y\":0,\"z\":1}", "3")) {
        store.kept().keepText("zero", "floor", text);
        assertEquals(Optional.empty(), store.kept().zero("floor"), text);
      }
      store.kept().keepText("zero", "floor", "[".repeat(10_000));
      assertTrue(store.kept().zero("floor").isEmpty());
    }
  }
}
