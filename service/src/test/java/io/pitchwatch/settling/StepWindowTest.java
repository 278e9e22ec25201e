package io.pitchwatch.settling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class StepWindowTest {

  private static StepWindow windowOf(double... rollDeg) {
    StepWindow window = new StepWindow();
    for (int i = 0; i < rollDeg.length; i++) {
      window.add(Minutes.at(i, rollDeg[i], 0));
    }
    return window;
  }

  @Test
  void slideOutIsAStep() {
    StepWindow window = windowOf(0, 0.01, 0, 0, 0.2, 0.31, 0.3, 0.3);
    assertTrue(window.showsStep());
    assertEquals(0.301, Math.toDegrees(window.changeRad(LeanAxis.ROLL)), 1e-3);
    assertEquals(Minutes.MINUTE_NANOS * 5, window.firstAfter().atNanos());
  }

  @Test
  void sinkingIsNoStepHoweverFast() {
    assertFalse(windowOf(0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7).showsStep());
  }

  @Test
  void personIsNoStep() {
    assertFalse(windowOf(0, 0, 0, 0, 0.05, 0.1, 0.1, 0.1).showsStep());
  }

  @Test
  void whatComesBackIsNoStep() {
    assertFalse(windowOf(0, 0, 0, 0, 0.4, 0.4, 0, 0).showsStep());
  }
}
