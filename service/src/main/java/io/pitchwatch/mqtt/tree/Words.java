package io.pitchwatch.mqtt.tree;

import java.util.Locale;
import java.util.Optional;

/** The words by which constants of the core's enums go on the wire: lower case, with hyphens. */
final class Words {

  private Words() {}

  static String of(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  static String[] of(Enum<?>[] constants) {
    String[] words = new String[constants.length];
    for (int i = 0; i < constants.length; i++) {
      words[i] = of(constants[i]);
    }
    return words;
  }

  /** The constant with the given word. */
  static <E extends Enum<E>> Optional<E> find(E[] constants, String word) {
    for (E constant : constants) {
      if (of(constant).equals(word)) {
        return Optional.of(constant);
      }
    }
    return Optional.empty();
  }
}
