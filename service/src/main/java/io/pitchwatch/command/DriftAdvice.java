package io.pitchwatch.command;

import io.pitchwatch.attitude.SensorSetup;
import io.pitchwatch.attitude.TemperatureDrift;
import io.pitchwatch.attitude.Zero;
import io.pitchwatch.sensing.ChipFacts;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import java.util.Optional;

/** What is known of a sensor's drift with temperature, and what to do about it, for people. */
final class DriftAdvice {

  private DriftAdvice() {}

  /** What was learnt, in one line, along the floor's axes. */
  static String learnt(TemperatureDrift inFloor) {
    return String.format(
        Locale.ROOT,
        "roll drifts by %+.4f, pitch by %+.4f, each within ± %.4f deg for every °C; learnt from"
            + " %.0f to %.0f °C",
        Math.toDegrees(inFloor.rollPerC()),
        Math.toDegrees(inFloor.pitchPerC()),
        Math.toDegrees(2 * inFloor.errorPerC()),
        inFloor.lowC(),
        inFloor.highC());
  }

  /** Of a chip without a thermometer. */
  static String unlearnable(ChipFacts facts) {
    return String.format(
        Locale.ROOT,
        "it has no thermometer: %.2f deg for every °C is typical and cannot be learnt, but is"
            + " stated in floor/uncertainty; zero it at the temperature at which you live",
        Math.toDegrees(facts.xyTempcoG()));
  }

  /** Of a chip of which nothing was learnt yet. */
  static String nothing(ChipFacts facts) {
    return String.format(
        Locale.ROOT,
        "nothing was learnt yet, %.3f deg for every °C is typical; it takes a day or two of"
            + " changing temperatures, the coach parked and the daemon running",
        Math.toDegrees(facts.xyTempcoG()));
  }

  /**
   * What becomes of what was learnt, and how old it is.
   *
   * @param keptAt when something new of it was kept last, RFC 3339; empty where nobody knows
   */
  static String use(SensorSetup setup, String keptAt, Instant now) {
    Zero zero = setup.zero();
    String use =
        Double.isNaN(zero.temperatureC())
            ? "not taken away: zero the sensor, so that it is known since which temperature"
            : String.format(
                Locale.ROOT, "taken away since the zero's %.0f °C", zero.temperatureC());
    return use + age(keptAt, now).map(age -> "; learnt last " + age + " ago").orElse("");
  }

  private static Optional<String> age(String keptAt, Instant now) {
    try {
      Duration age = Duration.between(Instant.parse(keptAt), now);
      if (age.isNegative()) {
        return Optional.empty();
      }
      return Optional.of(
          age.toHours() < 48 ? count(age.toHours(), "hour") : count(age.toDays(), "day"));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  private static String count(long many, String what) {
    return many == 0 ? "less than an hour" : many + " " + what + (many == 1 ? "" : "s");
  }
}
