package io.pitchwatch.levelling;

/**
 * A length for each side of the coach, millimetres.
 *
 * @param left on the left
 * @param right on the right
 */
public record Sides(double left, double right) {

  /** The longer of the two. */
  public double most() {
    return Math.max(left, right);
  }
}
