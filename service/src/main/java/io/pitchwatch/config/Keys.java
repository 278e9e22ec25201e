package io.pitchwatch.config;

import io.pitchwatch.config.Reading.Asked;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.tomlj.TomlPosition;
import org.tomlj.TomlTable;

/** The keys of one table: which were asked for, which were wrong, and where they stand. */
class Keys {

  final TomlTable table;
  private final String path;
  private final String kind;
  private final int line;
  final Reading reading;
  private final Set<String> known = new LinkedHashSet<>();
  private final Set<String> faulty = new HashSet<>();

  Keys(TomlTable table, String path, int line, Reading reading) {
    this.table = table;
    this.path = path;
    this.kind = path.replaceAll("\\[\\d+]", "");
    this.line = line;
    this.reading = reading;
  }

  /** Line of the key, or of the table's head when the key is absent. */
  int line(String key) {
    TomlPosition position = table.inputPositionOf(List.of(key));
    return position == null ? line : position.line();
  }

  /** The key with the path of its table. */
  String path(String key) {
    return path.isEmpty() ? key : path + "." + key;
  }

  /** An item of the key's array; people count from 1. */
  String path(String key, int index) {
    return path(key) + "[" + (index + 1) + "]";
  }

  boolean has(String key) {
    return table.contains(List.of(key));
  }

  /** Whether the key holds a text rather than a table. */
  boolean isText(String key) {
    return table.get(List.of(key)) instanceof String;
  }

  /** Whether none of the keys has had a fault yet. */
  boolean sound(String... keys) {
    return Stream.of(keys).noneMatch(faulty::contains);
  }

  void fault(String key, String found, String allowed) {
    faulty.add(key);
    reading.faults().add(line(key), path(key), found, allowed);
  }

  /** A fault in one item of the key's array. */
  void faultInside(String key, int index, String found, String allowed) {
    faulty.add(key);
    TomlPosition position = table.getArrayOrEmpty(List.of(key)).inputPositionOf(index);
    reading.faults().add(position.line(), path(key, index), found, allowed);
  }

  /** Notes that something required is not there. */
  void missing(String key, String allowed) {
    faulty.add(key);
    reading.faults().missing(line, path(key), allowed);
  }

  /** Refuses every key that nothing asked for, naming the nearest that there is. */
  void refuseUnknown() {
    for (String key : table.keySet()) {
      if (!known.contains(key)) {
        String nearest =
            Nearest.to(key, known).map(word -> "perhaps " + word + "; here are ").orElse("");
        String allowed = nearest + String.join(", ", known);
        reading.faults().add(line(key), path(Found.key(key)), "a key not known here", allowed);
      }
    }
  }

  /**
   * The value of a key that the table may hold; null when absent, which is noted when there is no
   * default.
   */
  @Nullable Object value(String key, String allowed, String limits, @Nullable String fallback) {
    known.add(key);
    reading
        .asked()
        .put(
            kind.isEmpty() ? key : kind + "." + key,
            new Asked(limits, fallback == null ? "" : fallback));
    Object value = table.get(List.of(key));
    if (value == null && fallback == null) {
      missing(key, allowed);
    }
    return value;
  }
}
