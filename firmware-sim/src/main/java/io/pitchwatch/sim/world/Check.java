package io.pitchwatch.sim.world;

/** Says what is wrong with a number: its name, its value, its limit. */
final class Check {

  private Check() {}

  static void finite(String name, double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(name + " is " + value + "; a finite number is allowed");
    }
  }

  static void above(String name, double value, double limit) {
    if (!(value > limit) || !Double.isFinite(value)) {
      throw new IllegalArgumentException(
          name + " is " + value + "; a finite number above " + limit + " is allowed");
    }
  }

  static void atLeast(String name, double value, double limit) {
    if (!(value >= limit)) {
      throw new IllegalArgumentException(
          name + " is " + value + "; " + limit + " or more is allowed");
    }
  }
}
