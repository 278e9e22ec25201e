package io.pitchwatch.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.pitchwatch.attitude.Calibration;
import io.pitchwatch.attitude.CalibrationQuality;
import io.pitchwatch.attitude.CalibrationText;
import io.pitchwatch.attitude.Facing;
import io.pitchwatch.attitude.PoseGuide;
import io.pitchwatch.attitude.SensorSetup;
import io.pitchwatch.attitude.Triad;
import io.pitchwatch.attitude.UpVector;
import io.pitchwatch.floor.FloorState;
import io.pitchwatch.visit.Guide;
import io.pitchwatch.visit.Health;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A whole calibration through the registers of an ADXL355 whose bias, scale and misalignment are
 * known: turned by hand from pose to pose, shaking on the way.
 */
class CalibrateSimulationTest {

  private static final double RATE_HZ = 125;
  private static final double NOISE_G = 25e-6 * Math.sqrt(RATE_HZ / 2);
  private static final double MILLI = 1e-3;

  private static final Calibration TRUTH =
      new Calibration(
          new Triad(1.02, 0.985, 1.01),
          new Triad(-0.01, 0.012, 0.006),
          new Triad(0.03, -0.025, 0.06),
          CalibrationQuality.NONE,
          "");

  @TempDir Path directory;

  private final StringBuilder rows = new StringBuilder("t_s,ax_g,ay_g,az_g,temp_c\n");
  private final SplittableRandom random = new SplittableRandom(8);
  private int written;

  private double gaussian() {
    double u = 1 - random.nextDouble();
    return Math.sqrt(-2 * Math.log(u)) * Math.cos(2 * Math.PI * random.nextDouble());
  }

  /** Holds the chip for a while; some of its ways shake. */
  private void held(UpVector up, double seconds, double shake) {
    for (int i = 0; i < seconds * RATE_HZ; i++) {
      double s = written / RATE_HZ;
      UpVector now =
          UpVector.of(
              up.x() + shake * Math.sin(17 * s),
              up.y() + shake * Math.sin(13 * s + 1),
              up.z() + shake * Math.sin(11 * s + 2));
      double sy = now.y() - TRUTH.misalignment().x() * now.x();
      double sz = now.z() - TRUTH.misalignment().y() * now.x() - TRUTH.misalignment().z() * sy;
      rows.append(
          String.format(
              Locale.ROOT,
              "%.4f,%.6f,%.6f,%.6f,21%n",
              s,
              now.x() / TRUTH.scale().x() + TRUTH.bias().x() + NOISE_G * gaussian(),
              sy / TRUTH.scale().y() + TRUTH.bias().y() + NOISE_G * gaussian(),
              sz / TRUTH.scale().z() + TRUTH.bias().z() + NOISE_G * gaussian()));
      written++;
    }
  }

  private void allPoses() {
    for (Facing facing : Facing.ALL) {
      if (facing.arrows() < 3) {
        UpVector up = UpVector.of(facing.x() + 0.05, facing.y() - 0.04, facing.z() + 0.03);
        held(up, 1.5, 0.15);
        held(up, 3, 0);
      }
    }
  }

  private VirtualBench bench() throws IOException {
    Path csv = Files.writeString(directory.resolve("poses.csv"), rows);
    return new VirtualBench(
        directory,
        "adxl355",
        "seed = 1\n[sensor]\nchip = \"adxl355\"\nrecording = \"" + csv + "\"\n");
  }

  private static BenchPost post(VirtualBench bench) {
    return new BenchPost(bench.bench(), new PrintWriter(new StringWriter()));
  }

  private static void assertNear(Triad truth, Triad found, double tolerance, String what) {
    assertEquals(truth.x(), found.x(), tolerance, what + " x");
    assertEquals(truth.y(), found.y(), tolerance, what + " y");
    assertEquals(truth.z(), found.z(), tolerance, what + " z");
  }

  @Test
  void eighteenPosesFindTheTruthAndItIsKeptAndAppliedOnlyOnceAccepted() throws Exception {
    allPoses();
    try (VirtualBench bench = bench();
        BenchPost post = post(bench)) {
      assertTrue(post.upkeep().calibrate(Optional.empty(), "2026-05-01T10:00:00Z").done());
      PoseGuide guide = post.upkeep().poses().orElseThrow();
      double endS = written / RATE_HZ;
      post.until(nowNanos -> guide.next().isEmpty() || nowNanos > endS * 1e9);
      assertEquals(18, guide.taken(), guide.said());
      assertEquals(SensorSetup.NONE, post.post().setup(), "the old stays until accepted");
      assertTrue(post.upkeep().guide().said().contains("|a| missed 1 g by "));
      assertTrue(post.upkeep().accept().done());
      Calibration found = post.post().setup().calibration();
      System.out.println(CalibrationText.figures(found) + CalibrationText.improvement(found));
      assertNear(TRUTH.bias(), found.bias(), 0.1 * MILLI, "bias");
      assertNear(TRUTH.scale(), found.scale(), 0.2 * MILLI, "scale");
      assertNear(TRUTH.misalignment(), found.misalignment(), 0.3 * MILLI, "misalignment");
      assertEquals("2026-05-01T10:00:00Z", found.date());
      assertTrue(found.quality().beforeG() > 30 * found.quality().afterG(), found.toString());
      assertTrue(post.upkeep().undo(Optional.empty()).done());
      assertEquals(SensorSetup.NONE, post.post().setup());
    }
  }

  @Test
  void floorIsUnknownWhileTheSensorIsInTheHand() throws Exception {
    held(UpVector.LEVEL, 60, 0);
    try (VirtualBench bench = bench();
        BenchPost post = post(bench)) {
      post.until(nowNanos -> nowNanos > 10e9);
      assertEquals(FloorState.STEADY, post.post().reading(post.nowNanos()).state());
      post.upkeep().calibrate(Optional.empty(), "");
      post.until(nowNanos -> nowNanos > 20e9);
      assertEquals(FloorState.UNKNOWN, post.post().reading(post.nowNanos()).state());
      assertEquals(Health.DOUBTFUL, post.post().report(post.nowNanos()).health());
      assertEquals(Guide.Task.CALIBRATE, post.upkeep().guide().task());
      String said = post.upkeep().guide().said();
      assertEquals("pose 1 taken; 1 pose; at least 12 are needed", said);
      assertFalse(post.upkeep().accept().done());
      assertTrue(post.upkeep().cancel(Guide.Task.CALIBRATE).done());
      post.until(nowNanos -> nowNanos > 30e9);
      assertEquals(FloorState.STEADY, post.post().reading(post.nowNanos()).state());
      assertEquals(Calibration.NONE, post.post().setup().calibration());
    }
  }

  @Test
  void posesOnOneSideOnlyAreNoCalibration() throws Exception {
    for (int i = 0; i < 14; i++) {
      double turn = 2 * Math.PI * i / 14;
      UpVector up = UpVector.of(Math.cos(turn), Math.sin(turn), i % 2 == 0 ? 0.4 : 1.2);
      held(up, 1, 0.15);
      held(up, 3, 0);
    }
    try (VirtualBench bench = bench();
        BenchPost post = post(bench)) {
      post.upkeep().calibrate(Optional.empty(), "");
      double endS = written / RATE_HZ;
      post.until(nowNanos -> nowNanos > endS * 1e9);
      assertTrue(post.upkeep().poses().orElseThrow().taken() >= 12);
      CareStep refused = post.upkeep().accept();
      assertFalse(refused.done());
      assertTrue(
          refused.said().contains("the poses lie too near each other; none is within "),
          refused.said());
      assertEquals(List.of(), post.upkeep().poses().orElseThrow().calibration().stream().toList());
    }
  }
}
