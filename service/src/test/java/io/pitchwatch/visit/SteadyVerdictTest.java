package io.pitchwatch.visit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.pitchwatch.attitude.Lean;
import io.pitchwatch.coach.Stay;
import io.pitchwatch.comfort.Verdict;
import io.pitchwatch.floor.FloorReading;
import io.pitchwatch.floor.FloorState;
import io.pitchwatch.mqtt.Heron;
import org.junit.jupiter.api.Test;

/** A stay allows 0.5 deg; without a fridge common practice ends near enough at 3 deg. */
class SteadyVerdictTest {

  private static final long SECOND = 1_000_000_000L;

  private final SteadyVerdict verdict = new SteadyVerdict(Heron.COACH);

  private long nowNanos;

  private Verdict at(double rollDeg, Phase phase) {
    return at(rollDeg, FloorState.STEADY, phase, Stay.STAY);
  }

  private Verdict at(double rollDeg, FloorState floorState, Phase phase, Stay stay) {
    Lean lean = Lean.ofDegrees(rollDeg, 0);
    FloorReading floor = new FloorReading(floorState, lean, lean, 0, 0, 0);
    return verdict.round(floor, VisitState.atStart(0).with(stay).with(phase), nowNanos);
  }

  /** At a lean for so long, in rounds of a second. */
  private Verdict parkedAt(double rollDeg, int seconds) {
    Verdict last = Verdict.UNKNOWN;
    for (int i = 0; i <= seconds; i++) {
      last = at(rollDeg, Phase.PARKED);
      nowNanos += SECOND;
    }
    return last;
  }

  @Test
  void parkedItTurnsOnceTheMeanOfSomeMinutesHas() {
    assertEquals(Verdict.GOOD, parkedAt(0.49, 1));
    assertEquals(Verdict.GOOD, parkedAt(0.51, 120));
    assertEquals(Verdict.NEAR_ENOUGH, parkedAt(0.51, 300));
    assertEquals(Verdict.NEAR_ENOUGH, parkedAt(0.46, 3600), "not by enough");
    assertEquals(Verdict.NEAR_ENOUGH, parkedAt(0.44, 120));
    assertEquals(Verdict.GOOD, parkedAt(0.44, 900));
  }

  @Test
  void whatIsClearlyAnotherLeanTurnsItWithinAMinute() {
    assertEquals(Verdict.GOOD, parkedAt(0.3, 3600));
    assertEquals(Verdict.GOOD, parkedAt(0.61, 30));
    assertEquals(Verdict.NEAR_ENOUGH, parkedAt(0.61, 40));
    assertEquals(Verdict.NEAR_ENOUGH, parkedAt(0.39, 30));
    assertEquals(Verdict.GOOD, parkedAt(0.39, 40));
  }

  @Test
  void whoWalksToAndFroDoesNotTurnItOver() {
    for (int i = 0; i < 3600; i++) {
      nowNanos += SECOND;
      // Up to 0.08 deg to either side for a quarter of a minute to three minutes.
      double there = 0.08 * Math.sin(i / 15.0) * Math.cos(i / 170.0);
      assertEquals(Verdict.GOOD, at(0.48 + there, Phase.PARKED));
    }
  }

  @Test
  void whoShakesTheParkedCoachDoesNotTakeItsVerdict() {
    assertEquals(Verdict.GOOD, parkedAt(0.3, 10));
    assertEquals(Verdict.GOOD, at(2, FloorState.MOVING, Phase.PARKED, Stay.STAY));
    assertEquals(Verdict.UNKNOWN, at(2, FloorState.MOVING, Phase.LEAVING, Stay.STAY));
  }

  @Test
  void aFloorThatIsNotKnownHasNone() {
    assertEquals(Verdict.GOOD, parkedAt(0.3, 10));
    assertEquals(
        Verdict.UNKNOWN, at(Double.NaN, FloorState.UNKNOWN, Phase.PARKED, Stay.STAY), "at once");
  }

  @Test
  void aStayThatAsksForMoreIsAnsweredAtOnce() {
    assertEquals(Verdict.GOOD, parkedAt(0.3, 10));
    Verdict season = at(0.3, FloorState.STEADY, Phase.PARKED, Stay.SEASON);
    assertEquals(Verdict.NEAR_ENOUGH, season);
  }

  @Test
  void pastTheFridgesLimitItTurnsAtOnce() {
    assertEquals(Verdict.NEAR_ENOUGH, parkedAt(-2.99, 10));
    assertEquals(Verdict.OUTSIDE, at(-3.01, Phase.PARKED));
    assertEquals(Verdict.OUTSIDE, parkedAt(-2.96, 3600));
    assertEquals(Verdict.NEAR_ENOUGH, parkedAt(-2.94, 900));
    assertEquals(Verdict.GOOD, parkedAt(0, 61));
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
