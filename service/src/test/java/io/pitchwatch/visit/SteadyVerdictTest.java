package io.pitchwatch.visit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.pitchwatch.attitude.Lean;
import io.pitchwatch.comfort.Verdict;
import io.pitchwatch.floor.FloorReading;
import io.pitchwatch.floor.FloorState;
import io.pitchwatch.mqtt.Heron;
import org.junit.jupiter.api.Test;

/** A stay allows 0.5 deg; without a fridge common practice ends near enough at 3 deg. */
class SteadyVerdictTest {

  private final SteadyVerdict verdict = new SteadyVerdict(Heron.COACH);

  private long nowNanos;

  private Verdict at(double rollDeg, Phase phase) {
    Lean lean = Lean.ofDegrees(rollDeg, 0);
    FloorReading floor = new FloorReading(FloorState.STEADY, lean, lean, 0, 0, 0);
    return verdict.round(floor, VisitState.atStart(0).with(phase), nowNanos);
  }

  private Verdict aMinuteAt(double rollDeg) {
    at(rollDeg, Phase.PARKED);
    nowNanos += 60_000_000_000L;
    return at(rollDeg, Phase.PARKED);
  }

  @Test
  void parkedItIsWorseAtOnceAndBetterOnlyOnceItHasBeenClearlyBetterForAMinute() {
    assertEquals(Verdict.GOOD, at(0.49, Phase.PARKED));
    assertEquals(Verdict.NEAR_ENOUGH, at(0.51, Phase.PARKED));
    assertEquals(Verdict.NEAR_ENOUGH, at(0.44, Phase.PARKED));
    assertEquals(Verdict.NEAR_ENOUGH, aMinuteAt(0.46));
    assertEquals(Verdict.GOOD, aMinuteAt(0.44));
    assertEquals(Verdict.GOOD, at(0.49, Phase.PARKED));
  }

  @Test
  void whoWalksToAndFroDoesNotTurnItOver() {
    at(0.51, Phase.PARKED);
    for (int i = 0; i < 100; i++) {
      nowNanos += 1_000_000_000L;
      assertEquals(Verdict.NEAR_ENOUGH, at(i % 30 == 0 ? 0.51 : 0.3, Phase.PARKED));
    }
  }

  @Test
  void theSameAtTheFridgesLimit() {
    assertEquals(Verdict.OUTSIDE, at(-3.01, Phase.PARKED));
    assertEquals(Verdict.OUTSIDE, aMinuteAt(-2.96));
    assertEquals(Verdict.NEAR_ENOUGH, aMinuteAt(-2.94));
    assertEquals(Verdict.GOOD, aMinuteAt(0));
  }

  @Test
  void arrivingItFollowsAtOnce() {
    assertEquals(Verdict.NEAR_ENOUGH, at(0.51, Phase.ARRIVING));
    assertEquals(Verdict.GOOD, at(0.49, Phase.ARRIVING));
  }

  @Test
  void whatWasUnknownIsJudgedAsItIs() {
    assertEquals(Verdict.UNKNOWN, at(Double.NaN, Phase.PARKED));
    assertEquals(Verdict.GOOD, at(0.49, Phase.PARKED));
  }
}
