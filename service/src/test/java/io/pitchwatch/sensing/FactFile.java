package io.pitchwatch.sensing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A chip's data sheet facts; the file has columns chip, item, value, unit, source. */
final class FactFile {

  private final Map<String, String> facts = new LinkedHashMap<>();

  FactFile(String name) {
    for (String line : SharedFiles.lines("chips/" + name)) {
      List<String> cells = cells(line);
      facts.put(cells.get(1), cells.get(2));
    }
  }

  String text(String item) {
    String text = facts.get(item);
    if (text == null) {
      throw new AssertionError("no item " + item + " among " + facts.keySet());
    }
    return text;
  }

  /** Every two-digit hexadecimal number of an item, in order. */
  List<Integer> hexes(String item) {
    List<Integer> all = new ArrayList<>();
    Matcher matcher = Pattern.compile("0x([0-9A-Fa-f]{2})").matcher(text(item));
    while (matcher.find()) {
      all.add(Integer.parseInt(matcher.group(1), 16));
    }
    return all;
  }

  int hex(String item, int which) {
    return hexes(item).get(which);
  }

  /** Every decimal number of an item, in order. */
  List<Double> numbers(String item) {
    List<Double> all = new ArrayList<>();
    Matcher matcher = Pattern.compile("-?\\d+(\\.\\d+)?").matcher(text(item));
    while (matcher.find()) {
      all.add(Double.parseDouble(matcher.group()));
    }
    return all;
  }

  double number(String item, int which) {
    return numbers(item).get(which);
  }

  private static List<String> cells(String line) {
    List<String> cells = new ArrayList<>();
    StringBuilder cell = new StringBuilder();
    boolean quoted = false;
    for (int i = 0; i < line.length(); i++) {
      char c = line.charAt(i);
      if (c == '"') {
        quoted = !quoted;
      } else if (c == ',' && !quoted) {
        cells.add(cell.toString());
        cell.setLength(0);
      } else {
        cell.append(c);
      }
    }
    cells.add(cell.toString());
    return cells;
  }
}
