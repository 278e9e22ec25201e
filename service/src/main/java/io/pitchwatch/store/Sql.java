package io.pitchwatch.store;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Properties;
import org.sqlite.JDBC;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteJDBCLoader;

/** Connections, and short statements without parameters. */
final class Sql {

  private Sql() {}

  /**
   * Opens a connection.
   *
   * @param name path of the file, or ":memory:"
   * @throws SQLException also if the native library cannot be loaded
   */
  static Connection open(String name) throws SQLException {
    return connect(name, new Properties());
  }

  /** Opens a file that is only read. */
  static Connection openToRead(String file) throws SQLException {
    SQLiteConfig config = new SQLiteConfig();
    config.setReadOnly(true);
    return connect(file, config.toProperties());
  }

  private static Connection connect(String name, Properties properties) throws SQLException {
    try {
      SQLiteJDBCLoader.initialize();
    } catch (Exception | LinkageError e) {
      throw new SQLException(
          "SQLite's library cannot be loaded: it needs 2 MB in the store or the temporary directory,"
              + " where programs may be run",
          e);
    }
    return JDBC.createConnection("jdbc:sqlite:" + name, properties);
  }

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
