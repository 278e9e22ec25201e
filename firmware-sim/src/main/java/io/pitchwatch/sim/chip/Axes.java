package io.pitchwatch.sim.chip;

/**
 * One figure for each axis of a chip.
 *
 * @param x along the chip's x
 * @param y along the chip's y
 * @param z along the chip's z
 */
public record Axes(double x, double y, double z) {

  /** Nothing on any axis. */
  public static final Axes ZERO = new Axes(0, 0, 0);

  /** Checks that every figure is finite. */
  public Axes {
    if (!Double.isFinite(x + y + z)) {
      throw new IllegalArgumentException(
          "axes are " + x + ", " + y + ", " + z + "; finite figures are allowed");
    }
  }

  /**
   * The figure of one axis.
   *
   * @param axis 0 for x, 1 for y, 2 for z
   */
  double of(int axis) {
    return axis == 0 ? x : axis == 1 ? y : z;
  }
}
