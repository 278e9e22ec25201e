package io.pitchwatch.attitude;

/**
 * Three numbers, one for each axis of a chip; plain, so that they can be kept.
 *
 * @param x of the x axis
 * @param y of the y axis
 * @param z of the z axis
 */
public record Triad(double x, double y, double z) {

  /** Nothing on any axis. */
  public static final Triad ZERO = new Triad(0, 0, 0);

  /** One on every axis. */
  public static final Triad ONE = new Triad(1, 1, 1);

  /** The largest of the three, sign apart. */
  public double largest() {
    return Math.max(Math.abs(x), Math.max(Math.abs(y), Math.abs(z)));
  }

  boolean isFinite() {
    return Double.isFinite(x + y + z);
  }
}
