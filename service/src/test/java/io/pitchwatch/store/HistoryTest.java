package io.pitchwatch.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.pitchwatch.settling.MinuteValue;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class HistoryTest {

  private static final double HALF_MICRORADIAN = 0.5e-6;

  @TempDir Path directory;

  private Store open() {
    Store.Opening opening = Store.open(directory, 0, () -> 0);
    assertEquals(List.of(), opening.troubles());
    return opening.store();
  }

  private static void add(History history, int from, int to) {
    for (int i = from; i <= to; i++) {
      history.add(Minutes.numbered(i));
    }
  }

  @Test
  void aMinuteIsThereWhenItIsSaidToBe() {
    Store store = open();
    assertEquals(new Written.Done(), store.history().add(Minutes.numbered(1)));
    store.history().add(Minutes.numbered(2));
    assertEquals(2, Minutes.rows(store.history(), Resolution.MINUTE).size());
    store.abandon();
    try (Store again = open()) {
      assertEquals(2, Minutes.rows(again.history(), Resolution.MINUTE).size());
      assertEquals(2, again.history().run());
    }
  }

  @Test
  void anAlertIsWrittenWithoutWaitingForItsMinuteToEnd() {
    Store store = open();
    HistoryEvent event = new HistoryEvent(30_000_000_000L, 0, 5, "raised", "ground", "Sinking.");
    assertEquals(new Written.Done(), store.history().note(event));
    store.abandon();
    try (Store again = open()) {
      List<HistoryEvent> events = new ArrayList<>();
      again.history().eachEvent(HistoryQuery.all(Resolution.MINUTE), events::add);
      assertEquals(List.of("Sinking."), events.stream().map(HistoryEvent::text).toList());
    }
  }

  /** Such pages were written when minutes were kept six at a time. */
  @Test
  void anOlderFileWithLargerPagesIsGoneOnWith() throws Exception {
    Schema now = HistoryTables.SCHEMA;
    Schema older = new Schema(now.durability(), 1024, now.checkWhole(), now.versions());
    try (var file = Sql.open(directory.resolve("history.db") + "")) {
      older.prepare(file);
      Sql.run(
          file,
          "INSERT INTO minute (run, at_s, wall_s, roll, pitch, marks) VALUES (1, 60, 60, 7, 8, 0)");
    }
    try (Store store = open()) {
      add(store.history(), 1, 70);
      assertEquals(71, Minutes.rows(store.history(), Resolution.MINUTE).size());
      assertEquals(2, store.history().run());
    }
    try (var file = Sql.open(directory.resolve("history.db") + "")) {
      assertEquals(1024, Sql.number(file, "PRAGMA page_size"));
    }
  }

  @Test
  void aMinuteComesBackAsItWas() {
    Minute minute =
        new Minute(
            Minutes.NANOS,
            1_800_000_000L,
            0.012345678,
            -0.02,
            1e-4,
            Double.NaN,
            -7.25,
            Set.of(Mark.MOVED, Mark.ALERT));
    try (Store store = Store.inMemory(0)) {
      store.history().add(minute);
      store.history().flush();
      HistoryRow row = Minutes.rows(store.history(), Resolution.MINUTE).get(0);
      assertEquals(60, row.atSeconds());
      assertEquals(1_800_000_000L, row.wallSeconds());
      assertEquals(0.012345678, row.roll().meanRad(), HALF_MICRORADIAN);
      assertEquals(-0.02, row.pitch().mostRad(), HALF_MICRORADIAN);
      assertTrue(Double.isNaN(row.spreadRad()));
      assertEquals(-7.25, row.temperatureC());
      assertEquals(minute.marks(), row.marks());
      assertEquals(1, row.known());
    }
  }

  @Test
  void aMinuteOfReadingsIsMarkedByWhatItWas() {
    MinuteValue still = new MinuteValue(7, 0.01, 0.02, 1e-4, 2e-4, 20, 0.9, false);
    Minute minute = Minute.of(still, 5, Set.of(Mark.ALERT));
    assertEquals(new Minute(7, 5, 0.01, 0.02, 1e-4, 2e-4, 20, Set.of(Mark.ALERT)), minute);
    MinuteValue ride = new MinuteValue(7, Double.NaN, Double.NaN, 1, 1, 20, 0, true);
    assertEquals(Set.of(Mark.MOVED, Mark.RESTLESS), Minute.of(ride, 5, Set.of()).marks());
  }

  @Test
  void anHourSumsUpItsMinutes() {
    try (Store store = Store.inMemory(0)) {
      add(store.history(), 1, 90);
      store.history().flush();
      List<HistoryRow> hours = Minutes.rows(store.history(), Resolution.HOUR);
      assertEquals(List.of(60, 30), hours.stream().map(HistoryRow::minutes).toList());
      // 1 to 60 microradians have the mean 30.5, which is rounded; 61 to 90 have 75.5.
      assertEquals(30.5e-6, hours.get(0).roll().meanRad(), 0.6e-6);
      assertEquals(1e-6, hours.get(0).roll().leastRad());
      assertEquals(60e-6, hours.get(0).roll().mostRad());
      assertEquals(-90e-6, hours.get(1).pitch().leastRad());
      assertEquals(3600, hours.get(1).atSeconds());
      assertEquals(60L * 61, hours.get(1).wallSeconds());
      assertEquals(90, Minutes.rows(store.history(), Resolution.DAY).get(0).minutes());
    }
  }

  @Test
  void anHourThatAKillCutShortIsCompletedByTheNextRun() {
    try (Store store = open()) {
      add(store.history(), 1, 10);
    }
    try (Store store = open()) {
      add(store.history(), 1, 70);
      store.history().flush();
      List<HistoryRow> hours = Minutes.rows(store.history(), Resolution.HOUR);
      assertEquals(List.of(1L, 2L, 2L), hours.stream().map(HistoryRow::run).toList());
      assertEquals(List.of(10, 60, 10), hours.stream().map(HistoryRow::minutes).toList());
      assertEquals(List.of(1L, 2L, 3L), hours.stream().map(HistoryRow::number).toList());
    }
  }

  @Test
  void clockJumpsNeitherLoseNorReorder() {
    long tenYears = 10 * 31_557_600L;
    long[] jumps = {0, tenYears, -tenYears, 0, -2 * tenYears};
    try (Store store = Store.inMemory(0)) {
      for (int i = 1; i <= 300; i++) {
        Minute minute = Minutes.numbered(i);
        store
            .history()
            .add(
                new Minute(
                    minute.atNanos(),
                    1_800_000_000L + 60L * i + jumps[i / 61],
                    minute.rollRad(),
                    minute.pitchRad(),
                    0,
                    0,
                    0,
                    Set.of()));
      }
      assertEquals(
          LongStream.rangeClosed(1, 300).map(i -> 60 * i).boxed().toList(),
          Minutes.rows(store.history(), Resolution.MINUTE).stream()
              .map(HistoryRow::atSeconds)
              .toList());
      assertEquals(
          List.of(60, 60, 60, 60, 60),
          Minutes.rows(store.history(), Resolution.HOUR).stream()
              .map(HistoryRow::minutes)
              .toList());
    }
  }

  @Test
  void aQueryChoosesByLabelAndTakesTheLatest() {
    try (Store store = Store.inMemory(0)) {
      add(store.history(), 1, 100);
      store.history().flush();
      HistoryQuery some = new HistoryQuery(Resolution.MINUTE, 600, 1200, 3);
      assertEquals(
          List.of(17L, 18L, 19L),
          Minutes.rows(store.history(), some).stream().map(HistoryRow::number).toList());
      assertThrows(
          IllegalArgumentException.class, () -> new HistoryQuery(Resolution.DAY, 0, 1, -1));
    }
  }

  @Test
  void eventsStandBetweenTheMinutes() {
    HistoryEvent event = new HistoryEvent(90 * 1_000_000_000L, 0, 5, "alert", "ground", "Sinking.");
    try (Store store = Store.inMemory(0)) {
      store.history().note(event);
      store.history().flush();
      List<HistoryEvent> events = new ArrayList<>();
      store.history().eachEvent(HistoryQuery.all(Resolution.MINUTE), events::add);
      assertEquals(
          List.of(new HistoryEvent(event.atNanos(), 1, 5, "alert", "ground", "Sinking.")), events);
    }
  }

  @Test
  void oldMinutesAreForgottenAndTheirHoursRemain() {
    int days = 43;
    try (Store store = Store.inMemory(0)) {
      add(store.history(), 1, days * 1440);
      int minutes = Minutes.rows(store.history(), Resolution.MINUTE).size();
      // They are forgotten once a day.
      assertTrue(
          minutes >= Resolution.MINUTE.mostRows() && minutes < Resolution.MINUTE.mostRows() + 1445,
          minutes + " minutes");
      List<HistoryRow> hours = Minutes.rows(store.history(), Resolution.HOUR);
      assertEquals(days * 24, hours.size());
      assertTrue(hours.stream().allMatch(hour -> hour.minutes() == 60));
      assertEquals(days, Minutes.rows(store.history(), Resolution.DAY).size());
    }
  }
}
