package io.pitchwatch.levelling;

import io.pitchwatch.coach.Axle;
import io.pitchwatch.coach.Coach;
import io.pitchwatch.coach.LengthText;
import io.pitchwatch.coach.MassText;
import io.pitchwatch.coach.Piece;
import java.util.ArrayList;
import java.util.List;

/** Why what is on board is not used: an owner who has boards wonders why the plan has none. */
final class Unusable {

  private final Site site;
  private final Coach coach;
  private final List<Piece> pieces;

  private Unusable(Site site) {
    this.site = site;
    this.coach = site.coach();
    this.pieces = coach.pieces().stream().filter(piece -> piece.count() > 0).toList();
  }

  /** What stands in the way of laying what there is; empty where nothing does. */
  static List<Reason> remarks(Site site) {
    return new Unusable(site).remarks();
  }

  private List<Reason> remarks() {
    if (pieces.isEmpty()) {
      return List.of(
          new Reason("no-pieces", "nothing to lay under tyres is on board, says the config"));
    }
    List<Reason> remarks = new ArrayList<>();
    double mostMm = coach.levelling().thickestMm();
    for (Piece piece : pieces) {
      if (piece.thicknessMm() > mostMm + 1e-6) {
        remarks.add(tooThick(piece, mostMm));
        continue;
      }
      List<Axle> tooHeavy =
          coach.axles().stream().filter(axle -> !Kind.carries(piece, axle)).toList();
      if (!tooHeavy.isEmpty()) {
        remarks.add(overloaded(piece, tooHeavy));
      }
    }
    if (pieces.stream().noneMatch(piece -> site.surface().mayBeLowest(piece.kind()))) {
      remarks.add(nothingForTheGround());
    }
    return remarks;
  }

  private Reason tooThick(Piece piece, double mostMm) {
    return new Reason(
        "too-thick",
        piece.id()
            + " is left out: "
            + LengthText.of(piece.thicknessMm(), coach.units())
            + " thick, and a tyre is asked to climb no more than "
            + LengthText.of(mostMm, coach.units())
            + " at once");
  }

  private Reason overloaded(Piece piece, List<Axle> axles) {
    double mostKg =
        axles.stream()
            .mapToDouble(axle -> axle.loadKg() / 2 / Kind.abreast(piece, axle))
            .max()
            .orElseThrow();
    return new Reason(
        "piece-load",
        piece.id()
            + " is left out under "
            + String.join(" and ", axles.stream().map(Axle::id).toList())
            + ": it would carry "
            + MassText.of(mostKg, coach.units())
            + ", its rated load is "
            + MassText.of(piece.maxLoadKg(), coach.units()));
  }

  private Reason nothingForTheGround() {
    return new Reason(
        "no-lowest",
        switch (site.surface()) {
          case GRAVEL -> "on gravel no sheet may lie lowest, and nothing else is on board";
          case SOFT -> "on soft ground a sheet or board must lie lowest, and none is on board";
          default -> "on grass a sheet or board must lie lowest, and none is on board";
        });
  }
}
