package io.pitchwatch.attitude;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Angles of tilt against published equations. */
class UpVectorReferenceTest {

  /** Equations 25 and 26 of NXP AN3461 (rev 6), evaluated to nine digits apart from this code. */
  @ParameterizedTest
  @CsvSource({
    "10, 5, -0.087155743, 0.172987394, 0.981060262",
    "-3, 2, -0.034899497, -0.052304075, 0.998021197",
    "30, 20, -0.342020143, 0.469846310, 0.813797681"
  })
  void anglesAndVectorAgreeWithTheApplicationNote(
      double rollDeg, double pitchDeg, double x, double y, double z) {
    UpVector u = UpVector.of(Lean.ofDegrees(rollDeg, pitchDeg));

    assertEquals(x, u.x(), 5e-10);
    assertEquals(y, u.y(), 5e-10);
    assertEquals(z, u.z(), 5e-10);
    assertEquals(rollDeg, new UpVector(x, y, z).lean().rollDeg(), 1e-7);
    assertEquals(pitchDeg, new UpVector(x, y, z).lean().pitchDeg(), 1e-7);
  }

  /** The angle of the first vector above to the vertical, acos(u_z). */
  @Test
  void totalIsTheAngleToTheVertical() {
    assertEquals(11.168953, Math.toDegrees(UpVector.of(Lean.ofDegrees(10, 5)).totalRad()), 5e-7);
  }

  /**
   * ISO 8855:2011, 2.10 and 2.12: x forward, y left, z up, right-handed; positive roll turns the
   * right side down, positive pitch turns the front down.
   */
  @Test
  void signsAreThoseOfTheRoadVehicleStandard() {
    // Up leans towards the side that is high.
    UpVector rightSideLow = UpVector.of(0, 0.1, 1);
    UpVector frontLow = UpVector.of(-0.1, 0, 1);

    assertTrue(rightSideLow.lean().rollRad() > 0);
    assertEquals(0, rightSideLow.lean().pitchRad());
    assertTrue(frontLow.lean().pitchRad() > 0);
    assertEquals(0, frontLow.lean().rollRad());
  }

  /** 1 mg is about 0.0573 deg near level: asin(0.001); NXP AN3461 and ADI AN-1057, from memory. */
  @Test
  void oneMilligIsAboutASeventeenthOfADegree() {
    assertEquals(0.0573, UpVector.of(0, 0.001, 1).lean().rollDeg(), 5e-5);
    assertEquals(0.0573, UpVector.of(-0.001, 0, 1).lean().pitchDeg(), 5e-5);
  }
}
