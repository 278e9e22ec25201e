package io.pitchwatch.config;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;

/** The known word nearest to one that is not known. */
final class Nearest {

  private static final int LONGEST = 64;

  private Nearest() {}

  /**
   * The word at the least Levenshtein distance, the first of several; empty when all differ from it
   * in more than two thirds of their letters.
   */
  static Optional<String> to(String word, Collection<String> known) {
    if (word.length() > LONGEST) {
      return Optional.empty();
    }
    return known.stream()
        .min(Comparator.comparingInt(candidate -> distance(word, candidate)))
        .filter(best -> 3 * distance(word, best) <= 2 * Math.max(word.length(), best.length()));
  }

  /**
   * Levenshtein's distance: insertions, deletions and replacements that turn one into the other.
   */
  static int distance(String one, String other) {
    int[] above = new int[other.length() + 1];
    for (int j = 0; j <= other.length(); j++) {
      above[j] = j;
    }
    for (int i = 1; i <= one.length(); i++) {
      int[] row = new int[other.length() + 1];
      row[0] = i;
      for (int j = 1; j <= other.length(); j++) {
        int replaced = above[j - 1] + (one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1);
        row[j] = Math.min(replaced, 1 + Math.min(above[j], row[j - 1]));
      }
      above = row;
    }
    return above[other.length()];
  }
}
