package io.pitchwatch.store;

import io.pitchwatch.store.Failure.DamageException;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;

/**
 * What one database file holds.
 *
 * @param durability where a commit is when it is done
 * @param pageBytes size of a page: what one small commit costs
 * @param checkWhole whether the whole file is checked when it is opened; for small ones
 * @param versions the statements that lead from each version to the next, the first from nothing
 */
record Schema(
    Durability durability, int pageBytes, boolean checkWhole, List<List<String>> versions) {

  /**
   * SQLite's "application_id" of our files: "PtW" and the version, which "user_version" holds too,
   * so that a damaged version is not taken for a newer one.
   */
  static final int APPLICATION = 0x50745700;

  /** Memory for pages; the files are small, and the system has them in its own cache anyway. */
  private static final int CACHE_KIB = 128;

  private static final int BUSY_MILLIS = 2000;
  private static final int LOG_PAGES = 256;

  /**
   * Where a commit is when it is done. On the disk in either case: SQLite's FULL, since NORMAL in
   * this journal mode lets a power cut take commits (sqlite.org/pragma.html#pragma_synchronous).
   */
  enum Durability {
    /** In the file itself. */
    MOVED,
    /** In the log beside the file, which is moved into the file now and then. */
    COMMITTED
  }

  Schema {
    versions = versions.stream().map(List::copyOf).toList();
  }

  /**
   * Makes a connection ready: settings, a look at whose file it is, and the steps to this version.
   *
   * @throws DamageException if the file is damaged or not ours
   * @throws SQLException if it cannot be used for another reason
   */
  void prepare(Connection open) throws SQLException {
    Sql.run(open, "PRAGMA busy_timeout=" + BUSY_MILLIS);
    Sql.run(open, "PRAGMA page_size=" + pageBytes);
    Sql.run(open, "PRAGMA cache_size=-" + CACHE_KIB);
    Sql.run(open, "PRAGMA mmap_size=0");
    Sql.run(open, "PRAGMA temp_store=MEMORY");
    int version = checkedVersion(open);
    Sql.run(open, "PRAGMA journal_mode=WAL");
    Sql.run(open, "PRAGMA synchronous=FULL");
    Sql.run(open, "PRAGMA wal_autocheckpoint=" + LOG_PAGES);
    Sql.run(open, "PRAGMA journal_size_limit=" + LOG_PAGES * pageBytes);
    if (checkWhole && version > 0) {
      checkWhole(open);
    }
    if (version < versions.size()) {
      migrate(open, version);
    }
  }

  /**
   * Makes sure that a file, which is only read, is what it should be.
   *
   * @throws SQLException if it is not ours, damaged, or of another version
   */
  void check(Connection open) throws SQLException {
    Sql.run(open, "PRAGMA busy_timeout=" + BUSY_MILLIS);
    if (checkedVersion(open) != versions.size()) {
      throw new SQLException("an older Pitchwatch made it; start this one once");
    }
  }

  private int checkedVersion(Connection open) throws SQLException {
    long version = Sql.number(open, "PRAGMA user_version");
    boolean anew = version == 0 && Sql.number(open, "SELECT count(*) FROM sqlite_schema") == 0;
    if (!anew && Sql.number(open, "PRAGMA application_id") != APPLICATION + version) {
      throw new DamageException("it is not a database of ours");
    }
    if (version > versions.size()) {
      throw new SQLException("a newer Pitchwatch made it");
    }
    return (int) version;
  }

  private static void checkWhole(Connection open) throws SQLException {
    if (!Sql.text(open, "PRAGMA integrity_check(1)").equals("ok")) {
      throw new DamageException("its contents contradict each other");
    }
  }

  private void migrate(Connection open, int from) throws SQLException {
    Sql.run(open, "BEGIN IMMEDIATE");
    for (List<String> version : versions.subList(from, versions.size())) {
      for (String statement : version) {
        Sql.run(open, statement);
      }
    }
    Sql.run(open, "PRAGMA application_id=" + (APPLICATION + versions.size()));
    Sql.run(open, "PRAGMA user_version=" + versions.size());
    Sql.run(open, "COMMIT");
  }
}
