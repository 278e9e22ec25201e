package io.pitchwatch.levelling;

import io.pitchwatch.coach.Axle;
import io.pitchwatch.coach.Coach;
import io.pitchwatch.coach.Piece;
import io.pitchwatch.coach.PieceKind;
import io.pitchwatch.coach.Stay;
import io.pitchwatch.coach.Surface;
import java.util.List;

/**
 * The layer that keeps tyres off concrete and asphalt for a season: one kind of sheet or board, the
 * thinnest that suffices, under every tyre.
 */
final class Barrier {

  /** No kind is asked for, or none suffices. */
  static final int NONE = -1;

  private Barrier() {}

  static boolean isAsked(Site site) {
    return site.stay() == Stay.SEASON
        && (site.surface() == Surface.CONCRETE || site.surface() == Surface.ASPHALT);
  }

  /** Index of the piece to use, or {@link #NONE}. */
  static int piece(Site site) {
    if (!isAsked(site)) {
      return NONE;
    }
    List<Piece> pieces = site.coach().pieces();
    int thinnest = NONE;
    for (int i = 0; i < pieces.size(); i++) {
      if (suffices(pieces.get(i), site.coach())
          && (thinnest == NONE
              || pieces.get(i).thicknessMm() < pieces.get(thinnest).thicknessMm())) {
        thinnest = i;
      }
    }
    return thinnest;
  }

  private static boolean suffices(Piece piece, Coach coach) {
    int needed = 0;
    for (Axle axle : coach.axles()) {
      if (!Kind.carries(piece, axle)) {
        return false;
      }
      needed += 2 * Kind.abreast(piece, axle);
    }
    return piece.kind() != PieceKind.BLOCK
        && piece.count() >= needed
        && piece.thicknessMm() <= coach.levelling().thickestMm();
  }
}
