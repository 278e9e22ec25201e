package io.pitchwatch.levelling;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.pitchwatch.attitude.Lean;
import io.pitchwatch.coach.Coach;
import io.pitchwatch.coach.Pad;
import java.util.List;
import org.junit.jupiter.api.Test;

class NextStepTest {

  private static final Coach HERON =
      HeronOnSite.coach(
          HeronOnSite.JACKS, HeronOnSite.PIECES, List.of(new Pad("timber", 114, 300, 300, 8)));
  private static final Plan PLAN = LevelPlanner.planOnly(HeronOnSite.site(HERON, 1.5, -0.4));
  private static final Lean GOAL = PLAN.wheels().after();

  /** Between both tracks, by the shares of load: 1/Σ(w/t). */
  private static final double TRACK_MM = 1 / (3600 / 10500.0 / 1960 + 6900 / 10500.0 / 1830);

  private static String next(double rollDeg, double pitchDeg, boolean laid) {
    return next(rollDeg, pitchDeg, laid, false);
  }

  private static String next(double rollDeg, double pitchDeg, boolean laid, boolean wasUp) {
    Lean lean = Lean.ofDegrees(rollDeg, pitchDeg);
    return NextStep.of(PLAN, GOAL, new NextStep.Standing(lean, Math.toRadians(0.01), laid, wasUp));
  }

  @Test
  void firstThePiecesAreLaid() {
    assertEquals(
        "Lay the pieces in front of the wheels, say that they are laid, then drive on",
        next(1.5, -0.4, false));
  }

  @Test
  void theClimbCountsDown() {
    double wholeDeg = 1.5 - GOAL.rollDeg();
    long wholeMm = Math.round(TRACK_MM * Math.tan(Math.toRadians(wholeDeg)));
    assertEquals("Drive on: " + wholeMm + " mm to go on the right side", next(1.5, -0.4, true));
    long halfMm = Math.round(TRACK_MM * Math.tan(Math.toRadians(wholeDeg / 2)));
    assertEquals(
        "Right side: " + halfMm + " mm to go", next(GOAL.rollDeg() + wholeDeg / 2, -0.4, true));
  }

  @Test
  void whoeverIsUpIsTold() {
    // 4600·tan 0.4° = 32 mm.
    assertEquals(
        "Stop, you are up. Next the jacks: 32 mm to go on the rear pair",
        next(GOAL.rollDeg(), -0.4, true));
    assertEquals(
        "Stop, you are up. Nothing more to do: the floor is as planned",
        next(GOAL.rollDeg(), 0, true));
  }

  @Test
  void whoeverIsHigherThanPlannedLooks() {
    assertEquals(
        "Right side 33 mm higher than planned: look at what the wheels stand on",
        next(GOAL.rollDeg() - 1, -0.4, true));
  }

  /** Bodies and soil give: what came out better than planned is no reason to look under tyres. */
  @Test
  void whoeverIsHigherThanPlannedOnALevelFloorGoesOn() {
    double pastDeg = Math.min(0.45, GOAL.rollDeg() + 0.45);
    assertEquals(
        "Stop, you are up. Next the jacks: 32 mm to go on the rear pair",
        next(GOAL.rollDeg() - pastDeg, -0.4, true));
  }

  @Test
  void whoeverWasUpIsNotSentOnByNoise() {
    double backDeg = GOAL.rollDeg() + 0.15;
    assertEquals("Right side: 5 mm to go", next(backDeg, -0.4, true));
    assertEquals(
        "Stop, you are up. Next the jacks: 32 mm to go on the rear pair",
        next(backDeg, -0.4, true, true));
    assertEquals("Right side: 8 mm to go", next(GOAL.rollDeg() + 0.25, -0.4, true, true));
  }
}
