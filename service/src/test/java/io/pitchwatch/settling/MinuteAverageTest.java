package io.pitchwatch.settling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.pitchwatch.attitude.Lean;
import io.pitchwatch.floor.FloorReading;
import io.pitchwatch.floor.FloorState;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class MinuteAverageTest {

  private static final long STEP_NANOS = 200_000_000L;
  private static final int PER_MINUTE = 300;

  private final MinuteAverage average = new MinuteAverage();
  private long nowNanos = 5;

  private boolean feed(FloorState state, double rollDeg, double pitchDeg) {
    Lean lean = Lean.ofDegrees(rollDeg, pitchDeg);
    boolean complete =
        average.accept(new FloorReading(state, lean, lean, 0, 0, nowNanos), 21.5, nowNanos);
    nowNanos += STEP_NANOS;
    return complete;
  }

  private void feedMinute(FloorState state, double rollDeg) {
    for (int i = 0; i < PER_MINUTE; i++) {
      feed(state, rollDeg, -1);
    }
  }

  @Test
  void minuteIsCompleteAfterSixtySeconds() {
    for (int i = 0; i < PER_MINUTE; i++) {
      assertFalse(feed(FloorState.STEADY, 1, -1), "reading " + i);
    }
    assertTrue(feed(FloorState.STEADY, 1, -1));
    MinuteValue minute = average.minute();
    assertEquals(5 + 60_000_000_000L, minute.atNanos());
    assertEquals(1, Math.toDegrees(minute.rollRad()), 1e-12);
    assertEquals(-1, Math.toDegrees(minute.pitchRad()), 1e-12);
    assertEquals(21.5, minute.temperatureC(), 1e-12);
    assertEquals(1, minute.restShare(), 0.01);
    assertTrue(minute.counts());
  }

  @Test
  void quarterOfWildReadingsDoesNotMoveIt() {
    for (int i = 0; i <= PER_MINUTE; i++) {
      feed(FloorState.UNSETTLED, i % 5 == 0 ? 20 : 0.5, 0);
    }
    assertEquals(0.5, Math.toDegrees(average.minute().rollRad()), 1e-12);
  }

  @Test
  void uncertaintyOfTheMeanIsThatOfItsReadings() {
    long seed = 3;
    SplittableRandom random = new SplittableRandom(seed);
    double sumSquares = 0;
    double sumVariance = 0;
    int minutes = 400;
    // One independent reading a second, as a live figure that settles in a second gives.
    double live = 0;
    for (int i = 0; i < minutes * PER_MINUTE + 1; i++) {
      live = i % 5 == 0 ? 0.05 * random.nextGaussian() : live;
      if (feed(FloorState.STEADY, live, live)) {
        sumSquares += Math.pow(average.minute().rollRad(), 2);
        sumVariance += Math.pow(average.minute().uncertaintyRad(), 2);
      }
    }
    assertEquals(1, Math.sqrt(sumVariance / sumSquares), 0.12, "seed " + seed);
  }

  @Test
  void motionIsTold() {
    feedMinute(FloorState.MOVING, 3);
    assertTrue(feed(FloorState.STEADY, 0, 0));
    assertTrue(average.minute().moved());
    assertFalse(average.minute().counts());
  }

  @Test
  void unknownTimeIsNoRest() {
    for (int i = 0; i < PER_MINUTE / 2; i++) {
      feed(FloorState.STEADY, 1, 1);
    }
    for (int i = 0; i < PER_MINUTE / 2; i++) {
      feed(FloorState.UNKNOWN, Double.NaN, Double.NaN);
    }
    assertTrue(feed(FloorState.UNKNOWN, Double.NaN, Double.NaN));
    assertEquals(0.5, average.minute().restShare(), 0.01);
    assertEquals(1, Math.toDegrees(average.minute().rollRad()), 1e-12);
  }

  @Test
  void longSilenceCountsForOneSecond() {
    feed(FloorState.STEADY, 1, 1);
    nowNanos += 3_600_000_000_000L;
    assertTrue(feed(FloorState.STEADY, 1, 1));
    assertFalse(average.minute().counts());
    feedMinute(FloorState.STEADY, 2);
    assertEquals(2, Math.toDegrees(average.minute().rollRad()), 1e-9);
  }
}
