package io.pitchwatch.comfort;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.pitchwatch.attitude.Lean;
import io.pitchwatch.coach.Fridge;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class FridgeWatchTest {

  private static final long MINUTE = 60_000_000_000L;
  private static final Lean INSIDE = Lean.ofDegrees(1, 1);
  private static final Lean TOO_FAR = Lean.ofDegrees(3.2, 1);
  private static final Lean LOST = new Lean(Double.NaN, Double.NaN);

  private final Fridge fridge =
      new Fridge("galley", Math.toRadians(3), Math.toRadians(6), Optional.empty());
  private final FridgeWatch watch = new FridgeWatch(fridge);

  @Test
  void knowsNothingBeforeTheFirstLean() {
    assertTrue(Double.isNaN(watch.marginRad()));
    assertFalse(watch.within());
    assertEquals(0, watch.outsideMinutes());
  }

  @Test
  void timeOutsideAddsUpAndTimeInsideDoesNot() {
    watch.accept(TOO_FAR, false, 5 * MINUTE);
    watch.accept(TOO_FAR, false, 8 * MINUTE);
    assertFalse(watch.within());
    watch.accept(INSIDE, false, 9 * MINUTE);
    assertTrue(watch.within());
    watch.accept(TOO_FAR, false, 60 * MINUTE);
    watch.accept(TOO_FAR, false, 61 * MINUTE);
    assertEquals(4, watch.outsideMinutes(), 1e-9);
  }

  @Test
  void lostSensorBetweenTwoLeansOutsideStillCounts() {
    watch.accept(TOO_FAR, false, 0);
    watch.accept(LOST, false, MINUTE);
    assertFalse(watch.within());
    assertTrue(Double.isNaN(watch.marginRad()));
    watch.accept(TOO_FAR, false, 30 * MINUTE);
    assertEquals(30, watch.outsideMinutes(), 1e-9);
  }

  @Test
  void lostSensorBetweenOutsideAndInsideCountsNothing() {
    watch.accept(TOO_FAR, false, 0);
    watch.accept(LOST, false, MINUTE);
    watch.accept(INSIDE, false, 30 * MINUTE);
    assertEquals(0, watch.outsideMinutes());
  }

  @Test
  void drivingStartsTheCountAgain() {
    watch.accept(TOO_FAR, false, 0);
    watch.accept(TOO_FAR, false, 10 * MINUTE);
    watch.accept(TOO_FAR, true, 11 * MINUTE);
    assertEquals(0, watch.outsideMinutes());
    watch.accept(TOO_FAR, false, 20 * MINUTE);
    watch.accept(TOO_FAR, false, 21 * MINUTE);
    assertEquals(1, watch.outsideMinutes(), 1e-9);
  }

  @Test
  void restartGoesOnFromTheStoredMinutes() {
    FridgeWatch resumed = new FridgeWatch(fridge, 7.5);
    resumed.accept(TOO_FAR, false, -MINUTE);
    resumed.accept(TOO_FAR, false, 0);
    assertEquals(8.5, resumed.outsideMinutes(), 1e-9);
    assertThrows(IllegalArgumentException.class, () -> new FridgeWatch(fridge, -1));
    assertThrows(IllegalArgumentException.class, () -> new FridgeWatch(fridge, Double.NaN));
  }
}
