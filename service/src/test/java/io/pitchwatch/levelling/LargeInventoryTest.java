package io.pitchwatch.levelling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.pitchwatch.coach.Coach;
import io.pitchwatch.coach.Piece;
import io.pitchwatch.coach.PieceKind;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** More on board than can be compared stack by stack: a config allows 16 kinds of 200 pieces. */
class LargeInventoryTest {

  /** Without bounds the search for these ran for minutes, filled any heap, or never began. */
  private static final int PATIENCE_S = 120;

  private static Coach coach(int kinds, int count, double thinnestMm, double apartMm) {
    List<Piece> pieces = new ArrayList<>();
    for (int i = 0; i < kinds; i++) {
      PieceKind kind = i % 3 == 0 ? PieceKind.BLOCK : PieceKind.BOARD;
      int widthMm = 150 * (1 + i % 3);
      double thicknessMm = thinnestMm + i * apartMm;
      pieces.add(new Piece("p" + i, kind, thicknessMm, 600, widthMm, count, 100_000));
    }
    return HeronOnSite.coach(List.of(), pieces, List.of());
  }

  private static WheelPlan safePlan(Coach coach, double rollDeg, double pitchDeg) {
    Site site = HeronOnSite.site(coach, rollDeg, pitchDeg);
    WheelPlan plan = WheelsAlone.plan(site);
    assertEquals(List.of(), PlanInspection.faults(site, plan));
    return plan;
  }

  @Test
  @Timeout(PATIENCE_S)
  void stillGivesAPlanInsideTheToleranceWhereThereAreMany() {
    assertEquals(0, safePlan(coach(16, 200, 5, 2.1), 3.1, -0.9).excessHundredths());
  }

  @Test
  @Timeout(PATIENCE_S)
  void givesASafePlanWhereNothingLevelsTheCoach() {
    WheelPlan plan = safePlan(coach(8, 25, 5.3, 4.1), 4.3, -1.7);
    assertTrue(plan.excessHundredths() < 420, plan.toString());
    assertFalse(plan.proven(), "not everything was compared");
  }

  @Test
  @Timeout(PATIENCE_S)
  void saysThatThereMayBeABetterOne() {
    Plan plan = LevelPlanner.planOnly(HeronOnSite.site(coach(8, 25, 5.3, 4.1), 4.3, -1.7));
    List<String> reasons = plan.reasons().stream().map(Reason::text).toList();
    assertTrue(
        reasons.contains(
            "so much is on board that not everything could be compared: there may be a better"
                + " plan"),
        reasons.toString());
    assertTrue(
        reasons.stream().noneMatch(text -> text.contains("allows no less")), reasons.toString());
    assertTrue(Headline.of(plan).endsWith("(the best that was found)"), Headline.of(plan));
  }

  @Test
  @Timeout(PATIENCE_S)
  void ofSheetsTooThinToCountUsesTheThickerOnes() {
    WheelPlan plan = safePlan(coach(16, 200, 0.5, 0.13), 1.5, 0);
    assertTrue(plan.pieces() > 0, plan.toString());
  }
}
