package io.pitchwatch.floor;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.pitchwatch.attitude.Lean;
import org.junit.jupiter.api.Test;

class SeatWatchTest {

  private static final long SECOND = 1_000_000_000L;

  private final SeatWatch watch = new SeatWatch();
  private long nanos;

  private void rests(double rollDeg, double magnitudeG, int seconds) {
    Lean lean = Lean.ofDegrees(rollDeg, 0);
    for (int i = 0; i < seconds; i++) {
      nanos += SECOND;
      watch.accept(new FloorReading(FloorState.STEADY, lean, lean, 1e-4, 1e-3, nanos), magnitudeG);
    }
  }

  @Test
  void sensorKnockedAskewWhileTheCoachStandsIsNoticed() {
    rests(0.5, 1.01, 60);
    nanos += 5 * SECOND;
    rests(6, 1.01, 10);
    assertTrue(watch.moved());
    watch.restart();
    rests(6, 1.01, 10);
    assertFalse(watch.moved(), "zeroed again");
  }

  @Test
  void magnitudeThatJumpsIsNoticedThoughTheLeanHardlyChanges() {
    rests(0.5, 1.01, 60);
    nanos += 5 * SECOND;
    rests(1, 1.03, 10);
    assertTrue(watch.moved());
  }

  @Test
  void coachThatDroveElsewhereIsNotASensorThatMoved() {
    rests(0.5, 1.01, 60);
    nanos += 120 * SECOND;
    rests(6, 1.03, 10);
    assertFalse(watch.moved());
  }

  @Test
  void jacksAndSlideOutsDoNotMoveTheSensor() {
    rests(0.5, 1.01, 60);
    nanos += 10 * SECOND;
    rests(3, 1.011, 60);
    assertFalse(watch.moved());
  }

  @Test
  void magnitudeThatDriftsWithTheDayIsFollowed() {
    for (int minute = 0; minute < 600; minute++) {
      rests(0.5, 1 + 0.05 * Math.sin(minute / 100.0), 60);
    }
    assertFalse(watch.moved());
  }
}
