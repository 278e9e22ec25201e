package io.pitchwatch.store;

import io.pitchwatch.store.Failure.DamageException;
import io.pitchwatch.store.Trouble.NotLasting;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import java.util.function.LongSupplier;
import org.jspecify.annotations.Nullable;

/**
 * One SQLite file behind one connection. A damaged file is set aside and begun anew; a file that
 * cannot be written is stood in for by one in memory. Not thread-safe.
 */
final class Database implements AutoCloseable {

  private static final String MEMORY = ":memory:";

  /** Statements to be done together or not at all. */
  interface Work {
    void on(Connection connection) throws SQLException;
  }

  private final Path file;
  private final Schema schema;
  private final Rescue rescue;
  private final LongSupplier wallSeconds;
  private @Nullable Connection connection;
  private @Nullable NotLasting notLasting;

  private Database(Path file, Schema schema, Rescue rescue, LongSupplier wallSeconds) {
    this.file = file;
    this.schema = schema;
    this.rescue = rescue;
    this.wallSeconds = wallSeconds;
  }

  /**
   * Opens the file, or what stands in for it.
   *
   * @param file absolute
   * @param rescue is shown a file that is damaged or cannot be written before it is given up
   * @param wallSeconds seconds since 1970, a label
   * @param troubles gets what went wrong
   */
  static Database open(
      Path file, Schema schema, Rescue rescue, LongSupplier wallSeconds, List<Trouble> troubles) {
    Database database = new Database(file, schema, rescue, wallSeconds);
    try {
      database.connect();
    } catch (SQLException e) {
      database.recover(Failure.of(e, file)).ifPresent(troubles::add);
    }
    return database;
  }

  /** A database in memory that is meant to be there. */
  static Database inMemory(Schema schema) {
    Path nowhere = Path.of(MEMORY);
    Database database = new Database(nowhere, schema, file -> {}, () -> 0);
    try {
      database.use(MEMORY);
    } catch (SQLException e) {
      database.notLasting = new NotLasting(nowhere, Failure.of(e).words());
    }
    return database;
  }

  /** Saves what can be read from a file before it is given up. */
  interface Rescue {
    void from(Path file);
  }

  Path file() {
    return file;
  }

  /** Whether what is written reaches the disk. */
  boolean lasting() {
    return notLasting == null;
  }

  /** Does the work in one transaction; after a failure nothing of it is done. */
  Written write(Work work) {
    Optional<Trouble> trouble = attempt(work, true);
    if (trouble.isPresent() && trouble.get() instanceof Trouble.SetAside aside) {
      return attempt(work, true).isEmpty() && lasting()
          ? new Written.Anew(aside)
          : new Written.NotLasting(new NotLasting(file, aside.why()));
    }
    if (trouble.isPresent() && trouble.get() instanceof NotLasting failed) {
      return new Written.NotLasting(failed);
    }
    return notLasting == null ? new Written.Done() : new Written.NotLasting(notLasting);
  }

  /** Reads; what was read before a failure has been read. */
  Optional<Trouble> read(Work work) {
    return attempt(work, false);
  }

  private Optional<Trouble> attempt(Work work, boolean together) {
    Connection open = connection;
    if (open == null) {
      return Optional.ofNullable(notLasting);
    }
    try {
      if (together) {
        Sql.run(open, "BEGIN IMMEDIATE");
      }
      work.on(open);
      if (together) {
        Sql.run(open, "COMMIT");
        settle(open);
      }
      return Optional.empty();
    } catch (SQLException e) {
      if (together) {
        rollBack(open);
      }
      Failure failure = Failure.of(e, file);
      return failure.damaged()
          ? recover(failure)
          : Optional.of(new NotLasting(file, failure.words()));
    }
  }

  /**
   * Moves what must last from the log into the file at once: a log that is damaged later looks as
   * if its end had never been written, while damage to the file is noticed.
   */
  private void settle(Connection open) {
    if (schema.durability() != Schema.Durability.MOVED) {
      return;
    }
    try {
      Sql.run(open, "PRAGMA wal_checkpoint(TRUNCATE)");
    } catch (SQLException e) {
      // It is committed, in the log; the next write moves it.
      return;
    }
  }

  /** After a commit that failed there may be nothing to roll back; then this fails, harmlessly. */
  private static void rollBack(Connection open) {
    try {
      Sql.run(open, "ROLLBACK");
    } catch (SQLException e) {
      return;
    }
  }

  /** A new file in place of a damaged one, memory in place of what cannot be written. */
  private Optional<Trouble> recover(Failure failure) {
    close();
    if (lasting()) {
      rescue.from(file);
    }
    if (failure.damaged() && lasting()) {
      try {
        Path aside = DamagedFile.setAside(file, wallSeconds.getAsLong());
        connect();
        return Optional.of(new Trouble.SetAside(file, aside, failure.words()));
      } catch (IOException | SQLException e) {
        close();
      }
    }
    NotLasting trouble = new NotLasting(file, failure.words());
    notLasting = trouble;
    try {
      use(MEMORY);
    } catch (SQLException e) {
      // Not even the library is there; reading finds nothing, writing says so.
      connection = null;
    }
    return Optional.of(trouble);
  }

  private void connect() throws SQLException {
    if (file.toString().contains("?")) {
      throw new SQLException("its path has a question mark");
    }
    try {
      Files.createDirectories(file.toAbsolutePath().getParent());
      if (Files.exists(file) && Files.size(file) == 0) {
        throw new DamageException("it was empty");
      }
    } catch (IOException e) {
      throw new SQLException("its directory cannot be made: " + e.getMessage());
    }
    use(file.toString());
  }

  private void use(String name) throws SQLException {
    Connection open = Sql.open(name);
    connection = open;
    schema.prepare(open);
  }

  /** Closes the connection; what was committed is kept whether or not this succeeds. */
  @Override
  public void close() {
    Connection open = connection;
    connection = null;
    if (open == null) {
      return;
    }
    try {
      open.close();
    } catch (SQLException e) {
      return;
    }
  }
}
