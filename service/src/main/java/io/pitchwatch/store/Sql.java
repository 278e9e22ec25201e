package io.pitchwatch.store;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;

/** Short statements without parameters. */
final class Sql {

  private Sql() {}

  static void run(Connection open, String sql) throws SQLException {
    try (Statement statement = open.createStatement()) {
      statement.execute(sql);
    }
  }

  /** The single number that a query brings; 0 where it brings none. */
  static long number(Connection open, String sql) throws SQLException {
    try (Statement statement = open.createStatement();
        ResultSet row = statement.executeQuery(sql)) {
      return row.next() ? row.getLong(1) : 0;
    }
  }

  /** The single text that a query brings; empty where it brings none. */
  static String text(Connection open, String sql) throws SQLException {
    try (Statement statement = open.createStatement();
        ResultSet row = statement.executeQuery(sql)) {
      String text = row.next() ? row.getString(1) : null;
      return text == null ? "" : text;
    }
  }
}
