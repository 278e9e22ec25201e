package io.pitchwatch.config;

/** What a quantity may be, written as its owner would write it. */
final class Range {

  private final Dimension dimension;
  private final String limits;
  private final double least;
  private final double most;

  private Range(Dimension dimension, String low, String high) {
    this.dimension = dimension;
    this.limits = low + " to " + high;
    this.least = parse(low);
    this.most = parse(high);
  }

  static Range length(String low, String high) {
    return new Range(Dimension.LENGTH, low, high);
  }

  static Range mass(String low, String high) {
    return new Range(Dimension.MASS, low, high);
  }

  static Range angle(String low, String high) {
    return new Range(Dimension.ANGLE, low, high);
  }

  Dimension dimension() {
    return dimension;
  }

  /** The least that is allowed, in the dimension's own unit. */
  double least() {
    return least;
  }

  boolean contains(double value) {
    return value >= least && value <= most;
  }

  /** The value of a limit or a default, which is written in the code and so must be good. */
  double parse(String text) {
    if (Quantity.parse(text, dimension) instanceof Quantity.Known known) {
      return known.value();
    }
    throw new IllegalArgumentException("\"" + text + "\" is not " + dimension.noun());
  }

  /** The limits alone, for people. */
  String limits() {
    return limits;
  }

  /** What is allowed, for people. */
  String allowed() {
    return dimension.noun() + " of " + limits + ", with its unit (" + dimension.symbols() + ")";
  }
}
