package io.pitchwatch.settling;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class CusumReferenceTest {

  private static final double TARGET = 325;
  private static final double ALLOWANCE = 0.3175;
  private static final double THRESHOLD = 4.1959;

  /** Mean, upper sum, lower sum. */
  private static final double[][] ROWS = {
    {324.925, 0.0000, 0.0000},
    {324.675, 0.0000, 0.0075},
    {324.725, 0.0000, 0.0000},
    {324.350, 0.0000, 0.3325},
    {325.350, 0.0325, 0.0000},
    {325.225, 0.0000, 0.0000},
    {324.125, 0.0000, 0.5575},
    {324.525, 0.0000, 0.7150},
    {325.225, 0.0000, 0.1725},
    {324.600, 0.0000, 0.2550},
    {324.625, 0.0000, 0.3125},
    {325.150, 0.0000, 0.0000},
    {328.325, 3.0075, 0.0000},
    {327.250, 4.9400, 0.0000},
    {327.825, 7.4475, 0.0000},
    {328.500, 10.6300, 0.0000},
    {326.675, 11.9875, 0.0000},
    {327.775, 14.4450, 0.0000},
    {326.875, 16.0025, 0.0000},
    {328.350, 19.0350, 0.0000},
  };

  /**
   * NIST/SEMATECH e-Handbook of Statistical Methods, section 6.3.2.3, CUSUM control charts: twenty
   * means, target 325, k = 0.3175, h = 4.1959 (data read in a public copy; k, h and sums from
   * memory, recomputed).
   */
  @Test
  void handbookExampleSignalsAtTheFourteenthMean() {
    Cusum up = new Cusum(ALLOWANCE, THRESHOLD);
    Cusum down = new Cusum(ALLOWANCE, THRESHOLD);
    for (int i = 0; i < ROWS.length; i++) {
      up.add(ROWS[i][0] - TARGET, i);
      down.add(TARGET - ROWS[i][0], i);
      assertEquals(ROWS[i][1], up.sum(), 1e-9, "upper sum " + (i + 1));
      assertEquals(ROWS[i][2], down.sum(), 1e-9, "lower sum " + (i + 1));
      assertEquals(i >= 13, up.signals(), "signal " + (i + 1));
    }
    assertEquals(12, up.sinceNanos());
  }
}
