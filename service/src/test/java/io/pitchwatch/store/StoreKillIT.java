package io.pitchwatch.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/**
 * A process is killed in the midst of writing, again and again in the same store: what it was told
 * is kept is there. 4 kills, or 200 with {@code -Dpitchwatch.full=true}; another start with {@code
 * -Dpitchwatch.seed=N}.
 */
class StoreKillIT {

  private static final long SEED = Long.getLong("pitchwatch.seed", 1_789L);
  private static final int KILLS = Boolean.getBoolean("pitchwatch.full") ? 200 : 4;

  @TempDir Path directory;

  @Test
  @Timeout(value = 30, unit = TimeUnit.MINUTES)
  void nothingThatWasSaidToBeKeptIsLost() throws Exception {
    SplittableRandom random = new SplittableRandom(SEED);
    int minutesBefore = 0;
    for (int i = 0; i < KILLS; i++) {
      String message = "seed " + SEED + ", kill " + i;
      Said said = killedAfter(1 + random.nextInt(400), random.nextInt(3_000_000));
      assertEquals(List.of("ok", "ok"), List.of(check("kept.db"), check("history.db")), message);
      Store.Opening opening = Store.open(directory, 0, () -> 0);
      assertEquals(List.of(), opening.troubles(), message);
      try (Store store = opening.store()) {
        int twin = Integer.parseInt(store.kept().text("twin", "number").orElse("0"));
        int zero = Integer.parseInt(store.kept().zero("floor").orElseThrow().date().substring(5));
        assertTrue(
            twin >= said.zero && zero >= twin && zero <= said.zero + 1,
            message + ": " + said.zero + " was said, " + zero + " and " + twin + " are there");
        int minutes = Minutes.rows(store.history(), Resolution.MINUTE).size();
        int least = minutesBefore + said.minutes;
        assertTrue(
            minutes == least || minutes == least + 1,
            message + ": " + minutes + " minutes of " + least);
        minutesBefore = minutes;
      }
    }
  }

  /** The last numbers that the process said. */
  private record Said(int zero, int minutes) {}

  private Said killedAfter(int lines, int moreNanos) throws IOException, InterruptedException {
    Process process = StoreWriter.start(List.of(), directory, Integer.MAX_VALUE, 1);
    int zero = 0;
    int minutes = 0;
    try (BufferedReader reader = StoreWriter.lines(process)) {
      String line = reader.readLine();
      for (int i = 0; line != null; i++) {
        String[] words = line.split(" ", -1);
        assertTrue(words[0].equals("zero") || words[0].equals("minute"), line);
        zero = words[0].equals("zero") ? Integer.parseInt(words[1]) : zero;
        minutes = words[0].equals("minute") ? Integer.parseInt(words[1]) : minutes;
        if (i == lines) {
          long begin = System.nanoTime();
          while (System.nanoTime() - begin < moreNanos) {
            Thread.onSpinWait();
          }
          // Through its handle: killed through itself, its last words would be thrown away.
          process.toHandle().destroyForcibly();
        }
        line = reader.readLine();
      }
    } finally {
      process.destroyForcibly().waitFor();
    }
    return new Said(zero, minutes);
  }

  private String check(String file) throws SQLException {
    try (Connection connection = Sql.open(directory.resolve(file) + "")) {
      return Sql.text(connection, "PRAGMA integrity_check");
    }
  }
}
