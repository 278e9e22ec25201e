package io.pitchwatch.store;

import io.pitchwatch.visit.SiteVisit;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The book of visits of a store that another process may be writing: only read. */
public final class SiteArchive {

  private SiteArchive() {}

  /** What came of reading. */
  public sealed interface Opening {

    /** It was read: all visits in their order. */
    record Read(List<SiteVisit> visits) implements Opening {

      /** Copies the list. */
      public Read {
        visits = List.copyOf(visits);
      }
    }

    /** Why it was not, for people. */
    record Refused(String why) implements Opening {}
  }

  /**
   * Reads the book in a store's directory.
   *
   * @param directory where the store's files are
   */
  public static Opening read(Path directory) {
    Path file = directory.toAbsolutePath().resolve(Store.KEPT);
    if (!Files.isRegularFile(file)) {
      return new Opening.Refused("no store in " + directory + ": " + file + " is not there");
    }
    Map<String, String> texts = new TreeMap<>();
    try {
      KeptArchive.eachSound(
          directory,
          row -> {
            if (row.topic().equals(SiteBook.TOPIC)) {
              texts.put(row.name(), row.value());
            }
          });
      return new Opening.Read(SiteBook.visits(texts.values()));
    } catch (SQLException e) {
      return new Opening.Refused(file + " cannot be read: " + Failure.of(e).words());
    }
  }
}
