package io.pitchwatch.coach;

/** The checks that every record of the coach makes of its figures. */
final class Require {

  private Require() {}

  static void positive(String name, double value) {
    if (!(value > 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(name + " is " + value + "; it must be more than 0");
    }
  }

  static void notNegative(String name, double value) {
    if (!(value >= 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(name + " is " + value + "; it must be 0 or more");
    }
  }

  static void finite(String name, double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(name + " is " + value + "; it must be a finite number");
    }
  }

  static void id(String id) {
    if (!id.matches("[a-z0-9-]{1,32}")) {
      throw new IllegalArgumentException(
          "id is \"" + id + "\"; it must be 1 to 32 characters of a-z, 0-9 and -");
    }
  }

  static void count(String name, int value) {
    if (value < 0) {
      throw new IllegalArgumentException(name + " is " + value + "; it must be 0 or more");
    }
  }
}
