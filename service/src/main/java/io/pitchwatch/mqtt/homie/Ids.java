package io.pitchwatch.mqtt.homie;

/** The one rule for every id of the convention (Homie 5.0, "Topic IDs"). */
public final class Ids {

  private Ids() {}

  /** Whether the text is one or more of a-z, 0-9 and -. */
  public static boolean isWellFormed(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean letter = c >= 'a' && c <= 'z';
      boolean digit = c >= '0' && c <= '9';
      if (!letter && !digit && c != '-') {
        return false;
      }
    }
    return !text.isEmpty();
  }

  /**
   * Returns the id.
   *
   * @throws IllegalArgumentException if it is not well-formed
   */
  static String require(String what, String id) {
    if (!isWellFormed(id)) {
      throw new IllegalArgumentException(
          what + " is \"" + id + "\"; it must be one or more of a-z, 0-9 and -");
    }
    return id;
  }
}
