package io.pitchwatch.levelling;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.pitchwatch.attitude.Lean;
import io.pitchwatch.coach.Axle;
import io.pitchwatch.coach.Coach;
import io.pitchwatch.coach.JackPair;
import io.pitchwatch.coach.Levelling;
import io.pitchwatch.coach.Piece;
import io.pitchwatch.coach.PieceKind;
import io.pitchwatch.coach.Stay;
import io.pitchwatch.coach.Surface;
import io.pitchwatch.coach.Units;
import io.pitchwatch.levelling.WheelPlanner.Task;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Plans worked by hand. Both axles have a track of 2000 mm and half of the roll stiffness, the
 * right side is low by 2 deg, so that both need 2000·tan 2° = 69.84 mm to be level. Dressed sizes
 * of lumber are those of the American Softwood Lumber Standard PS 20: a nominal 2x12 is 1-1/2 by
 * 11-1/4 in (38.1 by 285.75 mm), a nominal 1x8 is 3/4 by 7-1/4 in (19.05 by 184.15 mm).
 */
class WheelPlannerReferenceTest {

  private static final Piece TWO_BY_TWELVE =
      new Piece("two-by-twelve", PieceKind.BOARD, 38.1, 600, 285.75, 16, 4500);
  private static final Piece ONE_BY_EIGHT =
      new Piece("one-by-eight", PieceKind.BOARD, 19.05, 600, 184.15, 24, 4500);

  @Test
  void twoLayersOfTwoByTwelveWithAStepInFrontForAStay() {
    WheelPlan plan =
        plan(coach(40, List.of(TWO_BY_TWELVE, ONE_BY_EIGHT)), Surface.ASPHALT, Stay.STAY);

    // Within 0.5 deg: lifts of 2000·tan 1.5° = 52.37 mm to 2000·tan 2.5° = 87.32 mm.
    // Abreast: front 245 mm: one 2x12 (285.75), two 1x8 (2 · 184.15 = 368.3);
    //          rear 590 mm: three 2x12 (3 · 285.75 = 857.25), four 1x8 (4 · 184.15 = 736.6).
    // 57.15 mm, a 1x8 on a 2x12, steps 38.1 + 19.05: the 2x12 twice, the 1x8 once:
    //          front 2·1 + 2 = 4 pieces, rear 2·3 + 4 = 10.
    // 76.2 mm, two 2x12, steps 38.1 + 38.1: the lower one twice:
    //          front 2·1 + 1 = 3 pieces, rear 2·3 + 3 = 9. Fewest, so 12 in all.
    // One at 76.2 and one at 57.15: atan 0.0381 − atan 0.028575 = 0.545 deg of twist; 0.3 allowed.
    assertEquals(12, plan.pieces());
    assertEquals(12, plan.piecesOf("two-by-twelve"));
    assertEquals(76.2, plan.wheels().get(0).liftMm(), 1e-9);
    assertEquals(List.of(List.of(new Layer("two-by-twelve", 1))), plan.wheels().get(0).stair());
    assertEquals(76.2, plan.wheels().get(1).liftMm(), 1e-9);
    assertEquals(List.of(List.of(new Layer("two-by-twelve", 3))), plan.wheels().get(1).stair());
    // 2 deg − atan(76.2 / 2000) = 2 − 2.1819 = −0.1819 deg.
    assertEquals(-0.1819, plan.after().rollDeg(), 5e-5);
    assertEquals(0, plan.excessHundredths());
    assertEquals(0, plan.twistRad());
  }

  @Test
  void oneLayerOfTwoByTwelveForANight() {
    WheelPlan plan =
        plan(coach(40, List.of(TWO_BY_TWELVE, ONE_BY_EIGHT)), Surface.ASPHALT, Stay.OVERNIGHT);

    // Within 1.5 deg: 2000·tan 0.5° = 17.45 mm will do. A 1x8 (19.05) takes 2 + 4 = 6 pieces, a
    // 2x12 (38.1) takes 1 + 3 = 4. 2 deg − atan(38.1 / 2000) = 2 − 1.0914 = 0.9086 deg.
    assertEquals(4, plan.pieces());
    assertEquals(0.9086, plan.after().rollDeg(), 5e-5);
    assertEquals(List.of(), plan.wheels().get(0).stair());
  }

  @Test
  void aBlockOnASheetOnGrass() {
    Piece block = new Piece("block", PieceKind.BLOCK, 50, 380, 300, 8, 4500);
    Piece sheet = new Piece("sheet", PieceKind.SHEET, 10, 600, 600, 8, 4500);
    WheelPlan plan = plan(coach(60, List.of(block, sheet)), Surface.GRASS, Stay.STAY);

    // On grass a sheet lies lowest. 10 + 50 = 60 mm is one step of 60 mm, inside 52.37 to 87.32 mm.
    // Front: one sheet, one block (300 ≥ 245). Rear: one sheet (600 ≥ 590), two blocks (2 · 300).
    assertEquals(5, plan.pieces());
    assertEquals(
        List.of(new Layer("sheet", 1), new Layer("block", 1)), plan.wheels().get(0).layers());
    assertEquals(
        List.of(new Layer("sheet", 1), new Layer("block", 2)), plan.wheels().get(1).layers());
    assertEquals(List.of(), plan.wheels().get(1).stair());
    // 2 deg − atan(60 / 2000) = 2 − 1.7184 = 0.2816 deg.
    assertEquals(0.2816, plan.after().rollDeg(), 5e-5);
  }

  private static WheelPlan plan(Coach coach, Surface surface, Stay stay) {
    Site site = new Site(coach, Lean.ofDegrees(2, 0), surface, stay);
    return new WheelPlanner(site).plan(Task.SIDES).orElseThrow();
  }

  private static Coach coach(double stepMm, List<Piece> pieces) {
    return new Coach(
        "heron",
        Units.METRIC,
        List.of(
            new Axle("front", 0, 2000, 3600, 90, 245, 1, false, false),
            new Axle("rear", -5600, 2000, 6900, 80, 590, 1, true, true)),
        List.of(new JackPair("front", -900, 1500, 330, 400, 150, 5000, 230)),
        pieces,
        List.of(),
        new Levelling(
            stepMm,
            160,
            Math.toRadians(0.3),
            12,
            Math.toRadians(1.5),
            Math.toRadians(0.5),
            Math.toRadians(0.25)),
        List.of(),
        List.of());
  }
}
