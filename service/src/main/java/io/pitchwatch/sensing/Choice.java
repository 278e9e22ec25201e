package io.pitchwatch.sensing;

import java.util.Arrays;

/** Looks a wanted value up among those that a chip knows. */
final class Choice {

  private Choice() {}

  /**
   * Index of a value.
   *
   * @param name what is chosen, for the message
   * @param wanted the value; matches within 1 %, so that 31 Hz finds 31.25 Hz
   * @param known what there is
   * @throws IllegalArgumentException if none matches
   */
  static int of(String name, double wanted, double... known) {
    for (int i = 0; i < known.length; i++) {
      if (Math.abs(wanted - known[i]) <= 0.01 * known[i]) {
        return i;
      }
    }
    throw new IllegalArgumentException(
        name + " is " + wanted + "; this chip knows " + Arrays.toString(known));
  }
}
