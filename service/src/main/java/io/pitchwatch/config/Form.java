package io.pitchwatch.config;

import java.util.function.Predicate;
import java.util.regex.Pattern;

/**
 * What a text may look like.
 *
 * @param limits in a few words
 * @param test whether a text fits
 */
record Form(String limits, Predicate<String> test) {

  static final Form ID = matching("1 to 32 of a-z, 0-9 and -", "[a-z0-9-]{1,32}");
  static final Form LEVEL =
      matching("one topic level: 1 to 64 of A-Z, a-z, 0-9, _ and -", "[\\w-]{1,64}");
  static final Form LEVELS =
      matching(
          "topic levels of A-Z, a-z, 0-9, _ and -, with / between them",
          "[\\w-]{1,64}(/[\\w-]{1,64}){0,7}");
  static final Form USER = matching("1 to 64 letters, digits, ., _, @ and -", "[\\w.@-]{1,64}");
  static final Form PATH =
      new Form(
          "a path; ~ is not expanded",
          text -> !text.isBlank() && !text.startsWith("~") && text.indexOf(0) < 0);

  static Form matching(String limits, String pattern) {
    return new Form(limits, Pattern.compile(pattern).asMatchPredicate());
  }

  boolean fits(String text) {
    return test.test(text);
  }

  String allowed() {
    return "a string: " + limits;
  }
}
