package io.pitchwatch.sim.scenario;

import org.jspecify.annotations.Nullable;
import org.tomlj.TomlArray;
import org.tomlj.TomlTable;

/** Says what was found in a TOML file, for messages. */
final class Found {

  private static final double LARGEST_PLAIN = 1e15;

  private Found() {}

  /** A value as its reader wrote it, or what kind of thing it is. */
  static String shown(@Nullable Object value) {
    if (value == null) {
      return "missing";
    }
    if (value instanceof String) {
      return "\"" + value + "\"";
    }
    return value instanceof TomlTable
        ? "a table"
        : value instanceof TomlArray ? "a list" : "" + value;
  }

  /** A number without a needless fraction. */
  static String plain(double value) {
    boolean whole = value == Math.rint(value) && Math.abs(value) < LARGEST_PLAIN;
    return whole ? Long.toString((long) value) : Double.toString(value);
  }

  /** Whether a list holds tables and nothing else. */
  static boolean isTables(TomlArray array) {
    return !array.isEmpty() && array.toList().stream().allMatch(TomlTable.class::isInstance);
  }
}
