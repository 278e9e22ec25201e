package io.pitchwatch.store;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.util.ArrayDeque;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * The floor's lean over hours to years. Each minute is on the disk before the next begins, so that
 * a power cut takes none but the one that was not over (docs/decisions/store.md says what that
 * costs). Not thread-safe.
 */
public final class History implements HistorySource {

  /** A day of minutes waits for a disk that refuses them. */
  private static final int MOST_WAITING = 1440;

  private static final int MOST_EVENTS_WAITING = 200;
  private static final long NANOS = 1_000_000_000L;
  private static final String INSERT_MINUTE =
      "INSERT INTO minute (run, at_s, wall_s, roll, pitch, uncertainty, spread, temperature, marks)"
          + " VALUES (?,?,?,?,?,?,?,?,?)";
  private static final String INSERT_EVENT =
      "INSERT INTO event (run, at_s, wall_s, kind, name, text) VALUES (?,?,?,?,?,?)";

  private final Database database;
  private final long startNanos;
  private final long run;
  private final ArrayDeque<Minute> minutes = new ArrayDeque<>();
  private final ArrayDeque<HistoryEvent> events = new ArrayDeque<>();
  private long hourBegin = -1;
  private long dayBegin = -1;

  History(Database database, long startNanos) {
    this.database = database;
    this.startNanos = startNanos;
    long[] next = {1};
    database.read(open -> next[0] = Sql.number(open, HistoryTables.NEXT_RUN));
    run = next[0];
  }

  /** Which run of the service this is, from 1. */
  public long run() {
    return run;
  }

  /**
   * Writes a minute, not earlier than the one before, and what waits for a disk that refused it.
   *
   * @return what came of writing
   */
  public Written add(Minute minute) {
    if (minutes.size() == MOST_WAITING) {
      minutes.removeFirst();
    }
    minutes.addLast(minute);
    return flush();
  }

  /**
   * Writes an event, and what waits for a disk that refused it.
   *
   * @return what came of writing
   */
  public Written note(HistoryEvent event) {
    if (events.size() == MOST_EVENTS_WAITING) {
      events.removeFirst();
    }
    events.addLast(event);
    return flush();
  }

  /** Writes what a disk has refused so far, if anything. */
  public Written flush() {
    if (minutes.isEmpty() && events.isEmpty()) {
      return new Written.Done();
    }
    long atSeconds = minutes.isEmpty() ? 0 : atSeconds(minutes.getLast().atNanos());
    long hour = Math.max(hourBegin, RollUp.begin(Resolution.HOUR, atSeconds));
    long day = Math.max(dayBegin, RollUp.begin(Resolution.DAY, atSeconds));
    Written written =
        database.write(
            open -> {
              insert(open);
              if (hour > hourBegin) {
                RollUp.complete(open, Resolution.HOUR, run, atSeconds);
              }
              if (day > dayBegin) {
                RollUp.complete(open, Resolution.DAY, run, atSeconds);
                forgetOld(open);
              }
            });
    if (!(written instanceof Written.NotLasting) || !database.lasting()) {
      hourBegin = hour;
      dayBegin = day;
      minutes.clear();
      events.clear();
    }
    return written;
  }

  private void insert(Connection open) throws SQLException {
    try (PreparedStatement statement = open.prepareStatement(INSERT_MINUTE)) {
      for (Minute minute : minutes) {
        HistoryRows.insert(statement, minute, run, atSeconds(minute.atNanos()));
      }
    }
    if (events.isEmpty()) {
      return;
    }
    try (PreparedStatement statement = open.prepareStatement(INSERT_EVENT)) {
      for (HistoryEvent event : events) {
        statement.setLong(1, run);
        statement.setLong(2, atSeconds(event.atNanos()));
        statement.setLong(3, event.wallSeconds());
        statement.setString(4, event.kind());
        statement.setString(5, event.name());
        statement.setString(6, event.text());
        statement.executeUpdate();
      }
    }
  }

  private static void forgetOld(Connection open) throws SQLException {
    for (Resolution resolution : Resolution.values()) {
      RollUp.forgetOld(open, resolution);
    }
    Sql.run(
        open,
        "DELETE FROM event WHERE seq <= (SELECT max(seq) FROM event) - "
            + HistoryTables.MOST_EVENTS);
  }

  private long atSeconds(long atNanos) {
    return Math.round((atNanos - startNanos) / (double) NANOS);
  }

  /**
   * Brings rows in the order in which they happened; hours and days with the incomplete last one.
   *
   * @param sink gets each row; it must not write to this store
   * @return what stopped the reading half way, if anything did
   */
  public Optional<Trouble> each(HistoryQuery query, Consumer<HistoryRow> sink) {
    return database.read(open -> HistoryRows.each(open, query, sink));
  }

  /** Brings the events of the query's time in the order in which they happened. */
  public Optional<Trouble> eachEvent(HistoryQuery query, Consumer<HistoryEvent> sink) {
    return database.read(open -> HistoryRows.eachEvent(open, query, sink));
  }

  @Override
  public Optional<String> rows(HistoryQuery query, Consumer<HistoryRow> sink) {
    return each(query, sink).map(Trouble::text);
  }

  @Override
  public Optional<String> events(HistoryQuery query, Consumer<HistoryEvent> sink) {
    return eachEvent(query, sink).map(Trouble::text);
  }
}
