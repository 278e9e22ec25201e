package io.pitchwatch.attitude;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class AttitudePropertyTest {

  private static final long SEED = 20260117;

  @Test
  void leanSurvivesTheWayThroughTheVectorAndBack() {
    for (int rollDeg = -175; rollDeg <= 175; rollDeg += 7) {
      for (int pitchDeg = -88; pitchDeg <= 88; pitchDeg += 4) {
        Lean lean = Lean.ofDegrees(rollDeg, pitchDeg);

        Lean back = UpVector.of(lean).lean();

        String where = "roll " + rollDeg + ", pitch " + pitchDeg;
        assertEquals(lean.rollRad(), back.rollRad(), 1e-12, where);
        assertEquals(lean.pitchRad(), back.pitchRad(), 1e-12, where);
      }
    }
  }

  @Test
  void thereAreTwentyFourMountingsAndEachShowsTheSameLean() {
    UpVector coachUp = UpVector.of(Lean.ofDegrees(3, -2));
    Set<Mounting> mountings = new HashSet<>();
    for (Axis x : Axis.values()) {
      for (Axis z : Axis.values()) {
        if (x.isParallelTo(z)) {
          assertThrows(IllegalArgumentException.class, () -> Mounting.ofXz(x, z));
          continue;
        }
        Mounting mounting = Mounting.ofXz(x, z);
        mountings.add(mounting);
        // What the chip measures: the components of up along its own axes as they point.
        double alongX = along(mounting.x(), coachUp);
        double alongY = along(mounting.y(), coachUp);
        double alongZ = along(mounting.z(), coachUp);
        double[] seen = new double[3];

        mounting.chipToCoach().apply(alongX, alongY, alongZ, seen);

        assertEquals(coachUp.x(), seen[0], 1e-15, mounting.toString());
        assertEquals(coachUp.y(), seen[1], 1e-15, mounting.toString());
        assertEquals(coachUp.z(), seen[2], 1e-15, mounting.toString());
        assertEquals(mounting, Mounting.ofXy(mounting.x(), mounting.y()));
        assertEquals(mounting, Mounting.ofYz(mounting.y(), mounting.z()));
      }
    }
    assertEquals(24, mountings.size());
  }

  private static double along(Axis axis, UpVector u) {
    return axis.x() * u.x() + axis.y() * u.y() + axis.z() * u.z();
  }

  @Test
  void leftHandedMountingIsRefused() {
    IllegalArgumentException refusal =
        assertThrows(
            IllegalArgumentException.class, () -> new Mounting(Axis.FORWARD, Axis.LEFT, Axis.DOWN));

    assertTrue(refusal.toString().contains("UP"), refusal.toString());
  }

  @Test
  void triadFindsAnyRotationFromTwoDirections() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int i = 0; i < 1000; i++) {
      Rotation truth = anyRotation(random);
      UpVector a = anyDirection(random);
      UpVector b = anyDirection(random);

      Rotation found = Rotation.triad(a, truth.apply(a), b, truth.apply(b));

      double errorRad = found.after(truth.inverse()).angleRad();
      // Two directions fix the turn about the first only as well as they stand apart.
      double apart = Rotation.between(a, b).angleRad();
      double tolerance = 1e-14 / Math.min(apart, Math.PI - apart) + 1e-14;
      assertEquals(0, errorRad, tolerance * 10, "seed " + SEED + ", case " + i);
    }
  }

  @Test
  void smallestRotationTakesOneDirectionToTheOther() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int i = 0; i < 1000; i++) {
      UpVector a = anyDirection(random);
      UpVector b = anyDirection(random);

      Rotation r = Rotation.between(a, b);

      UpVector hit = r.apply(a);
      String where = "seed " + SEED + ", case " + i;
      assertEquals(b.x(), hit.x(), 1e-9, where);
      assertEquals(b.y(), hit.y(), 1e-9, where);
      assertEquals(b.z(), hit.z(), 1e-9, where);
      double angle = Math.acos(Math.max(-1, a.x() * b.x() + a.y() * b.y() + a.z() * b.z()));
      assertEquals(angle, r.angleRad(), 1e-6, where);
    }
  }

  @Test
  void rotationThereAndBackChangesNothingAndRowsRebuildIt() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int i = 0; i < 200; i++) {
      Rotation r = anyRotation(random);

      assertEquals(0, r.after(r.inverse()).angleRad(), 1e-14);
      assertEquals(0, Rotation.ofRows(r.rows()).after(r.inverse()).angleRad(), 1e-14);
    }
  }

  @Test
  void mirrorOrSkewIsNoRotation() {
    assertThrows(IllegalArgumentException.class, () -> Rotation.ofRows(1, 0, 0, 0, 1, 0, 0, 0, -1));
    assertThrows(
        IllegalArgumentException.class, () -> Rotation.ofRows(1, 0.1, 0, 0, 1, 0, 0, 0, 1));
    assertThrows(IllegalArgumentException.class, () -> Rotation.ofRows(1, 0, 0));
    assertThrows(
        IllegalArgumentException.class, () -> Rotation.ofRows(Double.NaN, 0, 0, 0, 1, 0, 0, 0, 1));
  }

  static UpVector anyDirection(SplittableRandom random) {
    return UpVector.of(random.nextGaussian(), random.nextGaussian(), random.nextGaussian());
  }

  static Rotation anyRotation(SplittableRandom random) {
    return Rotation.aboutUp(random.nextDouble(-Math.PI, Math.PI))
        .after(Rotation.between(anyDirection(random), anyDirection(random)));
  }
}
