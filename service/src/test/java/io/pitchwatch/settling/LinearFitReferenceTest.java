package io.pitchwatch.settling;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class LinearFitReferenceTest {

  /** x, y. */
  private static final double[][] NORRIS = {
    {0.2, 0.1}, {337.4, 338.8}, {118.2, 118.1}, {884.6, 888.0}, {10.1, 9.2}, {226.5, 228.1},
    {666.3, 668.5}, {996.3, 998.5}, {448.6, 449.1}, {777.0, 778.9}, {558.2, 559.2}, {0.4, 0.3},
    {0.6, 0.1}, {775.5, 778.1}, {666.9, 668.8}, {338.0, 339.3}, {447.5, 448.9}, {11.6, 10.8},
    {556.0, 557.7}, {228.1, 228.3}, {995.8, 998.0}, {887.6, 888.8}, {120.2, 119.6}, {0.3, 0.3},
    {0.3, 0.6}, {556.8, 557.6}, {339.1, 339.3}, {887.2, 888.0}, {999.0, 998.5}, {779.0, 778.9},
    {11.1, 10.2}, {118.3, 117.6}, {229.2, 228.9}, {669.1, 668.4}, {448.9, 449.2}, {0.5, 0.2},
  };

  /**
   * NIST Statistical Reference Datasets, linear regression, Norris (lower difficulty): certified
   * values, as Hipparchus carries them in its own tests.
   */
  @Test
  void norrisHasItsCertifiedLine() {
    LinearFit fit = new LinearFit();
    for (double[] point : NORRIS) {
      fit.add(point[0], point[1]);
    }
    assertEquals(1.00211681802045, fit.slope(), 1e-13);
    assertEquals(-0.262323073774029, fit.intercept(), 1e-11);
    assertEquals(0.232818234301152, fit.interceptError(), 1e-11);
    assertEquals(0.999993745883712, fit.rSquared(), 1e-13);
  }
}
