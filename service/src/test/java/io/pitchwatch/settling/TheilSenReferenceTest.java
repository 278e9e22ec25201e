package io.pitchwatch.settling;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class TheilSenReferenceTest {

  /**
   * P. K. Sen, Estimates of the regression coefficient based on Kendall's tau, Journal of the
   * American Statistical Association 63 (1968), the numerical example: slope 4, 93 % limits 26/7
   * and 35/8 (as two statistics packages carry it in their tests).
   */
  @Test
  void sensExample() {
    double[] t = {1, 2, 3, 4, 10, 12, 18};
    double[] y = {9, 15, 19, 20, 45, 55, 78};
    TheilSen line = TheilSen.of(t, y, t.length, 0.93);
    assertEquals(4, line.slope(), 1e-12);
    assertEquals(26.0 / 7, line.lowerSlope(), 1e-12);
    assertEquals(35.0 / 8, line.upperSlope(), 1e-12);
  }
}
