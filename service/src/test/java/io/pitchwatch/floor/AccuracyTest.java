package io.pitchwatch.floor;

import static org.junit.jupiter.api.Assertions.assertTrue;

import io.pitchwatch.floor.AccuracyFigures.Outcome;
import io.pitchwatch.floor.ParkedCoach.Scene;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Errors of the steady lean against the white-noise bound, and how honest its uncertainty is. With
 * {@code -Dpitchwatch.full=true} over 1,000 seeds, else over 120 with limits that wide apart.
 */
class AccuracyTest {

  private static final int SEEDS = Boolean.getBoolean("pitchwatch.full") ? 1000 : 120;

  /** Three standard deviations of a share near 0.95, or of an RMS, that many runs scatter by. */
  private static double slack(double one) {
    return SEEDS >= 1000 ? 0 : 3 * one / Math.sqrt(SEEDS);
  }

  @ParameterizedTest
  @EnumSource(Chip.class)
  void tenSecondsStillReachTheBoundOfTheChip(Chip chip) {
    Outcome o = AccuracyFigures.measure(chip, 100, Scene.STILL, SEEDS, 10)[0];

    double ratio = o.rmsRad() / chip.noise(100).boundRad(10);
    assertTrue(ratio <= 1.2 + slack(0.5), chip + ": " + ratio + " of the bound");
    assertTrue(o.steady >= 0.99 * o.runs, o.steady + " steady");
  }

  @Test
  void engineAndPeopleCostLessThanThreeHundredthsOfADegree() {
    Outcome o = AccuracyFigures.measure(Chip.ADXL345, 100, Scene.IDLING_AND_WALKING, SEEDS, 30)[0];

    double rollDeg = Math.toDegrees(o.rollRmsRad());
    assertTrue(rollDeg <= 0.03 + slack(0.02), rollDeg + " deg");
    assertTrue(o.steady >= 0.9 * o.runs, o.steady + " steady");
  }

  @ParameterizedTest
  @EnumSource(Chip.class)
  void twoStandardErrorsCoverNinetyFiveInAHundred(Chip chip) {
    int[] seconds = {5, 10, 30, 60};
    for (Scene scene : List.of(Scene.STILL, Scene.IDLING_AND_WALKING)) {
      Outcome[] outcomes = AccuracyFigures.measure(chip, 100, scene, SEEDS, seconds);
      for (int i = 0; i < seconds.length; i++) {
        double covered = outcomes[i].coverage();
        double slack = slack(0.2);
        assertTrue(
            covered >= 0.93 - slack && covered <= 0.97 + slack,
            chip + ", " + scene + " after " + seconds[i] + " s: " + covered);
      }
    }
  }

  @ParameterizedTest
  @EnumSource(Chip.class)
  void peopleAreNotSuspectedWhereNobodyIs(Chip chip) {
    Outcome o = AccuracyFigures.measure(chip, 100, Scene.STILL, SEEDS, 10)[0];

    assertTrue(o.rollStatedRad() <= 1.25 * o.rollRmsRad(), chip + ": " + o.rollStatedRad());
    assertTrue(o.pitchStatedRad() <= 1.25 * o.pitchRmsRad(), chip + ": " + o.pitchStatedRad());
  }
}
