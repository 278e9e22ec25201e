package io.pitchwatch.config;

/**
 * What a quantity may be, written as its owner would write it.
 *
 * @param dimension the kind of quantity
 * @param low the least that is allowed, with its unit
 * @param high the most that is allowed, with its unit
 */
record Range(Dimension dimension, String low, String high) {

  static Range length(String low, String high) {
    return new Range(Dimension.LENGTH, low, high);
  }

  static Range mass(String low, String high) {
    return new Range(Dimension.MASS, low, high);
  }

  static Range angle(String low, String high) {
    return new Range(Dimension.ANGLE, low, high);
  }

  boolean contains(double value) {
    return value >= parse(low) && value <= parse(high);
  }

  /** The least that is allowed, in the dimension's own unit. */
  double least() {
    return parse(low);
  }

  /** The value of a default, which is written in the code and so must be good. */
  double parse(String text) {
    if (Quantity.parse(text, dimension) instanceof Quantity.Known known) {
      return known.value();
    }
    throw new IllegalArgumentException("\"" + text + "\" is not " + dimension.noun());
  }

  /** The limits alone, for people. */
  String limits() {
    return low + " to " + high;
  }

  /** What is allowed, for people. */
  String allowed() {
    return dimension.noun() + " of " + limits() + ", with its unit (" + dimension.symbols() + ")";
  }
}
