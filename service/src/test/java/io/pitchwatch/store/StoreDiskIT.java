package io.pitchwatch.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/**
 * A disk that is full, or that may only be read: the process goes on, says so, and reads what is
 * there. A disk of its own is mounted where the system lets users do so in a name space of their
 * own; elsewhere those tests are skipped, and a limit on the size of files stands in.
 */
@Timeout(value = 5, unit = TimeUnit.MINUTES)
class StoreDiskIT {

  @TempDir Path directory;

  /** So many minutes fill the smallest of these disks, with a zero kept now and then. */
  private static final int MANY = 8000;

  private static final int MINUTES_PER_ZERO = 40;

  /** What the process says until it ends by itself, which it must. */
  private static List<String> said(List<String> prefix, Path place, int most) throws Exception {
    int minutesPerZero = most == MANY ? MINUTES_PER_ZERO : 1;
    Process process = StoreWriter.start(prefix, place, most, minutesPerZero);
    try (BufferedReader reader = StoreWriter.lines(process)) {
      List<String> lines = reader.lines().toList();
      assertEquals(0, process.waitFor(), () -> "it ended badly, after " + lines);
      return lines;
    } finally {
      process.destroyForcibly();
    }
  }

  private static List<String> shell(String script) {
    return List.of("sh", "-c", script + " && exec \"$@\"", "sh");
  }

  private static List<String> withOwnMounts(String script) {
    return List.of("unshare", "-rm", "sh", "-c", script + " && exec \"$@\"", "sh");
  }

  private static void assumeOwnMounts() throws IOException, InterruptedException {
    boolean can;
    try {
      can =
          new ProcessBuilder("unshare", "-rm", "mount", "-t", "tmpfs", "tmpfs", "/mnt")
                  .start()
                  .waitFor()
              == 0;
    } catch (IOException e) {
      can = false;
    }
    assumeTrue(can, "skipped: users may not mount here");
  }

  private static long count(List<String> lines, String word) {
    return lines.stream().filter(line -> line.startsWith(word + " ")).count();
  }

  /** The last number that was said to be written. */
  private static int last(List<String> lines, String what) {
    return lines.stream()
        .filter(line -> line.startsWith(what))
        .mapToInt(line -> Integer.parseInt(line.substring(what.length())))
        .max()
        .orElseThrow();
  }

  @Test
  void aFullDiskIsToldAndTheProcessGoesOn() throws Exception {
    assumeOwnMounts();
    String disk = "mount -t tmpfs -o size=1400k tmpfs " + directory;
    List<String> lines = said(withOwnMounts(disk), directory, MANY);
    long kept = count(lines, "zero");
    assertTrue(kept > 0, () -> lines.toString());
    List<String> not = lines.stream().filter(line -> line.startsWith("not ")).toList();
    assertTrue(not.size() > 100, () -> kept + " kept, and never full: " + lines);
    assertTrue(not.stream().allMatch(line -> line.contains("the disk is full")), not.get(0));
  }

  @Test
  void aDiskThatIsFullFromTheBeginningIsTold() throws Exception {
    assumeOwnMounts();
    String disk =
        "mount -t tmpfs -o size=100k tmpfs "
            + directory
            + " && { head -c 200k /dev/zero > "
            + directory
            + "/other 2>/dev/null || true; }";
    List<String> lines = said(withOwnMounts(disk), directory, 20);
    assertEquals(2, count(lines, "trouble"), lines::toString);
    assertEquals(40, count(lines, "not"), lines::toString);
  }

  @Test
  void aDiskThatMayOnlyBeReadStillGivesItsZero() throws Exception {
    assumeOwnMounts();
    assertEquals(7, count(said(List.of(), directory, 7), "zero"));
    String readOnly =
        "mount --bind " + directory + " " + directory + " && mount -o remount,bind,ro " + directory;
    List<String> lines = said(withOwnMounts(readOnly), directory, 20);
    assertEquals(2, count(lines, "trouble"), lines::toString);
    assertTrue(lines.get(0).contains("cannot be written"), lines.get(0));
    assertEquals(40, count(lines, "not"), lines::toString);
    try (Store store = Store.open(directory, 0, () -> 0).store()) {
      assertEquals(Optional.of(StoreWriter.zero(7)), store.kept().zero("floor"), "untouched");
    }
  }

  @Test
  void aLimitOnTheSizeOfFilesIsToldAndLosesNothingThatWasKept() throws Exception {
    StoreWriter.start(List.of(), directory, 1, 1).waitFor();
    // In units of 512 bytes; the library is in its place already, and larger.
    List<String> lines = said(shell("ulimit -f 300"), directory, MANY);
    assertTrue(count(lines, "not") > 0, "never at the limit");
    int zero = last(lines, "zero ");
    int minutes = last(lines, "minute ");
    assertTrue(zero > minutes, "zeros are kept when minutes no longer are: " + zero);
    Store.Opening opening = Store.open(directory, 0, () -> 0);
    assertEquals(List.of(), opening.troubles());
    try (Store store = opening.store()) {
      assertTrue(Minutes.rows(store.history(), Resolution.MINUTE).size() >= minutes);
      assertEquals(Optional.of(StoreWriter.zero(zero)), store.kept().zero("floor"));
    }
  }

  @Test
  void withoutRoomForTheLibraryTheProcessGoesOnAndSaysSo() throws Exception {
    List<String> lines = said(shell("ulimit -f 300"), directory, 20);
    assertEquals(2, count(lines, "trouble"), lines::toString);
    assertTrue(lines.get(0).contains("SQLite's library cannot be loaded"), lines.get(0));
    assertEquals(40, count(lines, "not"), lines::toString);
  }
}
