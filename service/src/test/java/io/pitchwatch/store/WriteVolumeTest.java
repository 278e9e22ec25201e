package io.pitchwatch.store;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import io.pitchwatch.coach.Stay;
import io.pitchwatch.coach.Surface;
import io.pitchwatch.visit.Laid;
import io.pitchwatch.visit.Phase;
import io.pitchwatch.visit.VisitState;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A memory card is not worn out: a busy day writes no more than 2 MB. */
class WriteVolumeTest {

  private static final long MOST_BYTES = 2_000_000;

  /** Of stay, surface or what is laid. */
  private static final int CHANGES = 8;

  @TempDir Path directory;

  @Test
  void aBusyDayWritesLessThanTwoMegabytes() throws IOException {
    assumeTrue(Files.exists(Path.of("/proc/self/io")), "skipped: no /proc/self/io");
    SplittableRandom random = new SplittableRandom(1);
    try (Store store = Store.open(directory, 0, () -> 0).store()) {
      // The fifty-first day, when rows are forgotten as fast as they come.
      live(store, random, 0, 50, false);
      long passed = written("wchar");
      long stored = written("write_bytes");
      live(store, random, 50, 51, true);
      passed = written("wchar") - passed;
      stored = written("write_bytes") - stored;
      String found = passed + " bytes passed to the system, " + stored + " to the disk";
      System.out.println("One day of the store: " + found);
      // What reaches the disk is 0 where the directory is in memory.
      assertTrue(passed > 1440 && passed < MOST_BYTES && stored < MOST_BYTES, found);
    }
  }

  /**
   * Lives some days; slowly, as the system sees it: within six minutes it has long moved to the
   * disk what was written, and writing to the same page is counted again.
   */
  private void live(Store store, SplittableRandom random, int fromDay, int toDay, boolean slowly)
      throws IOException {
    for (int minute = fromDay * 1440 + 1; minute <= toDay * 1440; minute++) {
      store.history().add(Minutes.random(random, minute * Minutes.NANOS, minute * 60L));
      if (slowly && minute % History.BATCH == 0) {
        moveToDisk();
      }
      if (minute % (1440 / CHANGES) == 0) {
        Stay stay = minute / (1440 / CHANGES) % 2 == 0 ? Stay.STAY : Stay.SEASON;
        store
            .kept()
            .keepVisit(new VisitState(Phase.PARKED, stay, Surface.SOFT, Laid.NOTHING, false, 0));
      }
    }
  }

  private void moveToDisk() throws IOException {
    for (String name : List.of("history.db-wal", "history.db")) {
      try (FileChannel channel =
          FileChannel.open(directory.resolve(name), StandardOpenOption.WRITE)) {
        channel.force(false);
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
