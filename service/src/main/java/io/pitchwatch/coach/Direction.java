package io.pitchwatch.coach;

/** A direction in the floor's plane, seen from the driver's seat. */
public enum Direction {
  FRONT(1, 0),
  REAR(-1, 0),
  LEFT(0, 1),
  RIGHT(0, -1);

  private final int x;
  private final int y;

  Direction(int x, int y) {
    this.x = x;
    this.y = y;
  }

  /** Component forward: 1, 0 or −1. */
  public int x() {
    return x;
  }

  /** Component to the left: 1, 0 or −1. */
  public int y() {
    return y;
  }
}
