package io.pitchwatch.levelling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.pitchwatch.attitude.Lean;
import io.pitchwatch.coach.Coach;
import io.pitchwatch.coach.Direction;
import io.pitchwatch.coach.JackPair;
import io.pitchwatch.coach.Pad;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The jacks after the wheels, every figure worked by hand from the formulas of docs/levelling.md.
 */
class JackPlannerTest {

  private static final Pad TIMBER = new Pad("timber", 114, 300, 300, 8);

  private static Coach heron(Pad... pads) {
    return HeronOnSite.coach(HeronOnSite.JACKS, HeronOnSite.PIECES, List.of(pads));
  }

  private static WheelPlan standing(double pitchDeg, WheelStack... wheels) {
    return new WheelPlan(List.of(wheels), Lean.ofDegrees(0, pitchDeg), 0, 0, 0);
  }

  private static WheelStack right(String axle, double liftMm) {
    return new WheelStack(axle, Direction.RIGHT, liftMm, List.of(new Layer("block", 1)), List.of());
  }

  private static JackOutcome.Planned planned(Coach coach, WheelPlan wheels) {
    return assertInstanceOf(JackOutcome.Planned.class, new JackPlanner(coach).plan(wheels));
  }

  @Test
  void bothPairsGoJustPastContactAndTheLowEndRises() {
    JackOutcome.Planned plan = planned(heron(), standing(-0.5));
    // L = 5500 − 900 = 4600 mm; 4600·tan 0.5° = 40.14 mm; the rear is low.
    assertEquals(List.of("front", "rear"), plan.moves().stream().map(JackMove::pair).toList());
    assertEquals(12, plan.moves().get(0).raiseMm(), 0.005);
    assertEquals(52.14, plan.moves().get(1).raiseMm(), 0.005);
    assertEquals(0, plan.after().pitchRad(), 0);
  }

  @Test
  void theGapGrowsOnTheSideThatStandsOnBlocks() {
    JackOutcome.Planned plan = planned(heron(), standing(0, right("front", 50), right("rear", 48)));
    // Front pair, 900 of 5600 mm behind the front axle: h = 50 − 2·900/5600 = 49.679 mm, track =
    // 1960 −
    // 130·900/5600 = 1939.11 mm; right 330 + h·(1/2 + 1500/(2·1939.11)) + 12 = 386.05,
    // left 330 + h·(1/2 − 0.38677) + 12 = 347.62.
    Sides travel = plan.moves().get(0).travelMm();
    assertEquals(386.05, travel.right(), 0.01);
    assertEquals(347.62, travel.left(), 0.01);
  }

  @Test
  void padsAreAsFewAsBringTheTravelUnderWhatTheOwnerWants() {
    JackOutcome.Planned plan = planned(heron(TIMBER), standing(0));
    // 330 + 12 = 342 mm; one pad leaves 228, two leave 114, under 150.
    assertEquals(new Sides(228, 228), plan.moves().get(0).padMm());
    assertEquals(114, plan.moves().get(1).travelMm().left(), 1e-9);
    assertEquals(List.of(), plan.remarks());
  }

  @Test
  void tooFewPadsAreSharedOutSoThatNoFootIsLeftFarOut() {
    JackOutcome.Planned plan = planned(heron(new Pad("timber", 114, 300, 300, 4)), standing(0));
    for (JackMove move : plan.moves()) {
      assertEquals(new Sides(114, 114), move.padMm());
    }
    assertEquals("travel", plan.remarks().get(0).code());
  }

  @Test
  void aPadSmallerThanTheFootIsLeftOut() {
    JackOutcome.Planned plan = planned(heron(new Pad("offcut", 50, 200, 300, 8)), standing(0));
    assertEquals(new Sides(0, 0), plan.moves().get(0).padMm());
    assertTrue(plan.remarks().stream().anyMatch(r -> r.code().equals("small-pad")));
  }

  @Test
  void noTyreHangs() {
    // The front pair's contact lifts the body over the rear pair first: springs 40 and 86.25 kg/mm,
    // 12 − 4600·12·(86.25·4700 − 40·900)/(40·900² + 86.25·4700²) = 1.48 mm. The rear pair goes
    // 12 + 4600·tan 1° + 1.48 = 93.77 mm, and the front pair comes free: about the rear pair the
    // springs' slope is 93.77·(40·5500 − 86.25·100)/(40·5500² + 86.25·100²) = 0.01637, so the rear
    // axle, 100 mm behind, rises 95.41 mm. Its droop is 80 mm.
    JackOutcome outcome = new JackPlanner(heron(TIMBER)).plan(standing(-1));
    Reason reason = assertInstanceOf(JackOutcome.Refused.class, outcome).reasons().get(0);
    assertEquals("droop", reason.code());
    assertTrue(reason.text().contains("95 mm") && reason.text().contains("80 mm"), reason.text());
  }

  @Test
  void noJackRunsPastItsStroke() {
    List<JackPair> shortened =
        List.of(
            HeronOnSite.JACKS.get(0), new JackPair("rear", -5500, 1400, 330, 350, 150, 7000, 230));
    Coach coach = HeronOnSite.coach(shortened, HeronOnSite.PIECES, List.of());
    JackOutcome outcome = new JackPlanner(coach).plan(standing(-0.3));
    // 330 + 12 + 4600·tan 0.3° = 366.1 mm, the stroke 350 mm.
    Reason reason = assertInstanceOf(JackOutcome.Refused.class, outcome).reasons().get(0);
    assertEquals("stroke", reason.code());
    assertTrue(reason.text().contains("366 mm"), reason.text());
  }

  @Test
  void noJackCarriesMoreThanItsRatedLoad() {
    List<JackPair> weak =
        List.of(
            HeronOnSite.JACKS.get(0), new JackPair("rear", -5500, 1400, 330, 400, 150, 1000, 230));
    Coach coach = HeronOnSite.coach(weak, HeronOnSite.PIECES, List.of(TIMBER));
    // The rear pair goes 12 + 40.14 + 1.48 (the front pair's contact) = 53.62 mm. Rear axle's rise:
    // 12 + 41.62·4700/4600 = 54.53 of 80 mm: 0.6816·6900 = 4703 kg off the tyres; front axle:
    // 12 − 41.62·900/4600 = 3.86 of 90 mm: 154 kg.
    // Rear pair by levers: (4703·4700 + 154·(−900))/4600 = 4775 kg, 2388 each.
    JackOutcome outcome = new JackPlanner(coach).plan(standing(-0.5));
    Reason reason = assertInstanceOf(JackOutcome.Refused.class, outcome).reasons().get(0);
    assertEquals("jack-load", reason.code());
    assertTrue(
        reason.text().contains("2387 kg") || reason.text().contains("2388 kg"), reason.text());
  }

  @Test
  void aSinglePairTurnsTheCoachAboutItsFarthestAxle() {
    Coach coach =
        HeronOnSite.coach(HeronOnSite.JACKS.subList(1, 2), HeronOnSite.PIECES, List.of(TIMBER));
    // Arm from the rear pair to the front axle: 5500 mm; 5500·tan 0.5° = 48 mm.
    JackOutcome.Planned lifts = planned(coach, standing(-0.5));
    assertEquals(48.0, lifts.moves().get(0).raiseMm(), 0.01);
    assertEquals(0, lifts.after().pitchRad(), 0);
    JackOutcome.Planned cannot = planned(coach, standing(0.5));
    assertEquals(List.of(), cannot.moves());
    assertEquals(Math.toRadians(0.5), cannot.after().pitchRad(), 1e-12);
  }
}
