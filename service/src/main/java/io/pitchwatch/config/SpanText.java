package io.pitchwatch.config;

import java.util.Locale;

/** A length of time as people write and read it: "10 min". */
public sealed interface SpanText {

  /**
   * Understood.
   *
   * @param nanos nanoseconds, above 0
   */
  record Known(long nanos) implements SpanText {}

  /**
   * Not understood.
   *
   * @param why one sentence without its full stop: what was found, what is allowed
   */
  record Wrong(String why) implements SpanText {}

  /** Longest that is understood, days. */
  int LONGEST_DAYS = 366;

  /** Reads a length of time, from a thousandth of a second to {@link #LONGEST_DAYS} days. */
  static SpanText parse(String text) {
    Quantity quantity = Quantity.parse(text, Dimension.TIME);
    if (quantity instanceof Quantity.Wrong wrong) {
      return new Wrong(
          "found \""
              + text
              + "\", "
              + wrong.why()
              + "; allowed is a number with "
              + Dimension.TIME.symbols()
              + ", such as \"10 min\"");
    }
    double seconds = ((Quantity.Known) quantity).value();
    if (!(seconds >= 0.001 && seconds <= LONGEST_DAYS * 86_400.0)) {
      return new Wrong(
          "found \"" + text + "\"; allowed is \"0.001 s\" to \"" + LONGEST_DAYS + " days\"");
    }
    return new Known(Math.round(seconds * 1e9));
  }

  /** In words: "45 s", "10 min", "1 h 30 min". */
  static String of(long nanos) {
    long seconds = Math.round(nanos / 1e9);
    if (seconds < 120) {
      return seconds + " s";
    }
    long minutes = seconds / 60;
    if (minutes < 120) {
      return minutes + " min" + (seconds % 60 == 0 ? "" : " " + seconds % 60 + " s");
    }
    return String.format(
        Locale.ROOT, "%d h%s", minutes / 60, minutes % 60 == 0 ? "" : " " + minutes % 60 + " min");
  }
}
