package io.pitchwatch.mqtt.tree;

import java.util.List;

/** A stranger's text as it may stand in a message for people: short, and on one line. */
public final class Quoted {

  private static final int LONGEST = 40;

  private Quoted() {}

  /** Says that the text is none of the words that are allowed. */
  static String noneOf(List<String> words, String text) {
    String allowed = words.size() == 1 ? "; allowed is " : "; allowed are ";
    return "found " + of(text) + allowed + String.join(", ", words);
  }

  /** The text in quotes, cut to 40 characters, control characters replaced. */
  public static String of(String text) {
    StringBuilder quoted = new StringBuilder("\"");
    text.codePoints()
        .limit(LONGEST)
        .map(c -> Character.isISOControl(c) || Character.getType(c) == Character.FORMAT ? '?' : c)
        .forEach(quoted::appendCodePoint);
    return quoted.append(text.codePointCount(0, text.length()) > LONGEST ? "…\"" : "\"").toString();
  }
}
