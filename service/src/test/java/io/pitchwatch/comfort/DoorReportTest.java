package io.pitchwatch.comfort;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.pitchwatch.attitude.Lean;
import io.pitchwatch.attitude.UpVector;
import io.pitchwatch.coach.Direction;
import io.pitchwatch.coach.Door;
import io.pitchwatch.comfort.DoorMotion.End;
import org.junit.jupiter.api.Test;

class DoorReportTest {

  /** Shut, the leaf points left; open by a right angle, it points to the rear. */
  private static final Door WASHROOM = door(100, 0.4);

  private static Door door(double swingDeg, double holdsDeg) {
    return new Door(
        "washroom",
        Direction.LEFT,
        Direction.REAR,
        Math.toRadians(swingDeg),
        Math.toRadians(holdsDeg),
        560);
  }

  private static DoorReport on(Door door, double rollDeg, double pitchDeg) {
    return DoorReport.of(door, UpVector.of(Lean.ofDegrees(rollDeg, pitchDeg)));
  }

  @Test
  void levelFloorMovesNoDoor() {
    DoorReport report = on(WASHROOM, 0, 0);
    assertEquals(DoorTendency.STAYS, report.tendency());
    assertTrue(Double.isNaN(report.restRad()));
    assertEquals(0, report.letGo().seconds());
  }

  @Test
  void leanBelowTheHoldMovesNoDoor() {
    assertEquals(DoorTendency.STAYS, on(WASHROOM, 0.27, 0.27).tendency());
  }

  @Test
  void frontLowDriftsShutTheLeafThatOpensToTheRear() {
    DoorReport report = on(WASHROOM, 0, 1);
    assertEquals(DoorTendency.DRIFTS_SHUT, report.tendency());
    assertEquals(End.SHUT, report.letGo().end());
  }

  @Test
  void rearLowDriftsItOpenIntoTheWalkway() {
    // At 100 deg it would lean back from its stop, were it not for friction.
    assertEquals(DoorTendency.DRIFTS_OPEN, on(WASHROOM, 0, -1).tendency());
    assertEquals(Math.PI / 2, on(WASHROOM, 0, -1).restRad(), 1e-12);
  }

  @Test
  void highOnTheShutSideDriftsItOpenWideAndLowOnItDriftsItShut() {
    // Left high: the leaf falls away from left, towards right, by the rear.
    assertEquals(DoorTendency.DRIFTS_OPEN, on(WASHROOM, 1, 0).tendency());
    assertEquals(Math.toRadians(100), on(WASHROOM, 1, 0).restRad(), 1e-12);
    assertEquals(DoorTendency.DRIFTS_SHUT, on(WASHROOM, -1, 0).tendency());
    assertEquals(0, on(WASHROOM, -1, 0).restRad(), 1e-12);
  }

  @Test
  void watershedInsideTheSwingMakesItGoEitherWay() {
    // Front low shuts it near the frame, left high opens it further out.
    DoorReport report = on(WASHROOM, 2, 1.2);
    assertEquals(DoorTendency.EITHER, report.tendency());
    assertTrue(Double.isNaN(report.restRad()));
  }

  @Test
  void restingAngleSwapsWithTheHand() {
    Door other =
        new Door(
            "hall", Direction.RIGHT, Direction.REAR, Math.toRadians(120), Math.toRadians(0.1), 700);
    assertEquals(on(door(120, 0.1), 0.5, -1).restRad(), on(other, -0.5, -1).restRad(), 1e-12);
  }

  @Test
  void motionAgreesWithTheEnergyOfTheFall() {
    // (g 3/2w) times the integral of k and hold from stop to frame is half the speed squared.
    UpVector up = UpVector.of(Lean.ofDegrees(0, 1.5));
    double from = Math.toRadians(45);
    DoorMotion motion = DoorReport.letGo(WASHROOM, up, from);
    double fall = -up.x() * Math.sin(from) - Math.sin(WASHROOM.holdsRad()) * from;
    double speed = Math.sqrt(2 * 1.5 * 9.80665 / 0.56 * fall);
    assertEquals(End.SHUT, motion.end());
    assertEquals(speed * 0.56, motion.edgeSpeedMps(), 1e-9);
    assertEquals(motion.edgeSpeedMps() < 0.3, motion.gentle());
  }

  @Test
  void frictionStopsALeafBetweenFrameAndStop() {
    DoorMotion motion = DoorReport.letGo(door(170, 0.4), UpVector.of(Lean.ofDegrees(0, -1)), 0);
    assertEquals(End.RESTS, motion.end());
    assertEquals(0, motion.edgeSpeedMps());
    assertEquals(90, Math.toDegrees(motion.openRad()), 30);
    assertTrue(motion.seconds() > 1);
  }

  @Test
  void leafWithoutFrictionIsStillSwingingWhenTheTimeIsOver() {
    DoorMotion motion = DoorReport.letGo(door(179, 0), UpVector.of(Lean.ofDegrees(0, -1)), 0.5);
    assertEquals(End.SWINGS, motion.end());
  }

  @Test
  void leafPressedOnItsFrameDoesNotMove() {
    DoorMotion motion = DoorReport.letGo(WASHROOM, UpVector.of(Lean.ofDegrees(0, 2)), 0);
    assertEquals(new DoorMotion(End.SHUT, 0, 0, 0), motion);
  }

  @Test
  void wrongArgumentsAreNamed() {
    UpVector lost = new UpVector(Double.NaN, 0, 1);
    assertThrows(IllegalArgumentException.class, () -> DoorReport.of(WASHROOM, lost));
    assertThrows(
        IllegalArgumentException.class, () -> DoorReport.letGo(WASHROOM, UpVector.LEVEL, 2));
    assertThrows(
        IllegalArgumentException.class,
        () -> DoorReport.letGo(WASHROOM, UpVector.LEVEL, Double.NaN));
  }

  @Test
  void gentleIsBelowThreeTenthsOfAMetreASecond() {
    assertTrue(new DoorMotion(End.SHUT, 0, 1, 0.29).gentle());
    assertFalse(new DoorMotion(End.SHUT, 0, 1, 0.3).gentle());
  }
}
