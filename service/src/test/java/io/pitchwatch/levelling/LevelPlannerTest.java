package io.pitchwatch.levelling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.pitchwatch.coach.Coach;
import io.pitchwatch.coach.Direction;
import io.pitchwatch.coach.Pad;
import io.pitchwatch.coach.Piece;
import io.pitchwatch.coach.PieceKind;
import java.util.List;
import org.junit.jupiter.api.Test;

class LevelPlannerTest {

  private static final Coach HERON =
      HeronOnSite.coach(
          HeronOnSite.JACKS, HeronOnSite.PIECES, List.of(new Pad("timber", 114, 300, 300, 8)));

  private static boolean says(Plan plan, String code) {
    return plan.reasons().stream().anyMatch(reason -> reason.code().equals(code));
  }

  @Test
  void liftsTheLowSideThenTrims() {
    Plan plan = LevelPlanner.plan(HeronOnSite.site(HERON, 1.5, -0.4));
    assertEquals(PlanVerdict.GOOD, plan.verdict());
    assertTrue(plan.wheels().wheels().stream().allMatch(wheel -> wheel.side() == Direction.RIGHT));
    assertEquals(2, plan.jacks().size());
    assertEquals(0, plan.after().pitchDeg(), 1e-9);
    assertTrue(Math.abs(plan.after().rollDeg()) <= 0.505);
  }

  @Test
  void laysNothingUnderALevelCoach() {
    Plan plan = LevelPlanner.plan(HeronOnSite.site(HERON, 0.1, 0));
    assertEquals(List.of(), plan.wheels().wheels());
    assertEquals(PlanVerdict.GOOD, plan.verdict());
  }

  @Test
  void asksForNothingMoreOnceItIsCarriedOut() {
    Plan first = LevelPlanner.planOnly(HeronOnSite.site(HERON, 2.1, 0.3));
    Plan again =
        LevelPlanner.planOnly(
            HeronOnSite.site(HERON, first.after().rollDeg(), first.after().pitchDeg()));
    assertEquals(List.of(), again.wheels().wheels());
    assertEquals(PlanVerdict.GOOD, again.verdict());
  }

  @Test
  void putsBlocksUnderTheLowEndWhereATyreWouldHang() {
    Plan plan = LevelPlanner.plan(HeronOnSite.site(HERON, 0, -1));
    assertEquals(PlanVerdict.GOOD, plan.verdict());
    assertTrue(says(plan, "droop") && says(plan, "low-end"), plan.reasons().toString());
    assertTrue(plan.wheels().wheels().stream().allMatch(wheel -> wheel.axle().equals("rear")));
    assertEquals(2, plan.wheels().wheels().size());
  }

  @Test
  void movesWhereNothingIsSafeAndSaysWhatWouldChangeThat() {
    Plan plan = LevelPlanner.plan(HeronOnSite.site(HERON, 0.5, 4));
    assertEquals(PlanVerdict.MOVE, plan.verdict());
    assertEquals(List.of(), plan.wheels().wheels());
    assertEquals(List.of(), plan.jacks());
    assertTrue(says(plan, "droop") && says(plan, "heading"), plan.reasons().toString());
    assertTrue(Headline.of(plan).startsWith("No safe plan here: "), Headline.of(plan));
  }

  @Test
  void saysTheMissingPiece() {
    Piece one = new Piece("block", PieceKind.BOARD, 38, 600, 600, 1, 4500);
    Coach coach = HeronOnSite.coach(HeronOnSite.JACKS, List.of(one), List.of());
    Plan plan = LevelPlanner.plan(HeronOnSite.site(coach, 1.2, 0));
    assertEquals(PlanVerdict.BEST_POSSIBLE, plan.verdict());
    // 38 mm on both axles is 1.11 to 1.19 deg: one board more, and the roll is gone.
    assertTrue(
        plan.reasons().stream().anyMatch(r -> r.text().equals("with 1 more of block it would do")),
        plan.reasons().toString());
  }

  @Test
  void offersPlansThatDoWithoutAKind() {
    List<Piece> pieces =
        List.of(
            new Piece("block", PieceKind.BLOCK, 38, 380, 300, 10, 4500),
            new Piece("plank", PieceKind.BOARD, 36, 900, 600, 4, 4500),
            new Piece("sheet", PieceKind.SHEET, 12, 600, 600, 12, 4500));
    Coach coach = HeronOnSite.coach(HeronOnSite.JACKS, pieces, List.of());
    Plan plan = LevelPlanner.plan(HeronOnSite.site(coach, 1.2, 0));
    assertFalse(plan.alternatives().isEmpty());
    for (Plan.Alternative other : plan.alternatives()) {
      assertTrue(plan.wheels().piecesOf(other.without()) > 0);
      assertEquals(0, other.plan().wheels().piecesOf(other.without()));
      assertTrue(other.plan().wheels().pieces() >= plan.wheels().pieces());
    }
  }

  @Test
  void levelsByBlocksAloneWithoutJacks() {
    Coach coach = HeronOnSite.coach(List.of(), HeronOnSite.PIECES, List.of());
    Plan plan = LevelPlanner.plan(HeronOnSite.site(coach, 0, 0.8));
    assertEquals(PlanVerdict.GOOD, plan.verdict());
    assertTrue(plan.wheels().wheels().stream().anyMatch(w -> w.axle().equals("front")));
    assertTrue(Math.abs(plan.after().pitchDeg()) <= 0.505);
  }

  @Test
  void everyTextIsWhole() {
    for (double roll = -3; roll <= 3; roll += 1.5) {
      for (double pitch = -3; pitch <= 3; pitch += 1.5) {
        Plan plan = LevelPlanner.plan(HeronOnSite.site(HERON, roll, pitch));
        String text = PlanText.of(plan);
        assertTrue(text.startsWith(Headline.of(plan) + "\n"));
        for (String caution : Cautions.ALL) {
          assertTrue(text.contains(caution));
        }
      }
    }
  }
}
