package io.pitchwatch.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A power cut leaves the log cut off somewhere after what the disk was made to take: history is
 * then a beginning of what was written, without a gap, and nothing is damaged. 30 cuts, or 2,000
 * with {@code -Dpitchwatch.full=true}; another start with {@code -Dpitchwatch.seed=N}.
 */
class PowerCutPropertyTest {

  private static final long SEED = Long.getLong("pitchwatch.seed", 31_337L);
  private static final int CASES = Boolean.getBoolean("pitchwatch.full") ? 2_000 : 30;

  @TempDir Path directory;

  @Test
  void aTornLogLosesTheLastBatchesAndNothingElse() throws IOException {
    Path running = directory.resolve("running");
    SplittableRandom random = new SplittableRandom(SEED);
    Disk disk = new Disk(running);
    try (Store store = Store.open(running, 0, () -> 0).store()) {
      for (int i = 0; i < CASES; i++) {
        int minute = i * History.BATCH;
        for (int j = 1; j <= History.BATCH; j++) {
          store.history().add(Minutes.numbered(minute + j));
        }
        disk.look();
        Path place = directory.resolve("cut" + i);
        StoreDamagePropertyTest.copy(running, place);
        Path log = place.resolve("history.db-wal");
        try (FileChannel channel = FileChannel.open(log, StandardOpenOption.WRITE)) {
          channel.truncate(random.nextLong(disk.taken, Files.size(log) + 1));
        }
        Files.deleteIfExists(place.resolve("history.db-shm"));
        check(place, minute + History.BATCH, "seed " + SEED + ", cut " + i);
      }
    }
  }

  /** What the disk was made to take: the whole log before any of it goes into the file. */
  private static final class Disk {

    private static final int SALTS = 16;
    private final Path file;
    private final Path log;
    private byte[] content = {};
    private byte[] salts = {};
    private long taken;

    Disk(Path place) {
      file = place.resolve("history.db");
      log = place.resolve("history.db-wal");
    }

    void look() throws IOException {
      byte[] nowContent = Files.readAllBytes(file);
      byte[] nowLog = Files.readAllBytes(log);
      // The header's salts change when the log begins anew (sqlite.org/fileformat.html, 4.1).
      byte[] nowSalts = Arrays.copyOfRange(nowLog, SALTS, SALTS + 8);
      if (!Arrays.equals(salts, nowSalts)) {
        taken = 0;
      }
      if (content.length > 0 && !Arrays.equals(content, nowContent)) {
        taken = nowLog.length;
      }
      content = nowContent;
      salts = nowSalts;
    }
  }

  private static void check(Path place, int written, String message) {
    Store.Opening opening = Store.open(place, 0, () -> 0);
    assertEquals(List.of(), opening.troubles(), message);
    try (Store store = opening.store()) {
      List<HistoryRow> rows = Minutes.rows(store.history(), Resolution.MINUTE);
      assertTrue(rows.size() % History.BATCH == 0 && rows.size() <= written, message);
      for (int i = 0; i < rows.size(); i++) {
        assertEquals((i + 1) * 60L, rows.get(i).atSeconds(), message);
      }
    }
  }
}
