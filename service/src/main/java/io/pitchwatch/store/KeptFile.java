package io.pitchwatch.store;

import io.pitchwatch.store.Schema.Durability;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.LongSupplier;
import java.util.function.Supplier;
import java.util.zip.CRC32;

/**
 * Texts by topic and name, each with its checksum; all of them in memory too, so that a file that
 * breaks is written anew, and a disk that refuses is tried again with every write.
 */
final class KeptFile implements AutoCloseable {

  static final Schema SCHEMA =
      new Schema(
          Durability.MOVED,
          1024,
          true,
          List.of(
              List.of(
                  "CREATE TABLE kept (topic TEXT NOT NULL, name TEXT NOT NULL, value TEXT NOT NULL,"
                      + " crc INTEGER NOT NULL, PRIMARY KEY (topic, name)) STRICT, WITHOUT"
                      + " ROWID")));

  private record Key(String topic, String name) {}

  private final Database database;
  private final NavigableMap<String, NavigableMap<String, String>> topics = new TreeMap<>();
  private final Set<Key> unwritten = new LinkedHashSet<>();
  private Scribe scribe = Supplier::get;

  private KeptFile(Database database) {
    this.database = database;
  }

  /** As {@link Database#open}; what can be read of a file that is given up is kept. */
  static KeptFile open(Path file, LongSupplier wallSeconds, List<Trouble> troubles) {
    KeptCopy rescued = new KeptCopy();
    KeptFile kept = new KeptFile(Database.open(file, SCHEMA, rescued, wallSeconds, troubles));
    rescued.rows().forEach(row -> kept.set(row.topic(), row.name(), row.value()));
    kept.load(troubles);
    if (!kept.unwritten.isEmpty()) {
      kept.write();
    }
    return kept;
  }

  static KeptFile inMemory() {
    return new KeptFile(Database.inMemory(SCHEMA));
  }

  private void load(List<Trouble> troubles) {
    List<Key> damaged = new ArrayList<>();
    Optional<Trouble> trouble =
        database.read(
            open ->
                eachRow(
                    open,
                    (row, sound) -> {
                      if (sound) {
                        topic(row.topic()).put(row.name(), row.value());
                      } else {
                        damaged.add(new Key(row.topic(), row.name()));
                      }
                    }));
    trouble.filter(it -> !troubles.contains(it)).ifPresent(troubles::add);
    for (Key key : damaged) {
      troubles.add(new Trouble.Dropped(database.file(), key.topic() + " " + key.name()));
      unwritten.add(key);
    }
  }

  /** One row of the file. */
  record Row(String topic, String name, String value) {}

  /** Gets each row, and whether its checksum fits. */
  interface RowSink {
    void accept(Row row, boolean sound);
  }

  static void eachRow(Connection open, RowSink sink) throws SQLException {
    try (PreparedStatement statement =
            open.prepareStatement("SELECT topic, name, value, crc FROM kept");
        ResultSet result = statement.executeQuery()) {
      while (result.next()) {
        Row row = new Row(result.getString(1), result.getString(2), result.getString(3));
        sink.accept(row, result.getLong(4) == checksum(row));
      }
    }
  }

  private static long checksum(Row row) {
    CRC32 crc = new CRC32();
    String all = row.topic() + "\n" + row.name() + "\n" + row.value();
    crc.update(all.getBytes(StandardCharsets.UTF_8));
    return crc.getValue();
  }

  private NavigableMap<String, String> topic(String topic) {
    return topics.computeIfAbsent(topic, it -> new TreeMap<>());
  }

  Optional<String> get(String topic, String name) {
    return Optional.ofNullable(topic(topic).get(name));
  }

  /** All texts of the topic by name. */
  NavigableMap<String, String> all(String topic) {
    return Collections.unmodifiableNavigableMap(topic(topic));
  }

  /** Keeps a text; one that is kept already costs nothing. */
  Written put(String topic, String name, String value) {
    if (value.equals(topic(topic).get(name)) && unwritten.isEmpty() && database.lasting()) {
      return new Written.Done();
    }
    set(topic, name, value);
    return write();
  }

  Written remove(String topic, String name) {
    unset(topic, name);
    return write();
  }

  /** Has a text written together with the next one. */
  void set(String topic, String name, String value) {
    topic(topic).put(name, value);
    unwritten.add(new Key(topic, name));
  }

  /** Has a text forgotten together with the next write. */
  void unset(String topic, String name) {
    topic(topic).remove(name);
    unwritten.add(new Key(topic, name));
  }

  /** From now on it is this one that has things written. */
  void writeBy(Scribe other) {
    scribe = other;
  }

  /** Writes what is not written yet. */
  Written write() {
    return scribe.write(this::writeNow);
  }

  private Written writeNow() {
    Written written =
        database.write(
            open -> {
              if (Sql.number(open, "SELECT count(*) FROM kept") == 0) {
                topics.forEach(
                    (topic, texts) ->
                        texts.keySet().forEach(name -> unwritten.add(new Key(topic, name))));
              }
              for (Key key : unwritten) {
                write(open, key);
              }
            });
    if (!(written instanceof Written.NotLasting)) {
      unwritten.clear();
    }
    return written;
  }

  private void write(Connection open, Key key) throws SQLException {
    String value = topic(key.topic()).get(key.name());
    String sql =
        value == null
            ? "DELETE FROM kept WHERE topic = ? AND name = ?"
            : "INSERT OR REPLACE INTO kept (topic, name, value, crc) VALUES (?, ?, ?, ?)";
    try (PreparedStatement statement = open.prepareStatement(sql)) {
      statement.setString(1, key.topic());
      statement.setString(2, key.name());
      if (value != null) {
        statement.setString(3, value);
        statement.setLong(4, checksum(new Row(key.topic(), key.name(), value)));
      }
      statement.executeUpdate();
    }
  }

  boolean hasUnwritten() {
    return !unwritten.isEmpty();
  }

  /** Closes the file and forgets what is not written yet. */
  void abandon() {
    database.close();
  }

  @Override
  public void close() {
    if (hasUnwritten()) {
      write();
    }
    database.close();
  }
}
