package io.pitchwatch.mqtt.homie;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Rules from MQTT 5.0, OASIS Standard, 07 March 2019; the section is beside each. */
class TopicTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "", // 4.7.3-1: at least one character
        "a/+", // 3.3.2-2: no wildcard in a publish
        "a/#", // 3.3.2-2
        "a\0b", // 1.5.4-2: no U+0000
        "a\ud800", // 1.5.4-1: no half of a surrogate pair
      })
  void refusesWhatMqttForbids(String text) {
    assertThrows(IllegalArgumentException.class, () -> new Topic(text));
  }

  /** MQTT 5.0, 1.5.4: the length is a two byte integer. */
  @Test
  void refusesMoreBytesThanALengthCanSay() {
    assertEquals(65_535, new Topic("x".repeat(65_535)).text().length());
    assertThrows(IllegalArgumentException.class, () -> new Topic("x".repeat(65_536)));
    assertThrows(IllegalArgumentException.class, () -> new Topic("ä".repeat(40_000)));
  }

  @Test
  void liesWithinWholeLevelsOnly() {
    Topic tree = new Topic("homie/5");
    assertTrue(new Topic("homie/5/heron").isWithin(tree));
    assertTrue(tree.isWithin(tree));
    assertFalse(new Topic("homie/55").isWithin(tree));
    assertFalse(new Topic("homie").isWithin(tree));
  }
}
