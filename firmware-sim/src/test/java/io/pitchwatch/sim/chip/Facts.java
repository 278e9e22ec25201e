package io.pitchwatch.sim.chip;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** Facts of a chip from its datasheet: a file with columns chip, item, value, unit, source. */
final class Facts {

  private static final Pattern CELL = Pattern.compile("\"([^\"]*)\"|([^,]+)|(?<=,)(?=,)");
  private static final Pattern HEX = Pattern.compile("0x([0-9A-Fa-f]{1,2})");
  private static final Pattern NUMBER = Pattern.compile("[-+]?\\d+(\\.\\d+)?");

  private final Map<String, String> facts = new LinkedHashMap<>();

  Facts(String name) {
    for (String line : SharedFiles.lines("chips/" + name)) {
      List<String> cells = new ArrayList<>();
      CELL.matcher(line)
          .results()
          .forEach(cell -> cells.add(cell.group(1) != null ? cell.group(1) : cell.group()));
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

  /** Every hexadecimal number of an item, in order. */
  List<Integer> hexes(String item) {
    return HEX.matcher(text(item))
        .results()
        .map(hex -> Integer.parseInt(hex.group(1), 16))
        .toList();
  }

  /** Every decimal number of an item, in order. */
  List<Double> numbers(String item) {
    return NUMBER
        .matcher(text(item))
        .results()
        .map(MatchResult::group)
        .map(Double::parseDouble)
        .toList();
  }
}
