package io.pitchwatch.mqtt.tree;

import io.pitchwatch.coach.Words;

/** What a property says at one instant. */
public sealed interface Value {

  /** Not known: the topic holds nothing. */
  Value UNKNOWN = new Unknown();

  /** The number, or unknown if it is NaN or infinite: neither is a value of the convention. */
  static Value of(double number) {
    return Double.isFinite(number) ? new Amount(number) : UNKNOWN;
  }

  /** The text. */
  static Value of(String text) {
    return new Text(text);
  }

  /** The word of an enum's constant. */
  static Value of(Enum<?> constant) {
    return new Text(Words.of(constant));
  }

  /** A number, in the property's unit. */
  record Amount(double number) implements Value {}

  /** A payload that is written as it is. */
  record Text(String text) implements Value {}

  /** Nothing is known. */
  record Unknown() implements Value {}
}
