package io.pitchwatch.levelling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.pitchwatch.attitude.Lean;
import io.pitchwatch.coach.Piece;
import io.pitchwatch.coach.PieceKind;
import io.pitchwatch.coach.Stay;
import io.pitchwatch.coach.Surface;
import java.util.List;
import org.junit.jupiter.api.Test;

class UnusableTest {

  private static Piece piece(PieceKind kind, double thicknessMm, double maxLoadKg) {
    return new Piece("plank", kind, thicknessMm, 600, 300, 10, maxLoadKg);
  }

  private static List<String> remarks(Surface surface, Piece... pieces) {
    Site site =
        new Site(
            HeronOnSite.coach(List.of(), List.of(pieces), List.of()),
            Lean.ofDegrees(2, 0),
            surface,
            Stay.STAY);
    Plan plan = LevelPlanner.plan(site);
    assertEquals(List.of(), plan.wheels().wheels());
    return plan.reasons().stream()
        .filter(reason -> !List.of("inventory", "heading").contains(reason.code()))
        .map(Reason::text)
        .toList();
  }

  @Test
  void anEmptyInventoryIsNamed() {
    assertEquals(
        List.of("nothing to lay under tyres is on board, says the config"),
        remarks(Surface.CONCRETE));
  }

  /** The front carries 1800 kg on one piece, the rear 3450 kg on two. */
  @Test
  void piecesThatMayNotCarryTheCoachAreNamedWithTheirLoad() {
    assertEquals(
        List.of(
            "plank is left out under front and rear: it would carry 1800 kg, its rated load is"
                + " 900 kg"),
        remarks(Surface.CONCRETE, piece(PieceKind.BOARD, 38, 900)));
  }

  @Test
  void piecesTallerThanAStepAreNamedWithTheirThickness() {
    assertEquals(
        List.of(
            "plank is left out: 50 mm thick, and a tyre is asked to climb no more than 40 mm at"
                + " once"),
        remarks(Surface.CONCRETE, piece(PieceKind.BLOCK, 50, 9000)));
  }

  @Test
  void aSurfaceThatWantsAnotherLowestLayerIsNamed() {
    List<String> block = remarks(Surface.SOFT, piece(PieceKind.BLOCK, 38, 9000));
    assertTrue(
        block.contains("on soft ground a sheet or board must lie lowest, and none is on board"),
        block.toString());
    List<String> sheet = remarks(Surface.GRAVEL, piece(PieceKind.SHEET, 12, 9000));
    assertTrue(
        sheet.contains("on gravel no sheet may lie lowest, and nothing else is on board"),
        sheet.toString());
  }

  @Test
  void piecesInUseAreNotMentioned() {
    assertEquals(
        List.of(),
        Unusable.remarks(
            HeronOnSite.site(HeronOnSite.coach(List.of(), HeronOnSite.PIECES, List.of()), 9, 0)));
  }
}
