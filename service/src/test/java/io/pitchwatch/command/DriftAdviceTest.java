package io.pitchwatch.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.pitchwatch.attitude.SensorSetup;
import io.pitchwatch.attitude.TemperatureDrift;
import io.pitchwatch.attitude.UpVector;
import io.pitchwatch.attitude.Zero;
import io.pitchwatch.sensing.Chip;
import java.time.Instant;
import org.junit.jupiter.api.Test;

class DriftAdviceTest {

  private static final Instant NOW = Instant.parse("2026-06-03T12:00:00Z");

  private static final SensorSetup ZEROED =
      SensorSetup.NONE.with(new Zero(UpVector.LEVEL, 1e-4, 17.6, ""));

  @Test
  void whatWasLearntIsSaidWithTwoStandardErrorsAndItsTemperatures() {
    TemperatureDrift drift = TemperatureDrift.ofFloor(-0.6e-3, 0.8e-3, 0.05e-3, 12, 31);
    assertEquals(
        "roll drifts by -0.0344, pitch by +0.0458, each within ± 0.0057 deg for every °C; learnt"
            + " from 12 to 31 °C",
        DriftAdvice.learnt(drift));
  }

  @Test
  void howOldItIsIsSaidWhereAClockKnows() {
    assertEquals(
        "taken away since the zero's 18 °C; learnt last less than an hour ago",
        DriftAdvice.use(ZEROED, "2026-06-03T11:30:00Z", NOW));
    assertTrue(DriftAdvice.use(ZEROED, "2026-06-03T10:59:00Z", NOW).endsWith("last 1 hour ago"));
    assertTrue(DriftAdvice.use(ZEROED, "2026-06-01T11:59:00Z", NOW).endsWith("last 2 days ago"));
    assertTrue(DriftAdvice.use(ZEROED, "", NOW).endsWith("18 °C"), "of an earlier version");
    assertTrue(DriftAdvice.use(ZEROED, "2030-01-01T00:00:00Z", NOW).endsWith("18 °C"));
  }

  @Test
  void withoutAZeroItSaysWhatToDo() {
    assertTrue(DriftAdvice.use(SensorSetup.NONE, "", NOW).contains("zero the sensor"));
  }

  @Test
  void chipWithoutAThermometerIsNotWaitedFor() {
    assertTrue(
        DriftAdvice.unlearnable(Chip.ADXL345.facts()).contains("0.02 deg for every °C is typical"));
    assertTrue(
        DriftAdvice.nothing(Chip.ADXL355.facts()).contains("0.001 deg for every °C is typical"));
  }
}
