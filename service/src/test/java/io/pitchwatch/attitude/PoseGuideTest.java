package io.pitchwatch.attitude;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;

class PoseGuideTest {

  private static final long PERIOD_NANOS = 10_000_000L;
  private static final double NOISE_G = 3e-3;

  private final Turntable table = new Turntable(7);
  private final PoseGuide guide =
      new PoseGuide(new PoseWatch(NOISE_G, 1e-3), Calibration.NONE, "today");

  private long nanos;

  /** Holds the chip one way for a while; whether the guide had something to say. */
  private boolean hold(UpVector up, double seconds, double shakeG) {
    boolean news = false;
    for (int i = 0; i < seconds * 100; i++) {
      nanos += PERIOD_NANOS;
      double sway = shakeG * Math.sin(2 * Math.PI * 0.7 * nanos / 1e9);
      double[] raw = table.raw(up.x() + sway, up.y(), up.z());
      news |=
          guide.accept(
              nanos,
              raw[0] + NOISE_G * table.gaussian(),
              raw[1] + NOISE_G * table.gaussian(),
              raw[2] + NOISE_G * table.gaussian());
    }
    return news;
  }

  private boolean hold(Facing facing) {
    return hold(Turntable.way(facing), 3, 0);
  }

  @Test
  void facesAreWantedFirstAndAnyOrderWillDo() {
    assertEquals("hold it still for 2 s with the x arrow up", guide.wanted());
    assertTrue(hold(new Facing(0, 0, 1)));
    assertEquals("pose 1 taken", guide.said());
    assertEquals("hold it still for 2 s with the x arrow up", guide.wanted());
    assertTrue(hold(new Facing(1, 0, 0)));
    assertEquals("hold it still for 2 s with the y arrow up", guide.wanted());
  }

  @Test
  void chipThatIsStillMovedIsNotTaken() {
    assertFalse(hold(UpVector.LEVEL, 20, 0.05));
    assertEquals(0, guide.taken());
  }

  @Test
  void samePoseAgainIsRefusedByName() {
    hold(new Facing(0, 0, 1));
    hold(new Facing(1, 0, 0));
    assertTrue(hold(UpVector.of(0.1, 0.1, 1), 3, 0));
    assertEquals("not taken: nearly the same as pose 1; turn it further", guide.said());
    assertEquals(2, guide.taken());
  }

  @Test
  void ledThroughAllEighteenItFindsTheTruth() {
    int steps = 0;
    for (Optional<Facing> next = guide.next(); next.isPresent(); next = guide.next()) {
      hold(next.get());
      steps++;
      assertTrue(steps <= 18, "asks for more than 18 poses");
    }
    Calibration found = guide.calibration().orElseThrow();
    assertEquals("accept", guide.wanted());
    assertEquals("today", found.date());
    double biasErrorG = Math.abs(found.bias().x() - table.truth.bias().x());
    assertTrue(biasErrorG < 4 * found.quality().biasError().x(), "bias off by " + biasErrorG);
    assertTrue(CalibrationText.worthwhile(found), CalibrationText.improvement(found));
    assertTrue(found.quality().afterG() < 0.5e-3, CalibrationText.figures(found));
  }

  @Test
  void whatIsLackingIsSaid() {
    hold(new Facing(0, 0, 1));
    assertEquals("1 pose; at least 12 are needed", guide.lacking());
    assertTrue(guide.calibration().isEmpty());
  }

  @Test
  void secondCalibrationGainsNothingAndSaysSo() {
    PoseGuide again = new PoseGuide(new PoseWatch(NOISE_G, 1e-3), table.truth, "tomorrow");
    for (Optional<Facing> next = again.next(); next.isPresent(); next = again.next()) {
      Pose pose = table.pose(Turntable.way(next.get()), 0, 0);
      for (int i = 0; i < 260; i++) {
        nanos += PERIOD_NANOS;
        again.accept(
            nanos,
            pose.x() + NOISE_G * table.gaussian(),
            pose.y() + NOISE_G * table.gaussian(),
            pose.z() + NOISE_G * table.gaussian());
      }
    }
    String said = CalibrationText.improvement(again.calibration().orElseThrow());
    assertTrue(said.endsWith(": no real gain, the old one is as good"), said);
  }
}
