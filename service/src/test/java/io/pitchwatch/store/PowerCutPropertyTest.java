package io.pitchwatch.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A power cut while a minute is being written: of what changes on the disk, any sectors are there
 * and any are not. Every minute before it is then there, without a gap, and nothing is damaged. 300
 * cuts, or 5,000 with {@code -Dpitchwatch.full=true}; another start with {@code
 * -Dpitchwatch.seed=N}.
 */
class PowerCutPropertyTest {

  private static final long SEED = Long.getLong("pitchwatch.seed", 31_337L);
  private static final int CASES = Boolean.getBoolean("pitchwatch.full") ? 5_000 : 300;

  /** The least that a disk writes whole. */
  private static final int SECTOR = 512;

  @TempDir Path directory;

  /** The two files of the history as the disk holds them. */
  private static final class Disk {

    private final byte[] file;
    private final byte[] log;

    Disk(byte[] file, byte[] log) {
      this.file = file;
      this.log = log;
    }

    static Disk of(Path place) throws IOException {
      return new Disk(
          Files.readAllBytes(place.resolve("history.db")),
          Files.readAllBytes(place.resolve("history.db-wal")));
    }

    void to(Path place) throws IOException {
      Files.createDirectories(place);
      Files.deleteIfExists(place.resolve("history.db-shm"));
      Files.write(place.resolve("history.db"), file);
      Files.write(place.resolve("history.db-wal"), log);
    }
  }

  @Test
  void aCutTakesNoMinuteButTheOneThatWasBeingWritten() throws IOException {
    Path running = directory.resolve("running");
    SplittableRandom random = new SplittableRandom(SEED);
    int moved = 0;
    int taken = 0;
    try (Store store = Store.open(running, 0, () -> 0).store()) {
      store.history().add(Minutes.numbered(1));
      Disk before = Disk.of(running);
      for (int i = 2; i < CASES + 2; i++) {
        assertEquals(new Written.Done(), store.history().add(Minutes.numbered(i)));
        Disk after = Disk.of(running);
        String message = "seed " + SEED + ", minute " + i;
        Disk writing = new Disk(before.file, torn(before.log, after.log, random));
        taken += i - rows(writing, i - 1, i, message);
        if (!Arrays.equals(before.file, after.file)) {
          // The log was moved into the file, for which it was on the disk as a whole.
          moved++;
          Disk moving = new Disk(torn(before.file, after.file, random), after.log);
          rows(moving, i, i, message + ", while the log was moved into the file");
        }
        before = after;
      }
    }
    assertTrue(moved > 0 && taken > 0, moved + " times moved, " + taken + " minutes taken");
  }

  /** What is on the disk when of the sectors that change only some were written. */
  private static byte[] torn(byte[] from, byte[] to, SplittableRandom random) {
    int length =
        to.length <= from.length ? from.length : random.nextInt(from.length, to.length + 1);
    byte[] torn = new byte[length];
    System.arraycopy(from, 0, torn, 0, from.length);
    for (int begin = 0; begin < Math.min(length, to.length); begin += SECTOR) {
      if (random.nextBoolean()) {
        int count = Math.min(SECTOR, Math.min(length, to.length) - begin);
        System.arraycopy(to, begin, torn, begin, count);
      }
    }
    return torn;
  }

  /** How many minutes are there, the first of them and no others. */
  private int rows(Disk disk, int least, int most, String message) throws IOException {
    Path place = directory.resolve("cut");
    disk.to(place);
    Store.Opening opening = Store.open(place, 0, () -> 0);
    assertEquals(List.of(), opening.troubles(), message);
    try (Store store = opening.store()) {
      List<HistoryRow> rows = Minutes.rows(store.history(), Resolution.MINUTE);
      assertTrue(rows.size() >= least && rows.size() <= most, message + ": " + rows.size());
      for (int i = 0; i < rows.size(); i++) {
        assertEquals((i + 1) * 60L, rows.get(i).atSeconds(), message);
      }
      return rows.size();
    }
  }

  @Test
  void eachMinuteWaitsForTheDisk() throws Exception {
    for (Schema schema : List.of(HistoryTables.SCHEMA, KeptFile.SCHEMA)) {
      try (var open = Sql.open(directory.resolve("schema" + schema.pageBytes()) + "")) {
        schema.prepare(open);
        // 2: FULL (sqlite.org/pragma.html#pragma_synchronous).
        assertEquals(2, Sql.number(open, "PRAGMA synchronous"));
        assertEquals("wal", Sql.text(open, "PRAGMA journal_mode"));
      }
    }
  }
}
