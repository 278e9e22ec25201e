package io.pitchwatch.sim.scenario;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** A direction along one of the coach's axes. */
enum Direction {
  FORWARD(1, 0, 0),
  REAR(-1, 0, 0),
  LEFT(0, 1, 0),
  RIGHT(0, -1, 0),
  UP(0, 0, 1),
  DOWN(0, 0, -1);

  private final int forward;
  private final int left;
  private final int up;

  Direction(int forward, int left, int up) {
    this.forward = forward;
    this.left = left;
    this.up = up;
  }

  /** Its name in files. */
  String label() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** All names. */
  static List<String> labels() {
    return Stream.of(values()).map(Direction::label).toList();
  }

  /** Components forward, left, up. */
  double[] vector() {
    return new double[] {forward, left, up};
  }

  boolean isSquareTo(Direction other) {
    return forward * other.forward + left * other.left + up * other.up == 0;
  }
}
