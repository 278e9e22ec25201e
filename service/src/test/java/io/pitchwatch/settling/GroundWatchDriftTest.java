package io.pitchwatch.settling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** The sun warms the sensor, not the ground. */
class GroundWatchDriftTest {

  private static final long SEED = 77;
  private static final int DAY = 1440;
  private static final double COEFFICIENT_DEG_PER_C = 0.03;

  private final SplittableRandom random = new SplittableRandom(SEED);

  private static GroundWatch watch(GroundModel model) {
    return new GroundWatch(
        model,
        List.of(new LeanLimit("fridge", Math.toRadians(3), Math.toRadians(6))),
        Math.toRadians(0.5));
  }

  private static GroundModel thermometer() {
    return GroundModel.withThermometer(Math.toRadians(0.023));
  }

  /** A sensor under a sky that changes from day to day. */
  private MinuteValue minute(long minute, double rollDeg, boolean thermometer) {
    double sky = 0.7 + 0.3 * Math.sin(minute / (2.7 * DAY));
    double warm = 18 + 10 * sky * Math.sin(2 * Math.PI * minute / DAY);
    double seen = rollDeg + COEFFICIENT_DEG_PER_C * warm + 0.005 * random.nextGaussian();
    return Minutes.at(minute, seen, 0.1, thermometer ? warm : Double.NaN);
  }

  @Test
  void sunOnTheSensorIsNotSettling() {
    for (boolean thermometer : new boolean[] {true, false}) {
      GroundWatch watch = watch(thermometer ? thermometer() : GroundModel.withoutThermometer());
      for (int i = 1; i < 30 * DAY; i++) {
        assertFalse(
            watch.accept(minute(i, 0.2, thermometer)).settling(),
            "seed " + SEED + ", minute " + i + ", thermometer " + thermometer);
      }
    }
  }

  @Test
  void driftIsLearntWithItsError() {
    GroundWatch watch = watch(thermometer());
    GroundReport report = GroundReport.UNKNOWN;
    for (int i = 1; i < 4 * DAY; i++) {
      report = watch.accept(minute(i, 0.2, true));
    }
    double error = Math.toDegrees(report.roll().driftErrorRadPerC());
    assertTrue(error < 0.023 / 2, error + " deg/C");
    assertEquals(COEFFICIENT_DEG_PER_C, Math.toDegrees(report.roll().driftRadPerC()), 2 * error);
  }

  @Test
  void sinkingIsFoundUnderTheSunToo() {
    for (boolean thermometer : new boolean[] {true, false}) {
      GroundWatch watch = watch(thermometer ? thermometer() : GroundModel.withoutThermometer());
      int i = 1;
      while (i < 3 * DAY) {
        watch.accept(minute(i++, 0.2, thermometer));
      }
      double sunk = 0;
      while (!watch.accept(minute(i++, 0.2 + sunk, thermometer)).settling()) {
        sunk += 0.05 / 60;
      }
      assertTrue(sunk < 1.5, "seed " + SEED + ", sunk " + sunk + " deg");
    }
  }
}
