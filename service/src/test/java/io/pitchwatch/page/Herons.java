package io.pitchwatch.page;

import io.pitchwatch.coach.Axle;
import io.pitchwatch.coach.Coach;
import io.pitchwatch.coach.Direction;
import io.pitchwatch.coach.Door;
import io.pitchwatch.coach.Fridge;
import io.pitchwatch.coach.JackPair;
import io.pitchwatch.coach.Levelling;
import io.pitchwatch.coach.Piece;
import io.pitchwatch.coach.PieceKind;
import io.pitchwatch.coach.Units;
import java.util.List;
import java.util.Optional;

/** The coach of the page's tests. */
final class Herons {

  private Herons() {}

  /** A two-axle coach of ten tonnes with a fridge, a door, jacks and pieces. */
  static Coach heron() {
    return new Coach(
        "heron",
        Units.METRIC,
        List.of(
            new Axle("front", 0, 1960, 3600, 90, 245, 1, false, false),
            new Axle("rear", -5600, 1830, 6900, 80, 590, 2, true, true)),
        List.of(
            new JackPair("front", -900, 1500, 330, 400, 150, 5000, 230),
            new JackPair("rear", -6800, 1500, 330, 400, 150, 5000, 230)),
        List.of(
            new Piece("block", PieceKind.BLOCK, 38, 380, 300, 10, 4500),
            new Piece("grey-sheet", PieceKind.SHEET, 12, 600, 600, 4, Double.POSITIVE_INFINITY)),
        List.of(),
        new Levelling(40, 160, rad(0.3), 12, rad(1.5), rad(0.5), rad(0.25)),
        List.of(new Fridge("galley", rad(3), rad(6), Optional.empty())),
        List.of(new Door("washroom", Direction.LEFT, Direction.REAR, rad(100), rad(0.4), 560)));
  }

  private static double rad(double deg) {
    return Math.toRadians(deg);
  }
}
