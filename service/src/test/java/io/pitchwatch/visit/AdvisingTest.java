package io.pitchwatch.visit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.pitchwatch.attitude.Lean;
import io.pitchwatch.coach.Coach;
import io.pitchwatch.coach.Stay;
import io.pitchwatch.floor.FloorReading;
import io.pitchwatch.floor.FloorState;
import io.pitchwatch.levelling.Site;
import io.pitchwatch.mqtt.Heron;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** When a plan is asked for, and how long its figures stand. */
class AdvisingTest {

  private static final Lean NONE = new Lean(Double.NaN, Double.NaN);
  private static final String WAITING = "Waiting for the coach to stand still: then it is planned";

  private final Coach coach = Heron.COACH;
  private final Advising advising = new Advising(coach);
  private VisitState state = VisitState.atStart(0);

  private Advice moving(double rollDeg) {
    Lean live = Lean.ofDegrees(rollDeg, 0);
    return round(new FloorReading(FloorState.MOVING, live, NONE, 0.001, 0.001, 0));
  }

  private Advice justBegun(double rollDeg) {
    Lean live = Lean.ofDegrees(rollDeg, -7);
    return round(new FloorReading(FloorState.UNSETTLED, live, NONE, Double.NaN, 0.001, 0));
  }

  private Advice unsettled(double rollDeg, double errorDeg) {
    return standing(FloorState.UNSETTLED, rollDeg, errorDeg);
  }

  private Advice steady(double rollDeg, double errorDeg) {
    return standing(FloorState.STEADY, rollDeg, errorDeg);
  }

  private Advice standing(FloorState floor, double rollDeg, double errorDeg) {
    return round(reading(floor, rollDeg, errorDeg));
  }

  /** Steady, and all that is not known is what the zero shares with every reading. */
  private Advice badlyZeroed(double rollDeg, double errorDeg) {
    FloorReading floor = reading(FloorState.STEADY, rollDeg, 0.01);
    return round(floor.corrected(lean -> lean, Math.toRadians(errorDeg)));
  }

  private static FloorReading reading(FloorState floor, double rollDeg, double errorDeg) {
    Lean lean = Lean.ofDegrees(rollDeg, 0.1);
    return new FloorReading(floor, lean, lean, Math.toRadians(errorDeg), 0.001, 0);
  }

  /** A round, and the plan that it asks for, if any. */
  private Advice round(FloorReading floor) {
    Advice advice = advising.round(floor, state);
    Optional<Site> wanted = advising.toPlan();
    if (wanted.isEmpty()) {
      return advice;
    }
    advising.take(Planned.of(wanted.get()));
    return advising.round(floor, state);
  }

  private static double plannedDeg(Advice advice) {
    return advice.planned().orElseThrow().plan().site().lean().rollDeg();
  }

  @Test
  void nothingIsPlannedOnLeansMadeByBraking() {
    for (Advice advice : new Advice[] {justBegun(2), moving(4), moving(-3)}) {
      assertEquals(new Advice(Optional.empty(), WAITING), advice);
    }
  }

  @Test
  void underWayThereIsNothingToWaitFor() {
    state = state.with(Phase.UNDER_WAY);
    assertEquals(Advice.NONE, moving(2));
  }

  @Test
  void aCoachThatStandsIsPlannedForBeforeItsFloorIsSteady() {
    assertEquals(2, plannedDeg(unsettled(2, 0.06)), 1e-9);
  }

  @Test
  void aPlanThatTakesLongIsSaidToBeWorkedOut() {
    FloorReading stands = reading(FloorState.STEADY, 2, 0.01);
    assertEquals(WAITING, advising.round(stands, state).next());
    Site wanted = advising.toPlan().orElseThrow();
    assertEquals("The coach stands: working out the plan", advising.round(stands, state).next());
    advising.take(Planned.of(wanted));
    assertTrue(advising.round(stands, state).planned().isPresent());
  }

  @Test
  void aLeanThatIsHardlyKnownWaitsUntilTheFloorIsSteady() {
    assertEquals(WAITING, unsettled(2, 0.2).next());
    assertEquals(2, plannedDeg(steady(2, 0.2)), 1e-9, "as good as it gets, with a sensor unzeroed");
  }

  @Test
  void aSeasonAsksForABetterFigureThanANight() {
    state = state.with(Stay.SEASON);
    assertEquals(WAITING, unsettled(2, 0.08).next());
    state = state.with(Stay.OVERNIGHT);
    assertTrue(unsettled(2, 0.08).planned().isPresent());
  }

  @Test
  void figuresStandAsLongAsTheyDifferByLessThanIsStatedOfThem() {
    Advice first = unsettled(2, 0.06);
    for (double rollDeg : new double[] {2.1, 1.9, 2.05, 2.11, 1.89}) {
      assertEquals(first.planned(), unsettled(rollDeg, 0.06).planned(), rollDeg + " deg");
    }
    assertEquals(first.planned(), steady(2.09, 0.02).planned());
  }

  @Test
  void aLeanThatDiffersByMoreIsPlannedAnewOnceAndThenStands() {
    unsettled(2, 0.06);
    Advice second = steady(2.15, 0.02);
    assertEquals(2.15, plannedDeg(second), 1e-9);
    assertEquals(second.planned(), steady(2.4, 0.01).planned(), "a jack moves it, not the ground");
  }

  @Test
  void anErrorOfTheZeroHidesNoOtherSpot() {
    badlyZeroed(2, 0.8);
    moving(3);
    assertEquals(2.5, plannedDeg(badlyZeroed(2.5, 0.8)), 1e-9);
  }

  @Test
  void whatToDoNowFollowsTheFloorWhileThePlanStands() {
    Advice first = steady(2, 0.01);
    state = state.with(Heron.laid());
    Advice climbing = moving(1.5);
    assertEquals(first.planned(), climbing.planned());
    assertNotEquals(climbing.next(), moving(0.8).next());
  }

  @Test
  void anotherZeroMakesAnotherPlan() {
    steady(2, 0.01);
    advising.forget();
    assertEquals(0, plannedDeg(steady(0, 0.01)), 1e-9);
  }
}
