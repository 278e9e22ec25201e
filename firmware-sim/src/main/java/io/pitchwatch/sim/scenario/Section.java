package io.pitchwatch.sim.scenario;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tomlj.TomlArray;
import org.tomlj.TomlPosition;
import org.tomlj.TomlTable;

/**
 * One table of a TOML file, read key by key. Whatever is wrong is noted and a harmless value
 * returned, so that reading goes on and every fault is found at once. {@link #finish} complains of
 * keys that nobody asked for.
 */
final class Section {

  private final String file;
  private final String path;
  private final @Nullable TomlTable table;
  private final int tableLine;
  private final List<Complaint> complaints;
  private final Set<String> known = new HashSet<>();

  Section(String file, TomlTable table, List<Complaint> complaints) {
    this(file, "", table, 0, complaints);
  }

  private Section(
      String file,
      String path,
      @Nullable TomlTable table,
      int tableLine,
      List<Complaint> complaints) {
    this.file = file;
    this.path = path;
    this.table = table;
    this.tableLine = tableLine;
    this.complaints = complaints;
  }

  /** Whether the table is there at all. */
  boolean isPresent() {
    return table != null;
  }

  /** Whether the key is there. */
  boolean has(String key) {
    return value(key) != null;
  }

  /** Whether a text stands at the key. */
  boolean isText(String key) {
    return value(key) instanceof String;
  }

  /** Whether a table stands at the key. */
  boolean isTable(String key) {
    return value(key) instanceof TomlTable;
  }

  /** Keys that someone else reads. */
  void leave(String... keys) {
    known.addAll(Arrays.asList(keys));
  }

  /** A text that must be there. */
  String text(String key) {
    return text(key, null);
  }

  /** A text; the fallback where absent, null if it must be there. */
  String text(String key, @Nullable String fallback) {
    Object value = value(key);
    if (value instanceof String text) {
      return text;
    }
    if (value != null || fallback == null) {
      complain(key, "a text in quotes");
    }
    return fallback == null ? "" : fallback;
  }

  /** One of some words; the fallback where absent, null if it must be there. */
  String choice(String key, @Nullable String fallback, List<String> allowed) {
    if (!has(key)) {
      return text(key, fallback);
    }
    String found = isText(key) ? text(key) : "";
    if (!allowed.contains(found)) {
      complain(key, String.join(" | ", allowed) + Nearest.hint(found, allowed));
      return fallback == null ? "" : fallback;
    }
    return found;
  }

  /** A list of words; empty where absent or wrong. */
  List<String> choices(String key, List<String> allowed) {
    Object value = value(key);
    if (value == null) {
      return List.of();
    }
    List<String> found = new ArrayList<>();
    if (value instanceof TomlArray array) {
      array.toList().stream().filter(allowed::contains).forEach(word -> found.add("" + word));
    }
    if (!(value instanceof TomlArray array) || array.size() != found.size()) {
      complain(key, "a list of " + String.join(" | ", allowed));
      return List.of();
    }
    return found;
  }

  /** A quantity that must be there, in the dimension's base unit; 0 if it was wrong. */
  double quantity(String key, Dimension dimension) {
    if (!has(key)) {
      complain(key, dimension.allowed());
    }
    return quantity(key, dimension, 0);
  }

  /** A quantity in the dimension's base unit; the fallback where absent or wrong. */
  double quantity(String key, Dimension dimension, double fallback) {
    Object value = value(key);
    if (value == null) {
      return fallback;
    }
    OptionalDouble parsed =
        value instanceof String text ? Quantity.parse(text, dimension) : OptionalDouble.empty();
    if (parsed.isEmpty()) {
      complain(key, dimension.allowed());
      return fallback;
    }
    return parsed.getAsDouble();
  }

  /** A quantity that may not be negative. */
  double amount(String key, Dimension dimension, double fallback) {
    double found = quantity(key, dimension, fallback);
    if (found < 0) {
      complain(key, "0 or more");
      return fallback;
    }
    return found;
  }

  /** A quantity above 0 that must be there; the stand-in if it was wrong. */
  double positive(String key, Dimension dimension, double standIn) {
    double found = has(key) ? quantity(key, dimension, standIn) : quantity(key, dimension);
    if (has(key) && found <= 0) {
      complain(key, "above 0");
    }
    return found > 0 ? found : standIn;
  }

  /** A plain number between two limits; the fallback where absent or wrong. */
  double number(String key, double fallback, double least, double most) {
    Object value = value(key);
    if (value == null) {
      return fallback;
    }
    if (value instanceof Number number
        && number.doubleValue() >= least
        && number.doubleValue() <= most) {
      return number.doubleValue();
    }
    complain(key, "a plain number from " + Found.plain(least) + " to " + Found.plain(most));
    return fallback;
  }

  /** A whole number between two limits; the fallback where absent or wrong. */
  long whole(String key, long fallback, long least, long most) {
    Object value = value(key);
    if (value == null) {
      return fallback;
    }
    if (value instanceof Long number && number >= least && number <= most) {
      return number;
    }
    complain(key, "a whole number from " + least + " to " + most);
    return fallback;
  }

  /** A yes or no; the fallback where absent or wrong. */
  boolean flag(String key, boolean fallback) {
    Object value = value(key);
    if (value instanceof Boolean flag) {
      return flag;
    }
    if (value != null) {
      complain(key, "true | false");
    }
    return fallback;
  }

  /** A table within; an absent one answers every question with its fallback. */
  Section table(String key) {
    Object value = value(key);
    if (value != null && !(value instanceof TomlTable)) {
      complain(key, "a table");
    }
    return new Section(
        file,
        path + key + ".",
        value instanceof TomlTable found ? found : null,
        line(key),
        complaints);
  }

  /** Tables within: an array of them, or a single one; empty where absent. */
  List<Section> tables(String key) {
    Object value = value(key);
    List<Section> found = new ArrayList<>();
    if (value instanceof TomlTable) {
      found.add(table(key));
    } else if (value instanceof TomlArray array && Found.isTables(array)) {
      for (int i = 0; i < array.size(); i++) {
        int line = Optional.ofNullable(array.inputPositionOf(i)).map(TomlPosition::line).orElse(0);
        String name = path + key + "[" + (i + 1) + "].";
        found.add(new Section(file, name, array.getTable(i), line, complaints));
      }
    } else if (value != null && !(value instanceof TomlArray array && array.isEmpty())) {
      complain(key, "tables, [[" + key + "]]");
    }
    return found;
  }

  /** Complains of every key that was not asked for. */
  void finish() {
    if (table == null) {
      return;
    }
    for (String key : table.keySet()) {
      if (!known.contains(key)) {
        List<String> sorted = known.stream().sorted().toList();
        complaints.add(
            new Complaint(
                file,
                line(key),
                path + key,
                "unknown key",
                String.join(", ", sorted) + Nearest.hint(key, sorted)));
      }
    }
  }

  /** Notes that what stands at a key is not allowed. */
  void complain(String key, String allowed) {
    Object value = value(key);
    int line = value == null ? tableLine : line(key);
    complaints.add(new Complaint(file, line, path + key, Found.shown(value), allowed));
  }

  private @Nullable Object value(String key) {
    known.add(key);
    return table == null ? null : table.get(List.of(key));
  }

  private int line(String key) {
    TomlPosition position = table == null ? null : table.inputPositionOf(List.of(key));
    return position == null ? tableLine : position.line();
  }
}
