package io.pitchwatch.command;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import io.pitchwatch.attitude.Lean;
import io.pitchwatch.attitude.LeanText;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/** The answer to a remote check as text: the lean in words, then every figure with its age. */
final class CheckText {

  private final Map<String, String> leaves = new LinkedHashMap<>();

  private CheckText() {}

  /** The text of a check document (docs/schemas/check.json). */
  static String of(String json) {
    CheckText text = new CheckText();
    try (JsonParser parser = new JsonFactory().createParser(json)) {
      text.read(parser);
    } catch (IOException e) {
      throw new UncheckedIOException("an answer that was read once cannot be read again", e);
    }
    return text.written();
  }

  /** Keeps every scalar under its path; what a json property holds inside is left to --json. */
  private void read(JsonParser parser) throws IOException {
    Deque<String> path = new ArrayDeque<>();
    String name = "";
    for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
      switch (token) {
        case FIELD_NAME -> name = parser.currentName();
        case START_OBJECT, START_ARRAY -> path.addLast(name);
        case END_OBJECT, END_ARRAY -> path.removeLast();
        default -> {
          if (!token.isScalarValue()) {
            throw new IOException("unexpected " + token);
          }
          leaves.put(String.join("/", path) + "/" + name, parser.getText());
        }
      }
    }
  }

  private String leaf(String node, String property, String what) {
    return leaves.getOrDefault("/nodes/" + node + "/" + property + "/" + what, "null");
  }

  private static double number(String text) {
    return text.equals("null") ? Double.NaN : Double.parseDouble(text);
  }

  private String written() {
    Lean lean =
        Lean.ofDegrees(
            number(leaf("floor", "roll", "value")), number(leaf("floor", "pitch", "value")));
    StringBuilder text =
        new StringBuilder(
            String.format(
                Locale.ROOT,
                "%s: %s, floor %s, %s.%n",
                leaves.getOrDefault("/coach", "coach"),
                leaf("floor", "verdict", "value"),
                leaf("floor", "state", "value"),
                LeanText.of(lean)));
    for (Map.Entry<String, String> leaf : leaves.entrySet()) {
      String[] parts = leaf.getKey().split("/", -1);
      if (parts.length == 5 && parts[1].equals("nodes") && parts[4].equals("value")) {
        line(text, parts[2], parts[3], leaf.getValue());
      }
    }
    return text.toString().stripTrailing();
  }

  private void line(StringBuilder text, String node, String property, String value) {
    boolean known = !value.equals("null");
    String unit = leaf(node, property, "unit");
    text.append(
        String.format(
            Locale.ROOT,
            "  %-16s %-16s %s%s%n",
            node,
            property,
            known ? value + (unit.equals("null") ? "" : " " + unit) : "not known",
            known ? ", " + leaf(node, property, "ageSeconds") + " s old" : ""));
  }
}
