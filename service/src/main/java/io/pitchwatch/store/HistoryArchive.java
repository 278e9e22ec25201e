package io.pitchwatch.store;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Optional;
import java.util.function.Consumer;

/** The history of a store that another process may be writing: only read, never changed. */
public final class HistoryArchive implements HistorySource, AutoCloseable {

  private final Connection open;

  private HistoryArchive(Connection open) {
    this.open = open;
  }

  /** What came of opening. */
  public sealed interface Opening {

    /** It can be read. */
    record Opened(HistoryArchive archive) implements Opening {}

    /** Why it cannot, for people. */
    record Refused(String why) implements Opening {}
  }

  /**
   * Opens the history in a store's directory.
   *
   * @param directory where the store's files are
   */
  public static Opening open(Path directory) {
    Path file = directory.toAbsolutePath().resolve(Store.HISTORY);
    if (!Files.isRegularFile(file)) {
      return new Opening.Refused("no history in " + directory + ": " + file + " is not there");
    }
    NativeLibrary.useIfIn(directory.toAbsolutePath().resolve(Store.NATIVE));
    try {
      Connection open = Sql.openToRead(file.toString());
      HistoryTables.SCHEMA.check(open);
      return new Opening.Opened(new HistoryArchive(open));
    } catch (SQLException e) {
      return new Opening.Refused(file + " cannot be read: " + Failure.of(e).words());
    }
  }

  @Override
  public Optional<String> rows(HistoryQuery query, Consumer<HistoryRow> sink) {
    return read(() -> HistoryRows.each(open, query, sink));
  }

  @Override
  public Optional<String> events(HistoryQuery query, Consumer<HistoryEvent> sink) {
    return read(() -> HistoryRows.eachEvent(open, query, sink));
  }

  /** The label of the last minute; empty where there is none, or it cannot be read. */
  public Optional<Instant> lastLabel() {
    try {
      long seconds =
          Sql.number(
              open, "SELECT coalesce((SELECT wall_s FROM minute ORDER BY seq DESC LIMIT 1), 0)");
      return seconds == 0 ? Optional.empty() : Optional.of(Instant.ofEpochSecond(seconds));
    } catch (SQLException e) {
      // Reading the rows will say why.
      return Optional.empty();
    }
  }

  private interface Reading {
    void run() throws SQLException;
  }

  private static Optional<String> read(Reading reading) {
    try {
      reading.run();
      return Optional.empty();
    } catch (SQLException e) {
      return Optional.of(Failure.of(e).words());
    }
  }

  @Override
  public void close() {
    try {
      open.close();
    } catch (SQLException e) {
      // It was only read; there is nothing to lose.
      return;
    }
  }
}
