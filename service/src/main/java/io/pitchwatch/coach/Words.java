package io.pitchwatch.coach;

import java.util.Locale;
import java.util.Optional;

/**
 * The words for constants of enums, on the wire, in files and in text: lower case, with hyphens.
 */
public final class Words {

  private Words() {}

  /** The word of a constant, such as "best-possible". */
  public static String of(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The words of constants, in their order. */
  public static String[] of(Enum<?>[] constants) {
    String[] words = new String[constants.length];
    for (int i = 0; i < constants.length; i++) {
      words[i] = of(constants[i]);
    }
    return words;
  }

  /** The constant with the given word. */
  public static <E extends Enum<E>> Optional<E> find(E[] constants, String word) {
    for (E constant : constants) {
      if (of(constant).equals(word)) {
        return Optional.of(constant);
      }
    }
    return Optional.empty();
  }
}
