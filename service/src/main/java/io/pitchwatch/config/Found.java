package io.pitchwatch.config;

import java.time.temporal.Temporal;
import org.tomlj.TomlArray;
import org.tomlj.TomlTable;

/** A value of the file in a few words, so that a fault can say what stands there. */
final class Found {

  private static final int LONGEST = 60;

  private Found() {}

  static String words(Object value) {
    if (value instanceof String text) {
      return quoted(text);
    }
    if (value instanceof TomlArray) {
      return "an array";
    }
    if (value instanceof TomlTable) {
      return "a table";
    }
    if (value instanceof Temporal) {
      return value + ", a date or time";
    }
    return value instanceof Number ? value + ", a bare number" : String.valueOf(value);
  }

  /** A key as the file may write it: bare where it can be. */
  static String key(String key) {
    return key.matches("[A-Za-z0-9_-]{1,60}") ? key : quoted(key);
  }

  /** The text in quotes on one line, cut where it is long. */
  static String quoted(String text) {
    StringBuilder line = new StringBuilder("\"");
    text.codePoints().limit(LONGEST).forEach(point -> append(line, point));
    return line.append(text.codePointCount(0, text.length()) > LONGEST ? "…\"" : "\"").toString();
  }

  private static void append(StringBuilder line, int point) {
    if (Character.isISOControl(point) || Character.getType(point) == Character.FORMAT) {
      line.append(String.format("\\u%04X", point));
    } else {
      line.appendCodePoint(point);
    }
  }
}
