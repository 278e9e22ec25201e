package io.pitchwatch.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.stream.Stream;

/** Sets damaged databases aside, with what belongs to them, and keeps only the last few. */
final class DamagedFile {

  private static final int KEPT = 3;
  private static final List<String> PARTS = List.of("", "-wal", "-shm");
  private static final DateTimeFormatter STAMP =
      DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH-mm-ss").withZone(ZoneOffset.UTC);

  private DamagedFile() {}

  /**
   * Renames the file.
   *
   * @param wallSeconds seconds since 1970, a label
   * @return its new name: the old one, "damaged" and the date
   */
  static Path setAside(Path file, long wallSeconds) throws IOException {
    String stamp = STAMP.format(Instant.ofEpochSecond(wallSeconds));
    Path aside = file.resolveSibling(file.getFileName() + ".damaged-" + stamp);
    for (int i = 2; Files.exists(aside); i++) {
      aside = file.resolveSibling(file.getFileName() + ".damaged-" + stamp + "-" + i);
    }
    // The log goes first: a new database must never meet the log of another.
    for (String part : List.of("-shm", "-wal", "")) {
      Path from = Path.of(file + part);
      if (Files.exists(from)) {
        Files.move(from, Path.of(aside + part));
      }
    }
    forgetOld(file, aside);
    return aside;
  }

  private static void forgetOld(Path file, Path latest) throws IOException {
    String prefix = file.getFileName() + ".damaged-";
    List<Path> old;
    try (Stream<Path> list = Files.list(file.toAbsolutePath().getParent())) {
      old =
          list.filter(it -> it.getFileName().toString().startsWith(prefix))
              .filter(it -> !it.toString().endsWith("-wal") && !it.toString().endsWith("-shm"))
              .filter(it -> !it.getFileName().equals(latest.getFileName()))
              .sorted()
              .toList();
    }
    for (Path each : old.subList(0, Math.max(0, old.size() - (KEPT - 1)))) {
      for (String part : PARTS) {
        Files.deleteIfExists(Path.of(each + part));
      }
    }
  }
}
