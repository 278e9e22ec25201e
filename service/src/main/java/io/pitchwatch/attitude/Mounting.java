package io.pitchwatch.attitude;

/**
 * Which way the chip's axes point, nearest of six each. There are 24 proper mountings; the third
 * axis follows from the other two, since chips are right-handed.
 *
 * @param x the way the chip's x axis points
 * @param y the way the chip's y axis points
 * @param z the way the chip's z axis points
 */
public record Mounting(Axis x, Axis y, Axis z) {

  /** The chip lies flat, its x axis forward. */
  public static final Mounting FLAT = ofXz(Axis.FORWARD, Axis.UP);

  /**
   * Checks that the axes form a right-handed set.
   *
   * @throws IllegalArgumentException if two are parallel or the set is left-handed
   */
  public Mounting {
    if (x.cross(y) != z) {
      throw new IllegalArgumentException(
          "z is "
              + z
              + "; with x "
              + x
              + " and y "
              + y
              + " it must be "
              + x.cross(y)
              + " (right-handed)");
    }
  }

  /**
   * From the x and y axes.
   *
   * @throws IllegalArgumentException if they are parallel
   */
  public static Mounting ofXy(Axis x, Axis y) {
    return new Mounting(x, y, x.cross(y));
  }

  /**
   * From the x and z axes.
   *
   * @throws IllegalArgumentException if they are parallel
   */
  public static Mounting ofXz(Axis x, Axis z) {
    return new Mounting(x, z.cross(x), z);
  }

  /**
   * From the y and z axes.
   *
   * @throws IllegalArgumentException if they are parallel
   */
  public static Mounting ofYz(Axis y, Axis z) {
    return new Mounting(y.cross(z), y, z);
  }

  /** Takes components along the chip's axes to components along the coach's. */
  public Rotation chipToCoach() {
    return Rotation.ofRows(x.x(), y.x(), z.x(), x.y(), y.y(), z.y(), x.z(), y.z(), z.z());
  }
}
