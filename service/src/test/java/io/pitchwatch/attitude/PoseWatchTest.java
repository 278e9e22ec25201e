package io.pitchwatch.attitude;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class PoseWatchTest {

  private static final double NOISE = 3e-3;
  private final PoseWatch watch = new PoseWatch(NOISE, 1e-3);
  private final SplittableRandom random = new SplittableRandom(1);
  private long nanos;

  private void hold(double x, double seconds) {
    for (int i = 0; i < seconds * 100; i++) {
      nanos += 10_000_000L;
      watch.accept(nanos, x + noise(), noise(), 1 + noise());
    }
  }

  /** Near enough to normal: twelve even ones. */
  private double noise() {
    double sum = -6;
    for (int i = 0; i < 12; i++) {
      sum += random.nextDouble();
    }
    return NOISE * sum;
  }

  @Test
  void chipHeldStillForTwoSecondsIsAPose() {
    hold(0.1, 1.5);
    assertTrue(watch.pose().isEmpty());
    hold(0.1, 1);
    Pose pose = watch.pose().orElseThrow();
    assertEquals(0.1, pose.x(), 4 * pose.standardError());
    assertEquals(1, pose.z(), 4 * pose.standardError());
    // 11 or 12 whole blocks of 20 samples.
    assertEquals(NOISE / Math.sqrt(230), pose.standardError(), 0.1e-3);
  }

  @Test
  void anotherWayBeginsAnotherPose() {
    hold(0, 5);
    hold(0.05, 1);
    assertTrue(watch.pose().isEmpty());
    hold(0.05, 2);
    assertEquals(0.05, watch.pose().orElseThrow().x(), 1e-3);
  }

  @Test
  void slowTurningIsNoPose() {
    for (int i = 0; i < 600; i++) {
      hold(i * 2e-3, 0.01);
      assertFalse(watch.pose().isPresent(), "after " + i + " samples");
    }
  }

  @Test
  void pauseInTheSamplesEndsThePose() {
    hold(0, 5);
    nanos += 1_000_000_000L;
    hold(0, 0.5);
    assertTrue(watch.pose().isEmpty());
  }

  @Test
  void samplesThatAreNoNumbersAreLeftOut() {
    hold(0, 3);
    watch.accept(nanos + 1, Double.NaN, 0, 1);
    assertTrue(watch.pose().isPresent());
  }

  @Test
  void noiseMustBeAboveZero() {
    assertThrows(IllegalArgumentException.class, () -> new PoseWatch(0, 1));
  }
}
