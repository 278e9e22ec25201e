package io.pitchwatch.comfort;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.pitchwatch.attitude.Lean;
import io.pitchwatch.attitude.UpVector;
import io.pitchwatch.coach.Direction;
import io.pitchwatch.coach.Fridge;
import java.util.Optional;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class FridgeLimitsTest {

  private static Fridge fridge(@Nullable Direction faces) {
    return new Fridge("galley", Math.toRadians(3), Math.toRadians(6), Optional.ofNullable(faces));
  }

  private static double marginDeg(@Nullable Direction faces, double rollDeg, double pitchDeg) {
    return Math.toDegrees(FridgeLimits.marginRad(fridge(faces), Lean.ofDegrees(rollDeg, pitchDeg)));
  }

  @Test
  void levelFloorLeavesTheNearerLimitWhole() {
    assertEquals(3, marginDeg(null, 0, 0), 1e-12);
  }

  @Test
  void alongTheCoachRollRunsAgainstSideToSide() {
    assertEquals(0.5, marginDeg(null, 2.5, 3), 1e-12);
    assertEquals(0.5, marginDeg(null, -2.5, -3), 1e-12);
    assertEquals(-0.5, marginDeg(null, 0, 6.5), 1e-12);
    assertEquals(0.5, marginDeg(Direction.REAR, 2.5, -3), 1e-12);
  }

  @Test
  void facingAWallTurnsTheLimits() {
    assertEquals(-1, marginDeg(Direction.LEFT, 0, 4), 1e-12);
    assertEquals(-1, marginDeg(Direction.RIGHT, 0, -4), 1e-12);
    assertEquals(2, marginDeg(Direction.RIGHT, 4, 0), 1e-12);
  }

  /** The appliance's own roll and pitch, by turning the vector and asking it. */
  @Test
  void turnedLimitsAreExactAtAnyLean() {
    long seed = 20260101;
    SplittableRandom random = new SplittableRandom(seed);
    for (int i = 0; i < 1000; i++) {
      UpVector up =
          UpVector.of(Lean.ofDegrees(random.nextDouble(-40, 40), random.nextDouble(-40, 40)));
      Lean own = new UpVector(up.y(), -up.x(), up.z()).lean();
      double expected =
          Math.min(
              Math.toRadians(3) - Math.abs(own.rollRad()),
              Math.toRadians(6) - Math.abs(own.pitchRad()));
      Fridge fridge = fridge(Direction.LEFT);
      assertEquals(expected, FridgeLimits.marginRad(fridge, up), 1e-12, "seed " + seed);
      assertEquals(expected, FridgeLimits.marginRad(fridge, up.lean()), 1e-12, "seed " + seed);
    }
  }

  @Test
  void limitsByTheCoachsAxesFollowTheFacing() {
    assertEquals(Math.toRadians(3), FridgeLimits.rollLimitRad(fridge(null)));
    assertEquals(Math.toRadians(6), FridgeLimits.rollLimitRad(fridge(Direction.LEFT)));
    assertEquals(Math.toRadians(3), FridgeLimits.pitchLimitRad(fridge(Direction.RIGHT)));
    assertEquals(Math.toRadians(6), FridgeLimits.pitchLimitRad(fridge(Direction.FRONT)));
  }

  @Test
  void unknownLeanHasNoMargin() {
    assertTrue(Double.isNaN(marginDeg(null, Double.NaN, 0)));
    assertTrue(Double.isNaN(marginDeg(Direction.LEFT, 0, Double.NaN)));
  }
}
