package io.pitchwatch.visit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import io.pitchwatch.coach.Stay;
import io.pitchwatch.coach.Surface;
import io.pitchwatch.floor.FloorState;
import io.pitchwatch.visit.VisitEvent.FloorRead;
import org.junit.jupiter.api.Test;

class VisitTest {

  private static final long SECOND = 1_000_000_000L;

  private VisitState state = VisitState.atStart(0);
  private long now;

  @Test
  void aWholeVisitGoesThroughItsPhases() {
    goes(FloorState.MOVING, 31);
    assertEquals(Phase.UNDER_WAY, state.phase());
    goes(FloorState.UNSETTLED, 2);
    assertEquals(Phase.UNDER_WAY, state.phase());
    goes(FloorState.STEADY, 2);
    assertEquals(Phase.ARRIVING, state.phase());
    goes(FloorState.STEADY, 600);
    assertEquals(Phase.PARKED, state.phase());
    goes(FloorState.MOVING, 16);
    assertEquals(Phase.LEAVING, state.phase());
    goes(FloorState.MOVING, 15);
    assertEquals(Phase.UNDER_WAY, state.phase());
  }

  @Test
  void creepingOntoBlocksIsStillArriving() {
    goes(FloorState.UNSETTLED, 20);
    goes(FloorState.MOVING, 20);
    goes(FloorState.STEADY, 300);
    assertEquals(Phase.ARRIVING, state.phase());
  }

  @Test
  void motionStartsTheClockOfRestAnew() {
    goes(FloorState.STEADY, 599);
    goes(FloorState.MOVING, 1);
    goes(FloorState.STEADY, 599);
    assertEquals(Phase.ARRIVING, state.phase());
    goes(FloorState.STEADY, 2);
    assertEquals(Phase.PARKED, state.phase());
  }

  @Test
  void aParkedCoachThatIsMerelyShakenStaysParked() {
    goes(FloorState.STEADY, 601);
    goes(FloorState.MOVING, 14);
    goes(FloorState.UNSETTLED, 10);
    assertEquals(Phase.PARKED, state.phase());
  }

  @Test
  void aCoachThatOnlyMovedALittleArrivesAgain() {
    goes(FloorState.STEADY, 601);
    goes(FloorState.MOVING, 16);
    assertEquals(Phase.LEAVING, state.phase());
    goes(FloorState.STEADY, 61);
    assertEquals(Phase.ARRIVING, state.phase());
  }

  @Test
  void anUnknownFloorChangesNothing() {
    goes(FloorState.STEADY, 5);
    VisitState before = state;
    goes(FloorState.UNKNOWN, 3600);
    assertSame(before, state);
  }

  @Test
  void whatTheOwnerSaysIsKept() {
    state = Visit.on(state, new VisitEvent.StaySet(Stay.SEASON), now);
    state = Visit.on(state, new VisitEvent.SurfaceSet(Surface.GRAVEL), now);
    assertEquals(Stay.SEASON, state.stay());
    assertEquals(Surface.GRAVEL, state.surface());
    assertSame(state, Visit.on(state, new VisitEvent.StaySet(Stay.SEASON), now));
  }

  private void goes(FloorState floor, int seconds) {
    for (int i = 0; i < seconds * 5; i++) {
      now += SECOND / 5;
      state = Visit.on(state, new FloorRead(floor), now);
    }
  }
}
