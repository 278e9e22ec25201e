package io.pitchwatch.settling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class TheilSenTest {

  @Test
  void quarterOfWildPointsDoesNotMoveTheLine() {
    double[] x = new double[20];
    double[] y = new double[20];
    for (int i = 0; i < x.length; i++) {
      x[i] = i;
      y[i] = i % 4 == 0 ? 1000 : 3 + 2 * i;
    }
    TheilSen line = TheilSen.of(x, y, x.length, 0.9);
    assertEquals(2, line.slope(), 1e-9);
    assertEquals(3, line.intercept(), 1e-9);
  }

  @Test
  void onePointMakesNoLine() {
    assertThrows(
        IllegalArgumentException.class, () -> TheilSen.of(new double[1], new double[1], 1, 0.9));
  }
}
