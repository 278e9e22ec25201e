package io.pitchwatch.attitude;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class DriftCorrectionTest {

  private static final double TYPICAL = 0.5e-3;
  private static final double ERROR = 0.02e-3;

  /** Learnt from 10 to 30 degrees: 0.4 mg/°C forward, 0.2 mg/°C to the left. */
  private static final TemperatureDrift LEARNT =
      new TemperatureDrift(new Triad(0.4e-3, 0.2e-3, 0), ERROR, 10, 30);

  private final DriftCorrection correction = new DriftCorrection(TYPICAL);

  private void warm(double temperatureC) {
    correction.temperature(temperatureC, 0);
  }

  @Test
  void driftSinceTheZeroIsTakenAway() {
    correction.use(Rotation.IDENTITY, 15);
    correction.learn(LEARNT);
    warm(25);
    UpVector drifted = UpVector.of(4e-3, 2e-3, 1);
    Lean right = correction.corrected(drifted.lean());
    assertEquals(0, right.rollRad(), 1e-7);
    assertEquals(0, right.pitchRad(), 1e-7);
    assertEquals(10 * ERROR, correction.errorRad(), 1e-12);
  }

  @Test
  void withoutAZeroNothingIsTakenAwayNorClaimed() {
    Lean lean = Lean.ofDegrees(1, 2);
    correction.learn(LEARNT);
    warm(25);
    assertSame(lean, correction.corrected(lean));
    assertEquals(0, correction.errorRad());
  }

  @Test
  void withoutAThermometerNothingIsTakenAwayAndWhatTheDaysMayDoIsClaimed() {
    Lean lean = Lean.ofDegrees(1, 2);
    correction.use(Rotation.IDENTITY, 15);
    warm(Double.NaN);
    assertSame(lean, correction.corrected(lean));
    double dayRad = 6.5 * TYPICAL;
    assertEquals(dayRad, correction.errorRad(), 1e-12, "how old the zero is nobody knows");
    correction.zeroAge(0);
    assertEquals(0, correction.errorRad());
    correction.zeroAge(1.0 / 24);
    assertEquals(0.63 * dayRad, correction.errorRad(), 0.01 * dayRad);
    correction.zeroAge(365);
    assertEquals(Math.hypot(6.5, 5) * TYPICAL, correction.errorRad(), 1e-6);
    correction.zeroAge(-1);
    assertEquals(0, correction.errorRad(), "the board's clock was put right");
  }

  @Test
  void beforeAnythingIsLearntTheChipMayDriftAsItsKindDoes() {
    correction.use(Rotation.IDENTITY, 15);
    warm(5);
    assertEquals(10 * TYPICAL, correction.errorRad(), 1e-12);
  }

  @Test
  void outsideTheTemperaturesThatWereLearntTheErrorGrows() {
    assertEquals(20 * ERROR, LEARNT.errorRad(10, 30, TYPICAL), 1e-12);
    assertEquals(20 * ERROR + 5 * TYPICAL, LEARNT.errorRad(10, 35, TYPICAL), 1e-12);
    assertEquals(20 * ERROR + 15 * TYPICAL, LEARNT.errorRad(35, 0, TYPICAL), 1e-12);
    assertEquals(5 * TYPICAL, LEARNT.errorRad(-5, 0, TYPICAL), 1e-12);
  }

  @Test
  void whatWasLearntBelongsToTheChipHoweverTheFloorsAxesTurn() {
    correction.use(Rotation.IDENTITY, 15);
    correction.learn(LEARNT);
    correction.use(Rotation.aboutUp(Math.PI / 2), 15);
    assertEquals(-0.2e-3, correction.inFloor().perC().x(), 1e-12);
    assertEquals(0.4e-3, correction.inFloor().perC().y(), 1e-12);
    assertEquals(LEARNT.perC(), correction.inChip().perC());
  }

  @Test
  void thermometerThatFlickersIsSmoothed() {
    correction.use(Rotation.IDENTITY, 20);
    warm(20);
    for (int i = 1; i <= 600; i++) {
      correction.temperature(20 + (i % 2 == 0 ? 0.5 : -0.5), i * 200_000_000L);
    }
    assertTrue(Math.abs(correction.warmerC()) < 0.01, () -> correction.warmerC() + " C");
  }
}
