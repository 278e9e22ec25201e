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

    /** It was read: a copy in memory. */
    record Read(Kept kept) implements Opening {}

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
    KeptFile copy = KeptFile.inMemory();
    try {
      eachSound(directory, row -> copy.set(row.topic(), row.name(), row.value()));
      return new Opening.Read(new Kept(copy));
    } catch (SQLException e) {
      return new Opening.Refused(file + " cannot be read: " + Failure.of(e).words());
    }
  }

  /** Gets a row whose checksum fits. */
  interface Sink {
    void accept(KeptFile.Row row);
  }

  /** Reads every sound row of the store in a directory. */
  static void eachSound(Path directory, Sink sink) throws SQLException {
    Path absolute = directory.toAbsolutePath();
    NativeLibrary.useIfIn(absolute.resolve(Store.NATIVE));
    try (Connection open = Sql.openToRead(absolute.resolve(Store.KEPT).toString())) {
      KeptFile.SCHEMA.check(open);
      KeptFile.eachRow(
          open,
          (row, sound) -> {
            if (sound) {
              sink.accept(row);
            }
          });
    }
  }
}
