package io.pitchwatch.comfort;

import static io.pitchwatch.floor.FloorState.MOVING;
import static io.pitchwatch.floor.FloorState.STEADY;
import static io.pitchwatch.floor.FloorState.UNKNOWN;
import static io.pitchwatch.floor.FloorState.UNSETTLED;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.pitchwatch.attitude.Lean;
import io.pitchwatch.coach.Fridge;
import io.pitchwatch.floor.FloorState;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class JudgementTest {

  private static final double HALF_DEG = Math.toRadians(0.5);
  private static final List<Fridge> ONE =
      List.of(new Fridge("galley", Math.toRadians(2), Math.toRadians(4), Optional.empty()));

  private static Verdict judge(FloorState state, double roll, double pitch, List<Fridge> fridges) {
    return Judgement.of(state, Lean.ofDegrees(roll, pitch), HALF_DEG, fridges);
  }

  @Test
  void withinToleranceIsGood() {
    assertEquals(Verdict.GOOD, judge(STEADY, 0.5, -0.5, ONE));
    assertEquals(Verdict.GOOD, judge(UNSETTLED, -0.2, 0.4, List.of()));
  }

  @Test
  void outsideToleranceInsideTheFridgeIsNearEnough() {
    assertEquals(Verdict.NEAR_ENOUGH, judge(STEADY, 0.51, 0, ONE));
    assertEquals(Verdict.NEAR_ENOUGH, judge(STEADY, 0, -3.9, ONE));
  }

  @Test
  void fridgePastItsLimitIsOutsideWhateverTheTolerance() {
    assertEquals(Verdict.OUTSIDE, judge(STEADY, 2.01, 0, ONE));
    Fridge strict = new Fridge("strict", 0.001, 0.001, Optional.empty());
    assertEquals(Verdict.OUTSIDE, judge(STEADY, 0.2, 0, List.of(ONE.get(0), strict)));
  }

  @Test
  void commonPracticeStandsInWhereThereIsNoFridge() {
    assertEquals(Verdict.NEAR_ENOUGH, judge(STEADY, 2.9, 5.9, List.of()));
    assertEquals(Verdict.OUTSIDE, judge(STEADY, 3.1, 0, List.of()));
    assertEquals(Verdict.OUTSIDE, judge(STEADY, 0, -6.1, List.of()));
  }

  @Test
  void motionAndIgnoranceHaveNoVerdict() {
    assertEquals(Verdict.UNKNOWN, judge(MOVING, 0, 0, ONE));
    assertEquals(Verdict.UNKNOWN, judge(UNKNOWN, 0, 0, ONE));
    assertEquals(Verdict.UNKNOWN, judge(STEADY, Double.NaN, 0, ONE));
    assertEquals(Verdict.UNKNOWN, judge(STEADY, 0, Double.NaN, List.of()));
  }
}
