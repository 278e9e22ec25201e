package io.pitchwatch.levelling;

import io.pitchwatch.attitude.Lean;
import io.pitchwatch.coach.Axle;
import io.pitchwatch.coach.Coach;
import io.pitchwatch.coach.JackPair;
import io.pitchwatch.coach.Levelling;
import io.pitchwatch.coach.Pad;
import io.pitchwatch.coach.Piece;
import io.pitchwatch.coach.PieceKind;
import io.pitchwatch.coach.Stay;
import io.pitchwatch.coach.Surface;
import io.pitchwatch.coach.Units;
import java.util.List;

/** The coach of the examples, with jacks, at a site. */
final class HeronOnSite {

  static final List<JackPair> JACKS =
      List.of(
          new JackPair("front", -900, 1500, 330, 400, 150, 5000, 230),
          new JackPair("rear", -5500, 1400, 330, 400, 150, 7000, 230));

  static final List<Piece> PIECES =
      List.of(
          new Piece("block", PieceKind.BLOCK, 38, 380, 300, 10, 4500),
          new Piece("sheet", PieceKind.SHEET, 12, 600, 600, 6, 4500));

  private HeronOnSite() {}

  static Coach coach(List<JackPair> jacks, List<Piece> pieces, List<Pad> pads) {
    return new Coach(
        "heron",
        Units.METRIC,
        List.of(
            new Axle("front", 0, 1960, 3600, 90, 245, 3600, false, false),
            new Axle("rear", -5600, 1830, 6900, 80, 590, 6900, true, true)),
        jacks,
        pieces,
        pads,
        new Levelling(
            40,
            160,
            Math.toRadians(0.3),
            12,
            Math.toRadians(1.5),
            Math.toRadians(0.5),
            Math.toRadians(0.25)),
        List.of(),
        List.of());
  }

  static Site site(Coach coach, double rollDeg, double pitchDeg) {
    return new Site(coach, Lean.ofDegrees(rollDeg, pitchDeg), Surface.GRASS, Stay.STAY);
  }
}
