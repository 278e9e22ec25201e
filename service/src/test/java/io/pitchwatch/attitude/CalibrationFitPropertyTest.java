package io.pitchwatch.attitude;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.pitchwatch.attitude.CalibrationOutcome.Clustered;
import io.pitchwatch.attitude.CalibrationOutcome.Fitted;
import io.pitchwatch.attitude.CalibrationOutcome.Misfit;
import io.pitchwatch.attitude.CalibrationOutcome.NoFit;
import io.pitchwatch.attitude.CalibrationOutcome.TooFew;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Chips with any bias, scale and misalignment, drawn by seed. */
class CalibrationFitPropertyTest {

  private static final long FIRST_SEED = Long.getLong("pitchwatch.seed", 1);
  private static final int SEEDS = 300;
  private static final double MILLI = 1e-3;

  private static CalibrationOutcome fit(List<Pose> poses) {
    return CalibrationFit.of(poses, Calibration.NONE, "");
  }

  private static double[] unknowns(Triad a, Triad b, Triad c) {
    return new double[] {a.x(), a.y(), a.z(), b.x(), b.y(), b.z(), c.x(), c.y(), c.z()};
  }

  @Test
  void truthIsFoundWithinTheStatedErrors() {
    int all = 0;
    int within = 0;
    for (long seed = FIRST_SEED; seed < FIRST_SEED + SEEDS; seed++) {
      Turntable table = new Turntable(seed);
      CalibrationOutcome outcome = fit(table.poses(2, MILLI));
      Calibration found = assertInstanceOf(Fitted.class, outcome, "seed " + seed).calibration();
      CalibrationQuality q = found.quality();
      double[] is = unknowns(found.scale(), found.misalignment(), found.bias());
      double[] truly =
          unknowns(table.truth.scale(), table.truth.misalignment(), table.truth.bias());
      double[] error = unknowns(q.scaleError(), q.misalignmentError(), q.biasError());
      for (int i = 0; i < 9; i++) {
        all++;
        within += Math.abs(is[i] - truly[i]) < 2 * error[i] ? 1 : 0;
      }
      assertTrue(q.afterG() < 2 * MILLI && q.beforeG() > 5 * q.afterG(), "seed " + seed + q);
    }
    // The poses' own errors are known here, so that chance can only make the stated ones larger.
    assertEquals(0.955, within / (double) all, 0.02, "share within two standard errors");
  }

  @Test
  void withoutNoiseTheTruthIsFoundExactly() {
    for (long seed = FIRST_SEED; seed < FIRST_SEED + 50; seed++) {
      Turntable table = new Turntable(seed);
      Calibration found = assertInstanceOf(Fitted.class, fit(table.poses(3, 0))).calibration();
      double[] is = unknowns(found.scale(), found.misalignment(), found.bias());
      double[] truly =
          unknowns(table.truth.scale(), table.truth.misalignment(), table.truth.bias());
      for (int i = 0; i < 9; i++) {
        assertEquals(truly[i], is[i], 1e-7, "seed " + seed + ", unknown " + i);
      }
    }
  }

  @Test
  void elevenPosesAreTooFew() {
    List<Pose> poses = new Turntable(1).poses(2, MILLI).subList(0, 11);
    assertEquals(new TooFew(11, 12), fit(poses));
  }

  @Test
  void posesOnTheUpperHalfAloneAreRefusedAndTheMissingWayIsNamed() {
    Turntable table = new Turntable(FIRST_SEED);
    List<Pose> poses = new ArrayList<>();
    for (Facing facing : Facing.ALL) {
      if (facing.z() > 0) {
        poses.add(table.pose(Turntable.way(facing), 0.05, MILLI));
        poses.add(table.pose(Turntable.way(facing), 0.05, MILLI));
      }
    }
    Clustered clustered = assertInstanceOf(Clustered.class, fit(poses));
    assertEquals(new Facing(0, 0, -1), clustered.missing());
    assertEquals(135, Math.toDegrees(clustered.gapRad()), 15);
  }

  @Test
  void sixFacesManyTimesSayNothingOfMisalignmentAndAreRefused() {
    Turntable table = new Turntable(FIRST_SEED);
    List<Pose> poses = new ArrayList<>();
    for (int round = 0; round < 5; round++) {
      for (Facing facing : Facing.ALL.subList(0, 6)) {
        poses.add(table.pose(Turntable.way(facing), 0.01, MILLI));
      }
    }
    assertInstanceOf(Clustered.class, fit(poses));
  }

  @Test
  void onePoseThatMovedIsNamed() {
    int named = 0;
    for (long seed = FIRST_SEED; seed < FIRST_SEED + 100; seed++) {
      Turntable table = new Turntable(seed);
      List<Pose> poses = table.poses(2, MILLI / 2);
      int moved = (int) (seed % poses.size());
      Pose true1 = poses.get(moved);
      double further = 1.08;
      poses.set(
          moved,
          new Pose(true1.x() * further, true1.y() * further, true1.z() * further, MILLI / 2));
      named += fit(poses) instanceof Misfit misfit && misfit.pose() == moved ? 1 : 0;
    }
    assertTrue(named >= 95, "of 100 moved poses " + named + " were named");
  }

  @Test
  void pointsThatAreAllTheSameAreNoChips() {
    List<Pose> poses = new ArrayList<>();
    for (int i = 0; i < 20; i++) {
      poses.add(new Pose(0.1, 0.2, 0.9, MILLI));
    }
    CalibrationOutcome outcome = fit(poses);
    assertTrue(outcome instanceof NoFit || outcome instanceof Clustered, outcome.toString());
  }

  @Test
  void applyingTheTruthUndoesTheChip() {
    Turntable table = new Turntable(FIRST_SEED);
    double[] raw = table.raw(0.3, -0.5, 0.8);
    double[] out = new double[3];
    table.truth.apply(raw[0], raw[1], raw[2], out);
    assertEquals(0.3, out[0], 1e-12);
    assertEquals(-0.5, out[1], 1e-12);
    assertEquals(0.8, out[2], 1e-12);
  }
}
