package io.pitchwatch.levelling;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.pitchwatch.attitude.Lean;
import io.pitchwatch.attitude.UpVector;
import org.junit.jupiter.api.Test;

/**
 * Turning on a plane is the apparent dip of structural geology: tan(apparent) = tan(true)·cos(angle
 * from the dip direction), the angle measured on the map. The coach turns in the plane itself,
 * where the same angle γ is atan(tan γ_map·cos β).
 */
class TurningReferenceTest {

  private static double pitchDeg(double dipDeg, double fromDipDeg) {
    double map = Math.toRadians(fromDipDeg);
    double dip = Math.toRadians(dipDeg);
    double inPlane = Math.atan2(Math.sin(map) * Math.cos(dip), Math.cos(map));
    // Nose down the slope first, then turned away from it.
    return Turning.turned(new Lean(0, dip), inPlane).pitchDeg();
  }

  /** The table of apparent dips of structural geology texts: true dip 10°, by angle from strike. */
  @Test
  void apparentDipsOfATenDegreeSlope() {
    double[] table = {1.75, 3.45, 5.04, 6.47, 7.69, 8.68, 9.41, 9.85};
    for (int i = 0; i < table.length; i++) {
      double fromStrikeDeg = 10 * (i + 1);
      assertEquals(table[i], pitchDeg(10, 90 - fromStrikeDeg), 0.005, fromStrikeDeg + " deg");
    }
  }

  /** The same texts' example: true dip 30°, 40° from the dip direction, printed 23.8. */
  @Test
  void apparentDipOfTheWorkedExample() {
    assertEquals(23.86, pitchDeg(30, 40), 0.005);
  }

  @Test
  void aHalfTurnSwapsLowForHighAndKeepsTheSlope() {
    Lean lean = Lean.ofDegrees(2.1, -0.8);
    Lean turned = Turning.turned(lean, Math.PI);
    assertEquals(-lean.rollDeg(), turned.rollDeg(), 1e-9);
    assertEquals(-lean.pitchDeg(), turned.pitchDeg(), 1e-9);
    assertEquals(UpVector.of(lean).totalRad(), UpVector.of(turned).totalRad(), 1e-12);
  }

  @Test
  void turningLeftFromNoseDownLowersTheRightSide() {
    Lean turned = Turning.turned(Lean.ofDegrees(0, 2), Math.toRadians(90));
    assertEquals(2, turned.rollDeg(), 1e-9);
    assertEquals(0, turned.pitchDeg(), 1e-9);
    assertEquals(
        "the coach stands across the 2.0 deg slope, its foot to the right", Turning.nose(turned));
  }

  @Test
  void theNoseIsNamedByWhereItPoints() {
    assertEquals("the nose points down the 2.0 deg slope", Turning.nose(Lean.ofDegrees(0, 2)));
    assertEquals("the nose points up the 2.0 deg slope", Turning.nose(Lean.ofDegrees(0, -2)));
  }
}
