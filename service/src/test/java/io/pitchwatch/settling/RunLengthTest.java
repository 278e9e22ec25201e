package io.pitchwatch.settling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RunLengthTest {

  private static final int RUNS = 4000;

  /** The chain, and Siegmund where there is no clip, against counting. */
  @ParameterizedTest
  @CsvSource({
    "0.5, 3, 0, Infinity", "0.5, 4, 0, Infinity", "0.5, 5, 1, Infinity",
    "0.5, 3, 0, 2", "0.5, 4, 0, 1.5", "0.25, 5, 0.5, 2"
  })
  void computedRunLengthIsTheCountedOne(
      double allowance, double threshold, double shift, double clip) {
    long seed = 99;
    double counted = counted(new SplittableRandom(seed), allowance, threshold, shift, clip);
    // Run lengths are nearly exponential: their mean over n runs has 1/√n of standard error.
    double within = 4 * counted / Math.sqrt(RUNS);
    double computed = RunLength.markov(allowance, threshold, shift, clip);
    assertEquals(counted, computed, within, "seed " + seed);
    if (Double.isInfinite(clip)) {
      double siegmund = RunLength.siegmund(allowance, threshold, shift);
      assertEquals(counted, siegmund, within + 0.03 * counted, "seed " + seed);
    }
  }

  private static double counted(
      SplittableRandom random, double allowance, double threshold, double shift, double clip) {
    long total = 0;
    for (int i = 0; i < RUNS; i++) {
      Cusum sum = new Cusum(allowance, threshold);
      while (!sum.signals()) {
        double value = random.nextGaussian() + shift;
        sum.add(Math.max(-clip, Math.min(clip, value)), 0);
        total++;
      }
    }
    return total / (double) RUNS;
  }

  @Test
  void hundredSlicesAreEnough() {
    double h = FirmGround.THRESHOLD;
    double few = RunLength.markov(FirmGround.ALLOWANCE, h, 0, FirmGround.CLIP);
    double many = RunLength.markov(FirmGround.ALLOWANCE, h, 0, FirmGround.CLIP, 400);
    assertEquals(1, few / many, 0.02);
  }

  @Test
  void thresholdGivesTheRunLengthItWasAskedFor() {
    double h = RunLength.thresholdFor(0.5, 3, 1000);
    // The clip makes the run length jump a little with the threshold.
    assertEquals(1000, RunLength.markov(0.5, h, 0, 3), 10);
  }

  /** What the design promises: nine hundred days between false signals of all four sides. */
  @Test
  void designKeepsTheBudgetOfFalseAlarms() {
    double side = RunLength.markov(FirmGround.ALLOWANCE, FirmGround.THRESHOLD, 0, FirmGround.CLIP);
    double days = side / 4 * Block.LENGTH_HOURS / 24;
    assertTrue(days >= 10 * 90 * 0.999, days + " days");
    assertEquals(900, days, 9);
  }
}
