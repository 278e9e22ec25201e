package io.pitchwatch.store;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.function.Consumer;

/** Reads rows and events of history, one at a time. */
final class HistoryRows {

  private static final double PER_RADIAN = 1e6;
  private static final double PER_DEGREE_C = 100;

  private HistoryRows() {}

  static void each(Connection open, HistoryQuery query, Consumer<HistoryRow> sink)
      throws SQLException {
    String where =
        " FROM (" + RollUp.rows(query.resolution()) + ") WHERE wall_s >= ? AND wall_s < ?";
    long count;
    try (PreparedStatement counting = open.prepareStatement("SELECT count(*)" + where)) {
      bind(counting, query);
      try (ResultSet row = counting.executeQuery()) {
        count = row.next() ? row.getLong(1) : 0;
      }
    }
    try (PreparedStatement rows =
        open.prepareStatement("SELECT *" + where + " ORDER BY seq LIMIT -1 OFFSET ?")) {
      bind(rows, query);
      rows.setLong(3, Math.max(0, count - query.latest()));
      try (ResultSet row = rows.executeQuery()) {
        while (row.next()) {
          sink.accept(row(row));
        }
      }
    }
  }

  static void eachEvent(Connection open, HistoryQuery query, Consumer<HistoryEvent> sink)
      throws SQLException {
    try (PreparedStatement rows =
        open.prepareStatement(
            "SELECT at_s, run, wall_s, kind, name, text FROM event"
                + " WHERE wall_s >= ? AND wall_s < ? ORDER BY seq")) {
      bind(rows, query);
      try (ResultSet row = rows.executeQuery()) {
        while (row.next()) {
          sink.accept(
              new HistoryEvent(
                  row.getLong(1) * 1_000_000_000L,
                  row.getLong(2),
                  row.getLong(3),
                  row.getString(4),
                  row.getString(5),
                  row.getString(6)));
        }
      }
    }
  }

  private static void bind(PreparedStatement statement, HistoryQuery query) throws SQLException {
    statement.setLong(1, query.fromWallSeconds());
    statement.setLong(2, query.toWallSeconds());
  }

  private static HistoryRow row(ResultSet row) throws SQLException {
    return new HistoryRow(
        row.getLong("seq"),
        row.getLong("run"),
        row.getLong("at_s"),
        row.getLong("wall_s"),
        row.getInt("minutes"),
        row.getInt("known"),
        angle(row, "roll"),
        angle(row, "pitch"),
        figure(row, "uncertainty", PER_RADIAN),
        figure(row, "spread", PER_RADIAN),
        figure(row, "temperature", PER_DEGREE_C),
        Mark.of(row.getInt("marks")));
  }

  private static HistoryRow.Angle angle(ResultSet row, String name) throws SQLException {
    return new HistoryRow.Angle(
        figure(row, name, PER_RADIAN),
        figure(row, name + "_least", PER_RADIAN),
        figure(row, name + "_most", PER_RADIAN));
  }

  private static double figure(ResultSet row, String name, double scale) throws SQLException {
    long whole = row.getLong(name);
    return row.wasNull() ? Double.NaN : whole / scale;
  }

  /** Writes a minute of the given run. */
  static void insert(PreparedStatement statement, Minute minute, long run, long atSeconds)
      throws SQLException {
    statement.setLong(1, run);
    statement.setLong(2, atSeconds);
    statement.setLong(3, minute.wallSeconds());
    set(statement, 4, minute.rollRad(), PER_RADIAN);
    set(statement, 5, minute.pitchRad(), PER_RADIAN);
    set(statement, 6, minute.uncertaintyRad(), PER_RADIAN);
    set(statement, 7, minute.spreadRad(), PER_RADIAN);
    set(statement, 8, minute.temperatureC(), PER_DEGREE_C);
    statement.setInt(9, Mark.bits(minute.marks()));
    statement.executeUpdate();
  }

  private static void set(PreparedStatement statement, int place, double value, double scale)
      throws SQLException {
    if (Double.isFinite(value)) {
      statement.setLong(place, Math.round(value * scale));
    } else {
      statement.setNull(place, java.sql.Types.INTEGER);
    }
  }
}
