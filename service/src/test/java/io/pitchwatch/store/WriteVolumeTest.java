package io.pitchwatch.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import io.pitchwatch.coach.Stay;
import io.pitchwatch.coach.Surface;
import io.pitchwatch.visit.Laid;
import io.pitchwatch.visit.Phase;
import io.pitchwatch.visit.VisitState;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A memory card is not worn out: a busy day writes no more than 2 MB. */
class WriteVolumeTest {

  private static final long MOST_BYTES = 2_000_000;

  /** Of stay, surface or what is laid. */
  private static final int CHANGES = 8;

  /** Of alerts: raised, returned. */
  private static final int EVENTS = 24;

  /** The system writes whole blocks of 4 KiB, and for each its own journal. */
  private static final long MOST_BYTES_IN_BLOCKS = 30_000_000;

  @TempDir Path directory;

  @Test
  void aBusyDayWritesLessThanTwoMegabytes() throws Exception {
    busyDay(HistoryTables.SCHEMA);
  }

  @Test
  void soItDoesInAFileThatWasBegunWithLargerPages() throws Exception {
    Schema now = HistoryTables.SCHEMA;
    busyDay(new Schema(now.durability(), 1024, now.checkWhole(), now.versions()));
  }

  private void busyDay(Schema begun) throws IOException, SQLException {
    assumeTrue(Files.exists(Path.of("/proc/self/io")), "skipped: no /proc/self/io");
    fill(begun);
    SplittableRandom random = new SplittableRandom(1);
    try (Store store = Store.open(directory, 0, () -> 0).store()) {
      assertEquals(2, store.history().run());
      live(store, random, 0);
      long passed = written("wchar");
      long stored = written("write_bytes");
      live(store, random, 1);
      passed = written("wchar") - passed;
      stored = written("write_bytes") - stored;
      String found = passed + " bytes passed to the system, " + stored + " in blocks to the disk";
      System.out.println("One day, pages of " + begun.pageBytes() + " bytes: " + found);
      assertTrue(passed > 1440L * begun.pageBytes() && passed < MOST_BYTES, found);
      // 0 where the directory is in memory.
      assertTrue(stored < MOST_BYTES_IN_BLOCKS, found);
    }
  }

  /** So many minutes that from now on some are forgotten every day. */
  private void fill(Schema begun) throws SQLException {
    try (Connection open = Sql.open(directory.resolve(Store.HISTORY) + "")) {
      begun.prepare(open);
      Sql.run(
          open,
          "INSERT INTO minute (run, at_s, wall_s, roll, pitch, uncertainty, spread, temperature,"
              + " marks) WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < "
              + Resolution.MINUTE.mostRows()
              + ") SELECT 1, 60 * i, 1800000000 + 60 * i, 40000 - i % 999, i % 999 - 40000, 150,"
              + " 300, 2150, 0 FROM n");
    }
  }

  private static void live(Store store, SplittableRandom random, int day) {
    for (int minute = day * 1440 + 1; minute <= (day + 1) * 1440; minute++) {
      store
          .history()
          .add(Minutes.random(random, minute * Minutes.NANOS, 1_800_000_000L + minute * 60L));
      if (minute % (1440 / EVENTS) == 0) {
        String text = "The right side is 24 mm low; the fridge stands 0.4 deg from its limit.";
        store
            .history()
            .note(new HistoryEvent(minute * Minutes.NANOS, 0, 0, "raised", "fridge", text));
      }
      if (minute % (1440 / CHANGES) == 0) {
        Stay stay = minute / (1440 / CHANGES) % 2 == 0 ? Stay.STAY : Stay.SEASON;
        store
            .kept()
            .keepVisit(new VisitState(Phase.PARKED, stay, Surface.SOFT, Laid.NOTHING, false, 0));
      }
    }
  }

  private static long written(String counter) throws IOException {
    return Files.readAllLines(Path.of("/proc/self/io")).stream()
        .filter(line -> line.startsWith(counter + ":"))
        .mapToLong(line -> Long.parseLong(line.substring(counter.length() + 1).strip()))
        .findFirst()
        .orElseThrow();
  }
}
