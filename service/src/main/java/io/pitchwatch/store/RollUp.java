package io.pitchwatch.store;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.util.Set;

/**
 * Sums minutes up into hours and days. A row holds the minutes of one run whose ends lie in one
 * hour (or day) of that run: the wall clock, which may jump, decides nothing.
 */
final class RollUp {

  private static final String COLUMNS =
      "run, at_s, wall_s, last_minute, minutes, known, roll, roll_least, roll_most, pitch,"
          + " pitch_least, pitch_most, uncertainty, spread, temperature, marks";

  private RollUp() {}

  /** The first second of the row that a minute belongs to which ends at the given second. */
  static long begin(Resolution resolution, long atSeconds) {
    return Math.max(0, atSeconds - 1) / resolution.seconds() * resolution.seconds();
  }

  /**
   * Writes the rows that are complete: those of earlier runs, and those of this one that end before
   * the row that the given second lies in.
   */
  static void complete(Connection open, Resolution resolution, long run, long atSeconds)
      throws SQLException {
    String sql =
        "INSERT INTO "
            + HistoryTables.table(resolution)
            + " ("
            + COLUMNS
            + ") SELECT "
            + COLUMNS
            + " FROM ("
            + remaining(resolution)
            + ") WHERE run < ? OR at_s < ? ORDER BY last_minute";
    try (PreparedStatement statement = open.prepareStatement(sql)) {
      statement.setLong(1, run);
      statement.setLong(2, begin(resolution, atSeconds));
      statement.executeUpdate();
    }
  }

  /** Forgets the oldest rows of the resolution. */
  static void forgetOld(Connection open, Resolution resolution) throws SQLException {
    String table = HistoryTables.table(resolution);
    Sql.run(
        open,
        "DELETE FROM "
            + table
            + " WHERE seq <= (SELECT max(seq) FROM "
            + table
            + ") - "
            + resolution.mostRows());
  }

  /** All rows of the resolution, the incomplete last one too, as {@code seq} and the columns. */
  static String rows(Resolution resolution) {
    if (resolution == Resolution.MINUTE) {
      return "SELECT seq, run, at_s, wall_s, seq AS last_minute, 1 AS minutes,"
          + " roll IS NOT NULL AS known, roll, roll AS roll_least, roll AS roll_most, pitch,"
          + " pitch AS pitch_least, pitch AS pitch_most, uncertainty, spread, temperature, marks"
          + " FROM minute";
    }
    String table = HistoryTables.table(resolution);
    return "SELECT seq, "
        + COLUMNS
        + " FROM "
        + table
        + " UNION ALL SELECT coalesce((SELECT max(seq) FROM "
        + table
        + "), 0) + row_number() OVER (ORDER BY last_minute) AS seq, "
        + COLUMNS
        + " FROM ("
        + remaining(resolution)
        + ")";
  }

  /** The minutes that no row holds yet, summed up. */
  private static String remaining(Resolution resolution) {
    String begin = "max(0, at_s - 1) / " + resolution.seconds() + " * " + resolution.seconds();
    return "SELECT sums.*, (SELECT wall_s FROM minute WHERE seq = first_minute) AS wall_s FROM ("
        + "SELECT run, "
        + begin
        + " AS at_s, min(seq) AS first_minute, max(seq) AS last_minute, count(*) AS minutes,"
        + " count(roll) AS known, "
        + angle("roll")
        + ", "
        + angle("pitch")
        + ", "
        + whole("sqrt(avg(uncertainty * uncertainty))", "uncertainty")
        + ", "
        + whole("sqrt(avg(spread * spread))", "spread")
        + ", "
        + whole("avg(temperature)", "temperature")
        + ", "
        + marks()
        + " AS marks FROM minute WHERE seq > coalesce((SELECT max(last_minute) FROM "
        + HistoryTables.table(resolution)
        + "), 0) GROUP BY run, "
        + begin
        + ") AS sums";
  }

  private static String angle(String column) {
    return whole("avg(" + column + ")", column)
        + ", min("
        + column
        + ") AS "
        + column
        + "_least"
        + ", max("
        + column
        + ") AS "
        + column
        + "_most";
  }

  private static String whole(String expression, String name) {
    return "CAST(round(" + expression + ") AS INTEGER) AS " + name;
  }

  /** SQLite has no sum by bits; each bit is in the greatest of what is masked to it. */
  private static String marks() {
    StringBuilder sum = new StringBuilder();
    for (Mark mark : Mark.values()) {
      sum.append(sum.isEmpty() ? "" : " | ")
          .append("max(marks & ")
          .append(Mark.bits(Set.of(mark)))
          .append(")");
    }
    return sum.toString();
  }
}
