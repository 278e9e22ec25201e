package io.pitchwatch.settling;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Run lengths of cumulative sums against published ones. */
class RunLengthReferenceTest {

  private static final double NO_CLIP = Double.POSITIVE_INFINITY;

  /**
   * Two-sided, k = 0.5: D. C. Montgomery, Introduction to Statistical Quality Control, table of run
   * lengths of tabular CUSUMs (from memory).
   */
  @ParameterizedTest
  @CsvSource({
    "4, 0, 168", "4, 0.5, 26.6", "4, 1, 8.38", "4, 2, 3.34",
    "5, 0, 465", "5, 0.5, 38.0", "5, 1, 10.4", "5, 2, 4.01"
  })
  void publishedTableOfTwoSidedRunLengths(double threshold, double shift, double published) {
    double towards = RunLength.markov(0.5, threshold, shift, NO_CLIP);
    double away = RunLength.markov(0.5, threshold, -shift, NO_CLIP);
    assertEquals(published, RunLength.either(towards, away), 0.005 * published);
  }

  /** Siegmund's approximation with b = h + 1.166, two-sided, as Montgomery prints it (memory). */
  @ParameterizedTest
  @CsvSource({"0, 469.1", "0.5, 38.0", "1, 10.34", "2, 3.89"})
  void siegmundsApproximation(double shift, double published) {
    double towards = RunLength.siegmund(0.5, 5, shift);
    double away = RunLength.siegmund(0.5, 5, -shift);
    assertEquals(published, RunLength.either(towards, away), 0.002 * published);
  }

  @Test
  void siegmundAtTheAllowanceIsTheSquareOfTheThreshold() {
    assertEquals(RunLength.siegmund(0.5, 5, 0.5 + 1e-6), RunLength.siegmund(0.5, 5, 0.5), 0.001);
  }
}
