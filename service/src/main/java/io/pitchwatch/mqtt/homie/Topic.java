package io.pitchwatch.mqtt.homie;

import java.nio.charset.StandardCharsets;

/**
 * The name of a topic that may be published to.
 *
 * @param text the name as it stands on the wire
 */
public record Topic(String text) {

  private static final int LONGEST_BYTES = 65_535;

  /**
   * Checks the name against MQTT 5.0: at least one character (4.7.3-1), no U+0000 (1.5.4-2), no
   * lone surrogate (1.5.4-1), at most 65,535 bytes (1.5.4), no wildcard (3.3.2-2).
   *
   * @throws IllegalArgumentException if one of these is broken
   */
  public Topic {
    if (text.isEmpty()) {
      throw new IllegalArgumentException("topic is empty; it must have at least one character");
    }
    if (text.indexOf('+') >= 0 || text.indexOf('#') >= 0 || text.indexOf('\0') >= 0) {
      throw new IllegalArgumentException("topic \"" + text + "\" holds one of + # U+0000");
    }
    if (!StandardCharsets.UTF_8.newEncoder().canEncode(text)) {
      throw new IllegalArgumentException("topic holds half of a surrogate pair");
    }
    if (text.getBytes(StandardCharsets.UTF_8).length > LONGEST_BYTES) {
      throw new IllegalArgumentException("topic is longer than " + LONGEST_BYTES + " bytes");
    }
  }

  /** Whether this topic lies under the given one, or is it. */
  public boolean isWithin(Topic other) {
    return text.equals(other.text) || text.startsWith(other.text + "/");
  }

  @Override
  public String toString() {
    return text;
  }
}
