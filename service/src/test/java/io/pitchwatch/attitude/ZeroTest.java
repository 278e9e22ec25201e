package io.pitchwatch.attitude;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class ZeroTest {

  private static final double ERROR_RAD = Math.toRadians(0.005);

  /** A board askew by roll 4 deg and pitch −3 deg, and turned on its plate by a yaw. */
  private static Rotation coachToBoard(double yawDeg) {
    Rotation askew = Rotation.between(UpVector.LEVEL, UpVector.of(Lean.ofDegrees(4, -3)));
    return askew.after(Rotation.aboutUp(Math.toRadians(-yawDeg)));
  }

  @Test
  void zeroTakesTheBoardsOwnTiltAway() {
    Rotation board = coachToBoard(0);
    Zero zero = new Zero(board.apply(UpVector.LEVEL), ERROR_RAD, 21, "today");
    UpVector leaning = board.apply(UpVector.of(Lean.ofDegrees(1.5, -0.7)));

    Lean seen = zero.rotation().apply(leaning).lean();

    assertEquals(1.5, seen.rollDeg(), 1e-9);
    assertEquals(-0.7, seen.pitchDeg(), 1e-9);
  }

  @Test
  void reversalFindsTheSameZeroOnAnySlope() {
    Rotation board = coachToBoard(0);
    UpVector onSlope = UpVector.of(Lean.ofDegrees(2.5, 3.5));
    UpVector turned = Rotation.aboutUp(Math.PI).apply(onSlope);

    Zero zero = Zero.reversal(board.apply(onSlope), board.apply(turned), ERROR_RAD, 21, "");

    UpVector level = board.apply(UpVector.LEVEL);
    assertEquals(0, Rotation.between(zero.up(), level).angleRad(), 1e-12);
    assertEquals(ERROR_RAD / Math.sqrt(2), zero.standardErrorRad(), 1e-15);
  }

  @Test
  void zeroFarFromTheDeclaredMountingIsRefused() {
    UpVector onItsSide = UpVector.of(0, 1, 0.1);

    IllegalArgumentException refusal =
        assertThrows(IllegalArgumentException.class, () -> new Zero(onItsSide, 0, 20, ""));

    assertTrue(refusal.toString().contains("mounting"), refusal.toString());
  }

  /** 5 deg of yaw make 0.26 deg of false roll out of 3 deg of pitch: sin 5° · 3°. */
  @Test
  void alignTakesTheFalseRollOfAYawedBoardAway() {
    Rotation board = coachToBoard(5);
    Zero zero = new Zero(board.apply(UpVector.LEVEL), 0, 20, "");
    UpVector before = zero.rotation().apply(board.apply(UpVector.of(Lean.ofDegrees(1, 0.4))));
    UpVector after = zero.rotation().apply(board.apply(UpVector.of(Lean.ofDegrees(1, -2.6))));
    UpVector steep = zero.rotation().apply(board.apply(UpVector.of(Lean.ofDegrees(0, 3))));
    assertEquals(0.26, Math.abs(steep.lean().rollDeg()), 0.005);

    Alignment found = Alignment.frontRaised(before, after, ERROR_RAD);

    Alignment.Found fix = assertInstanceOf(Alignment.Found.class, found);
    assertEquals(5, Math.toDegrees(fix.yawRad()), 0.02);
    // Two readings of 0.005 deg over a change of 3 deg.
    assertEquals(0.005 * Math.sqrt(2) / 3, fix.standardErrorRad(), 1e-4);
    assertEquals(0, fix.rotation().apply(steep).lean().rollDeg(), 0.002);
  }

  @Test
  void raisingTheRearTellsTheSameAsRaisingTheFront() {
    UpVector low = UpVector.of(Lean.ofDegrees(0.2, 0));
    UpVector high = Rotation.aboutUp(Math.toRadians(-3)).apply(UpVector.of(Lean.ofDegrees(0, 2)));

    Alignment fromRear = Alignment.rearRaised(UpVector.LEVEL, high, ERROR_RAD);

    Alignment.Found fix = assertInstanceOf(Alignment.Found.class, fromRear);
    assertEquals(3, Math.toDegrees(fix.yawRad()), 1e-9);
    assertInstanceOf(
        Alignment.WrongWay.class, Alignment.frontRaised(UpVector.LEVEL, high, ERROR_RAD));
    assertInstanceOf(Alignment.TooSmall.class, Alignment.frontRaised(low, low, ERROR_RAD));
  }
}
