package io.pitchwatch.sim.scenario;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** A direction along one of the coach's axes. */
enum Direction {
  FORWARD(1, 0, 0),
  REARWARD(-1, 0, 0),
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

  /** x, y and z from two of them or all; empty if they are too few, not square or left-handed. */
  static Optional<Direction[]> rightHanded(
      Optional<Direction> x, Optional<Direction> y, Optional<Direction> z) {
    for (Direction asX : values()) {
      for (Direction asZ : values()) {
        Optional<Direction> asY = cross(asZ, asX);
        boolean fits =
            asY.isPresent()
                && x.orElse(asX) == asX
                && y.orElse(asY.get()) == asY.get()
                && z.orElse(asZ) == asZ;
        if (fits && Stream.of(x, y, z).filter(Optional::isPresent).count() >= 2) {
          return Optional.of(new Direction[] {asX, asY.get(), asZ});
        }
      }
    }
    return Optional.empty();
  }

  /** The direction of a × b; empty if they are parallel. */
  private static Optional<Direction> cross(Direction a, Direction b) {
    return Stream.of(values())
        .filter(
            c ->
                c.forward == a.left * b.up - a.up * b.left
                    && c.left == a.up * b.forward - a.forward * b.up
                    && c.up == a.forward * b.left - a.left * b.forward)
        .findFirst();
  }
}
