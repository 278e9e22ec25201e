package io.pitchwatch.store;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;

/** What is kept in a store that another process may be writing: only read. */
public final class KeptArchive {

  private KeptArchive() {}

  /** What came of reading. */
  public sealed interface Opening {

    /** It was read: copies in memory, of all and of the book of visits. */
    record Read(Kept kept, SiteBook sites) implements Opening {}

    /** Why it was not, for people. */
    record Refused(String why) implements Opening {}
  }

  /**
   * Reads what is kept in a store's directory.
   *
   * @param directory where the store's files are
   */
  public static Opening read(Path directory) {
    Path file = directory.toAbsolutePath().resolve(Store.KEPT);
    if (!Files.isRegularFile(file)) {
      return new Opening.Refused("no store in " + directory + ": " + file + " is not there");
    }
    NativeLibrary.useIfIn(file.resolveSibling(Store.NATIVE));
    KeptFile copy = KeptFile.inMemory();
    try (Connection open = Sql.openToRead(file.toString())) {
      KeptFile.SCHEMA.check(open);
      KeptFile.eachRow(
          open,
          (row, sound) -> {
            if (sound) {
              copy.set(row.topic(), row.name(), row.value());
            }
          });
      return new Opening.Read(new Kept(copy), new SiteBook(copy));
    } catch (SQLException e) {
      return new Opening.Refused(file + " cannot be read: " + Failure.of(e).words());
    } finally {
      // What was read stands in memory, and is not written again.
      copy.abandon();
    }
  }
}
