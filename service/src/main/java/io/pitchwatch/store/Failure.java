package io.pitchwatch.store;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/**
 * Why SQLite refused (result codes of sqlite.org/rescode.html).
 *
 * @param damaged whether the file itself is wrong
 * @param words for people
 */
record Failure(boolean damaged, String words) {

  private static final int PRIMARY = 0xff;

  /**
   * Why a file was refused. One byte of a header makes SQLite take a file for one of a later
   * version that may only be read (sqlite.org/fileformat2.html, 1.3.3): where the disk allows
   * writing, that is damage.
   */
  static Failure of(SQLException e, Path file) {
    boolean readOnly =
        e instanceof SQLiteException sqlite
            && sqlite.getResultCode() == SQLiteErrorCode.SQLITE_READONLY;
    return readOnly && Files.isWritable(file)
        ? new Failure(true, "its header says that it may only be read")
        : of(e);
  }

  static Failure of(SQLException e) {
    if (!(e instanceof SQLiteException sqlite)) {
      return new Failure(e instanceof DamageException, String.valueOf(e.getMessage()));
    }
    if (sqlite.getResultCode() == SQLiteErrorCode.SQLITE_IOERR_SHORT_READ) {
      return new Failure(true, "it ends too soon");
    }
    return switch (sqlite.getResultCode().code & PRIMARY) {
      case 11 -> new Failure(true, "its contents contradict each other");
      case 26 -> new Failure(true, "it is not a database");
      // Our statements are the same for every file: one that they do not fit has other tables.
      case 1, 17, 19, 20 -> new Failure(true, "its tables are not what they were");
      case 13 -> new Failure(false, "the disk is full");
      case 8 -> new Failure(false, "it may only be read");
      case 10 -> new Failure(false, "the disk reports an error");
      case 14 -> new Failure(false, "it cannot be opened or made");
      case 5, 6 -> new Failure(false, "another process holds it");
      default -> new Failure(false, String.valueOf(e.getMessage()));
    };
  }

  /** A file that SQLite can read, and that is wrong all the same. */
  static final class DamageException extends SQLException {
    private static final long serialVersionUID = 1;

    DamageException(String words) {
      super(words);
    }
  }
}
