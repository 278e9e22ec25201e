package io.pitchwatch.sim.scenario;

import java.util.Collection;

/** Finds the word that someone probably meant. */
final class Nearest {

  private Nearest() {}

  /** " (did you mean x?)", or nothing if no word is near. */
  static String hint(String found, Collection<String> words) {
    String best = "";
    int least = Math.max(2, found.length() / 2) + 1;
    for (String word : words) {
      int distance = distance(found, word);
      if (distance < least) {
        least = distance;
        best = word;
      }
    }
    return best.isEmpty() ? "" : " (did you mean " + best + "?)";
  }

  /** Least number of letters put in, taken out or changed (Levenshtein). */
  private static int distance(String a, String b) {
    int[] row = new int[b.length() + 1];
    for (int j = 0; j < row.length; j++) {
      row[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int changed = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        diagonal = row[j];
        row[j] = Math.min(changed, 1 + Math.min(row[j], row[j - 1]));
      }
    }
    return row[b.length()];
  }
}
