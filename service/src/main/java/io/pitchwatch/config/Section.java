package io.pitchwatch.config;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.tomlj.Toml;
import org.tomlj.TomlArray;
import org.tomlj.TomlTable;

/**
 * One table of the file. What is asked of it is what it may hold; what is wrong is noted, and a
 * stand-in that any record accepts is returned, so that reading goes on to the next fault.
 */
final class Section extends Keys {

  Section(TomlTable table, String path, int line, Reading reading) {
    super(table, path, line, reading);
  }

  /** A quantity that must be there. */
  double quantity(String key, Range range) {
    return quantity(key, range, range.least(), null);
  }

  /** A quantity with a default, which is written as the file would. */
  double quantity(String key, Range range, String fallback) {
    return quantity(key, range, range.parse(fallback), fallback);
  }

  /** A quantity with a default that the words explain; required when there are none. */
  double quantity(String key, Range range, double absent, @Nullable String words) {
    Object value = value(key, range.allowed(), range.limits(), words);
    if (value == null) {
      return absent;
    }
    if (!(value instanceof String text)) {
      fault(key, Found.words(value), range.allowed());
      return range.least();
    }
    Quantity quantity = Quantity.parse(text, range.dimension());
    if (quantity instanceof Quantity.Known known && range.contains(known.value())) {
      return known.value();
    }
    String why = quantity instanceof Quantity.Wrong wrong ? ", " + wrong.why() : "";
    fault(key, Found.quoted(text) + why, range.allowed());
    return range.least();
  }

  /** A whole number; required unless there is a default. */
  int whole(String key, int low, int high, @Nullable Integer fallback) {
    String limits = low + " to " + high;
    String allowed = "a whole number, " + limits;
    Object value = value(key, allowed, limits, fallback == null ? null : fallback.toString());
    if (value instanceof Long number && number >= low && number <= high) {
      return number.intValue();
    }
    if (value != null) {
      fault(key, value instanceof Long ? value.toString() : Found.words(value), allowed);
      return low;
    }
    return fallback == null ? low : fallback;
  }

  /** A number without a unit; NaN when absent, for which the words explain the default. */
  double number(String key, double low, double high, String words) {
    String limits = plain(low) + " to " + plain(high);
    String allowed = "a number without a unit, " + limits;
    Object value = value(key, allowed, limits, words);
    if (value == null) {
      return Double.NaN;
    }
    if (value instanceof Number number
        && number.doubleValue() >= low
        && number.doubleValue() <= high) {
      return number.doubleValue();
    }
    fault(key, value instanceof Number ? value.toString() : Found.words(value), allowed);
    return low;
  }

  boolean flag(String key, boolean fallback) {
    Object value = value(key, "true or false", "true, false", String.valueOf(fallback));
    if (value instanceof Boolean flag) {
      return flag;
    }
    if (value != null) {
      fault(key, Found.words(value), "true or false");
    }
    return fallback;
  }

  /** One of an enum's constants, written in lower case; required unless there is a default. */
  <E extends Enum<E>> E choice(String key, Class<E> type, @Nullable E fallback) {
    E standIn = fallback == null ? type.getEnumConstants()[0] : fallback;
    return constant(word(key, words(type), fallback == null ? null : word(fallback)), type)
        .orElse(standIn);
  }

  /** One of an enum's constants; empty when absent or faulty. */
  <E extends Enum<E>> Optional<E> choiceIfAny(String key, Class<E> type) {
    return constant(word(key, words(type), ""), type);
  }

  private static <E extends Enum<E>> Optional<E> constant(String word, Class<E> type) {
    return Stream.of(type.getEnumConstants()).filter(it -> word(it).equals(word)).findFirst();
  }

  private static <E extends Enum<E>> List<String> words(Class<E> type) {
    return Stream.of(type.getEnumConstants()).map(Section::word).toList();
  }

  /** One of the given words; required unless there is a default. */
  private String word(String key, List<String> words, @Nullable String fallback) {
    String allowed =
        words.stream().map(word -> "\"" + word + "\"").collect(Collectors.joining(", "));
    Object value = value(key, allowed, String.join(", ", words), fallback);
    if (value instanceof String text && words.contains(text)) {
      return text;
    }
    if (value != null) {
      fault(key, Found.words(value), allowed);
    }
    return fallback == null ? words.get(0) : fallback;
  }

  /** A text that fits the form; empty when absent or faulty. */
  Optional<String> text(String key, Form form, @Nullable String fallback) {
    Object value = value(key, form.allowed(), form.limits(), fallback);
    if (value instanceof String text && form.fits(text)) {
      return Optional.of(text);
    }
    if (value != null) {
      fault(key, Found.words(value), form.allowed());
    }
    return Optional.ofNullable(value == null ? fallback : null);
  }

  /** The id of what this table describes. */
  String id() {
    return text("id", Form.ID, null).orElse("x");
  }

  /** Texts that fit the form, none twice. */
  List<String> texts(String key, Form form, List<String> fallback) {
    String allowed = "an array of different strings, each " + form.allowed();
    Object value = value(key, allowed, form.limits(), fallback.toString());
    if (value == null) {
      return fallback;
    }
    List<Object> items = value instanceof TomlArray array ? array.toList() : List.of(value);
    boolean fits =
        value instanceof TomlArray
            && items.stream().allMatch(item -> item instanceof String text && form.fits(text))
            && new HashSet<>(items).size() == items.size();
    if (!fits) {
      String list = items.stream().map(Found::words).collect(Collectors.joining(", "));
      fault(key, value instanceof TomlArray ? "[" + list + "]" : list, allowed);
      return fallback;
    }
    return items.stream().map(String.class::cast).toList();
  }

  /** A table inside this one; an empty one when it is absent or something else. */
  Section table(String key) {
    Object value = value(key, "a table", "table", "");
    if (value instanceof TomlTable inner) {
      return new Section(inner, path(key), line(key), reading);
    }
    if (value != null) {
      fault(key, Found.words(value), "a table, [" + path(key) + "]");
    }
    return new Section(Toml.parse(""), path(key), line(key), reading);
  }

  /** As {@link #tables}, or one single table, or an empty one when it is absent. */
  List<Section> tableOrTables(String key, int most) {
    boolean many = table.get(List.of(key)) instanceof TomlArray array && !array.isEmpty();
    return many ? tables(key, most) : List.of(table(key));
  }

  /** The tables of an array of tables, in their order; none when absent. */
  List<Section> tables(String key, int most) {
    Object value = value(key, "tables", "0 to " + most, "");
    String allowed = "tables, [[" + path(key) + "]], at most " + most;
    List<Section> sections = new ArrayList<>();
    if (!(value instanceof TomlArray array)) {
      if (value != null) {
        fault(key, Found.words(value), allowed);
      }
      return sections;
    }
    for (int i = 0; i < Math.min(array.size(), most); i++) {
      if (array.get(i) instanceof TomlTable inner) {
        int at = array.inputPositionOf(i).line();
        sections.add(new Section(inner, path(key, i), at, reading));
      } else {
        faultInside(key, i, Found.words(array.get(i)), allowed);
      }
    }
    if (array.size() > most) {
      faultInside(key, most, array.size() + " of them", allowed);
    }
    return sections;
  }

  private static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private static String plain(double number) {
    return number == Math.rint(number) ? Long.toString((long) number) : Double.toString(number);
  }
}
