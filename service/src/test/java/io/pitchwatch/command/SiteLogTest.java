package io.pitchwatch.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.pitchwatch.attitude.Lean;
import io.pitchwatch.floor.FloorState;
import io.pitchwatch.levelling.Headline;
import io.pitchwatch.mqtt.Heron;
import io.pitchwatch.mqtt.Schemas;
import io.pitchwatch.mqtt.tree.SiteDocument;
import io.pitchwatch.store.Store;
import io.pitchwatch.visit.Phase;
import io.pitchwatch.visit.Report;
import io.pitchwatch.visit.SiteReport;
import io.pitchwatch.visit.SiteVisit;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SiteLogTest {

  private static final long MINUTE = 60_000_000_000L;
  private static final Instant JUNE = Instant.parse("2026-06-01T12:00:00Z");

  @TempDir Path directory;
  private SiteReport told = SiteReport.UNNAMED;
  private long nowNanos;

  private Store open() {
    return Store.open(directory.resolve("store"), 0, JUNE::getEpochSecond).store();
  }

  private SiteLog log(Store store) {
    return new SiteLog(store.siteBook(), JUNE::plusNanos, report -> told = report);
  }

  private void stand(SiteLog log, double rollDeg, Phase phase) {
    nowNanos += MINUTE;
    log.hear(Heron.report(rollDeg, 0, phase, FloorState.STEADY, nowNanos));
  }

  private void drive(SiteLog log) {
    nowNanos += MINUTE;
    log.hear(Heron.report(0, 0, Phase.UNDER_WAY, FloorState.MOVING, nowNanos));
  }

  private void visit(SiteLog log, String name, double foundDeg) {
    stand(log, foundDeg, Phase.ARRIVING);
    assertTrue(log.name(name).isPresent());
    stand(log, 0.1, Phase.PARKED);
    stand(log, 0.5, Phase.PARKED);
    drive(log);
  }

  private static double roll(Lean lean) {
    return Math.round(lean.rollDeg() * 100) / 100.0;
  }

  @Test
  void aVisitIsRememberedWhenTheCoachComesAgain() throws Exception {
    try (Store store = open()) {
      SiteLog log = log(store);
      visit(log, "Alder Bend", 2.1);
      assertEquals("", told.name(), "the name ends with the visit");
      visit(log, "Old Quarry", 1);
      stand(log, 1.9, Phase.ARRIVING);
      log.name("alder bend");
      assertEquals("alder bend", told.name());
      assertEquals(1, told.before().size());
      SiteVisit before = told.before().get(0);
      assertEquals(2.1, roll(before.found()));
      assertEquals(0.1, roll(before.levelled()));
      assertEquals(0.4, roll(before.settled()));
      assertTrue(before.endedWallSeconds() > before.begunWallSeconds());
      assertEquals(
          List.of(), Schemas.faults("book", SiteDocument.write(told.name(), told.before())));
    }
  }

  @Test
  void aVisitGoesOnAfterARestart() {
    try (Store store = open()) {
      SiteLog log = log(store);
      stand(log, 2, Phase.ARRIVING);
      log.name("Alder Bend");
      stand(log, 0.1, Phase.PARKED);
    }
    try (Store store = open()) {
      SiteLog log = log(store);
      assertEquals("Alder Bend", told.name());
      stand(log, 0.3, Phase.PARKED);
      drive(log);
      assertEquals(1, store.siteBook().visits().size());
      assertEquals(0.2, roll(store.siteBook().visits().get(0).settled()));
    }
  }

  @Test
  void aStopAtALightIsNoVisit() {
    try (Store store = open()) {
      SiteLog log = log(store);
      for (int i = 0; i < 20; i++) {
        stand(log, 1, Phase.ARRIVING);
        drive(log);
      }
      assertEquals(List.of(), store.siteBook().visits());
      stand(log, 1, Phase.ARRIVING);
      stand(log, 0.2, Phase.PARKED);
      drive(log);
      assertEquals(1, store.siteBook().visits().size(), "parked, though nobody named it");
    }
  }

  @Test
  void underWayThereIsNoSiteToName() {
    try (Store store = open()) {
      SiteLog log = log(store);
      assertEquals(Optional.empty(), log.name("Nowhere"));
      drive(log);
      assertEquals(Optional.empty(), log.name("Nowhere"));
      assertEquals(List.of(), store.siteBook().visits());
    }
  }

  @Test
  void whatWasLaidIsWrittenDownInWords() {
    try (Store store = open()) {
      SiteLog log = log(store);
      Report parked = Heron.report(1, 0, Phase.ARRIVING, FloorState.STEADY, MINUTE);
      log.hear(Heron.with(parked, Heron.laid()));
      String laid = store.siteBook().visits().get(0).laid();
      assertEquals("rear right: 1 sheet, 2 block, with a stair of 2 block", laid);
    }
  }

  @Test
  void whatWasPlannedAndLaidStaysInTheBookWhenItIsCollected() {
    try (Store store = open()) {
      SiteLog log = log(store);
      for (Phase phase : List.of(Phase.ARRIVING, Phase.PARKED, Phase.PARKED)) {
        nowNanos += MINUTE;
        log.hear(Heron.with(Heron.report(1, 0, phase, FloorState.STEADY, nowNanos), Heron.laid()));
      }
      stand(log, 1, Phase.PARKED);
      drive(log);
      SiteVisit visit = store.siteBook().visits().get(0);
      assertEquals("rear right: 1 sheet, 2 block, with a stair of 2 block", visit.laid());
      assertEquals(Headline.of(Heron.PLANNED.plan()), visit.plan());
    }
  }

  @Test
  void anotherZeroIsNotTakenForSinking() {
    try (Store store = open()) {
      SiteLog log = log(store);
      stand(log, 2, Phase.ARRIVING);
      stand(log, 2, Phase.PARKED);
      log.setUpAnew();
      stand(log, 0, Phase.PARKED);
      stand(log, 0.1, Phase.PARKED);
      drive(log);
      assertEquals(0.1, roll(store.siteBook().visits().get(0).settled()));
    }
  }

  @Test
  void whatIsLaidOnceParkedIsWrittenDownToo() {
    try (Store store = open()) {
      SiteLog log = log(store);
      stand(log, 1, Phase.ARRIVING);
      stand(log, 1, Phase.PARKED);
      stand(log, 1, Phase.PARKED);
      assertEquals("", store.siteBook().visits().get(0).laid());
      nowNanos += MINUTE;
      log.hear(
          Heron.with(Heron.report(1, 0, Phase.PARKED, FloorState.STEADY, nowNanos), Heron.laid()));
      assertTrue(store.siteBook().visits().get(0).laid().startsWith("rear right"));
    }
  }

  @Test
  void theCommandTellsOfEachSiteAndOfOne() {
    try (Store store = open()) {
      SiteLog log = log(store);
      visit(log, "Alder Bend", 2.1);
      visit(log, "Old Quarry", -1);
      // The service still runs: the book is read beside it.
      String all = sites();
      assertTrue(all.startsWith("Old Quarry\n  2026-06-01 to 2026-06-01, gravel: found left"), all);
      assertTrue(all.contains("Alder Bend\n"), all);
      assertTrue(all.contains("sank: right side low 0.4°"), all);
      assertTrue(all.contains("\n    planned: " + Headline.of(Heron.PLANNED.plan())), all);
      assertTrue(sites("ALDER BEND").startsWith("Alder Bend\n"), sites("ALDER BEND"));
      assertEquals("Nothing is remembered of Nowhere.\n", sites("Nowhere"));
    }
  }

  private String sites(String... more) {
    StringWriter out = new StringWriter();
    String[] arguments = {"sites", "--store", directory.resolve("store").toString()};
    List<String> all = new java.util.ArrayList<>(List.of(arguments));
    all.addAll(List.of(more));
    int exit =
        Pitchwatch.commandLine().setOut(new PrintWriter(out)).execute(all.toArray(String[]::new));
    assertEquals(ExitCode.GOOD, exit);
    return out.toString();
  }
}
