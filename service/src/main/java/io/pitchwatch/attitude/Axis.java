package io.pitchwatch.attitude;

/** A way that an axis of the chip can point, of the six square to the coach. */
public enum Axis {
  FORWARD(1, 0, 0),
  REARWARD(-1, 0, 0),
  LEFT(0, 1, 0),
  RIGHT(0, -1, 0),
  UP(0, 0, 1),
  DOWN(0, 0, -1);

  private final int x;
  private final int y;
  private final int z;

  Axis(int x, int y, int z) {
    this.x = x;
    this.y = y;
    this.z = z;
  }

  /** Component along the coach, forward: −1, 0 or 1. */
  public int x() {
    return x;
  }

  /** Component across the coach, to the left: −1, 0 or 1. */
  public int y() {
    return y;
  }

  /** Component up: −1, 0 or 1. */
  public int z() {
    return z;
  }

  /** Whether both lie along the same line, the same way or opposite. */
  public boolean isParallelTo(Axis other) {
    return x * other.x + y * other.y + z * other.z != 0;
  }

  /**
   * The way square to this one and another: the third axis of a right-handed set.
   *
   * @throws IllegalArgumentException if both are parallel
   */
  public Axis cross(Axis other) {
    int cx = y * other.z - z * other.y;
    int cy = z * other.x - x * other.z;
    int cz = x * other.y - y * other.x;
    for (Axis axis : values()) {
      if (axis.x == cx && axis.y == cy && axis.z == cz) {
        return axis;
      }
    }
    throw new IllegalArgumentException(
        "axes are " + this + " and " + other + "; they must not be parallel");
  }
}
