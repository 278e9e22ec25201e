package io.pitchwatch.store;

import io.pitchwatch.store.Schema.Durability;
import java.util.List;

/**
 * The tables of history. Angles are whole microradians (0.00006 deg, far below any sensor), of
 * temperatures hundredths of a degree; what is not known is NULL.
 */
final class HistoryTables {

  private static final String FIGURES =
      " (seq INTEGER PRIMARY KEY, run INTEGER NOT NULL, at_s INTEGER NOT NULL,"
          + " wall_s INTEGER NOT NULL, last_minute INTEGER NOT NULL, minutes INTEGER NOT NULL,"
          + " known INTEGER NOT NULL, roll INTEGER, roll_least INTEGER, roll_most INTEGER,"
          + " pitch INTEGER, pitch_least INTEGER, pitch_most INTEGER, uncertainty INTEGER,"
          + " spread INTEGER, temperature INTEGER, marks INTEGER NOT NULL) STRICT";

  static final Schema SCHEMA =
      new Schema(
          Durability.COMMITTED,
          // A minute writes one page, and this is the smallest there is.
          512,
          false,
          List.of(
              List.of(
                  "CREATE TABLE minute (seq INTEGER PRIMARY KEY, run INTEGER NOT NULL,"
                      + " at_s INTEGER NOT NULL, wall_s INTEGER NOT NULL, roll INTEGER,"
                      + " pitch INTEGER, uncertainty INTEGER, spread INTEGER,"
                      + " temperature INTEGER, marks INTEGER NOT NULL) STRICT",
                  "CREATE TABLE hour" + FIGURES,
                  "CREATE TABLE day" + FIGURES,
                  "CREATE TABLE event (seq INTEGER PRIMARY KEY, run INTEGER NOT NULL,"
                      + " at_s INTEGER NOT NULL, wall_s INTEGER NOT NULL, kind TEXT NOT NULL,"
                      + " name TEXT NOT NULL, text TEXT NOT NULL) STRICT")));

  static final int MOST_EVENTS = 5000;

  private HistoryTables() {}

  /** Name of the table that holds the resolution. */
  static String table(Resolution resolution) {
    return switch (resolution) {
      case MINUTE -> "minute";
      case HOUR -> "hour";
      case DAY -> "day";
    };
  }

  /** The run after the last that any table knows of. */
  static final String NEXT_RUN =
      "SELECT 1 + max(run) FROM (SELECT 0 AS run UNION ALL SELECT max(run) FROM minute"
          + " UNION ALL SELECT max(run) FROM hour UNION ALL SELECT max(run) FROM day"
          + " UNION ALL SELECT max(run) FROM event)";
}
