package io.pitchwatch.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.pitchwatch.attitude.Lean;
import io.pitchwatch.attitude.Mounting;
import io.pitchwatch.config.Chip;
import io.pitchwatch.config.Config;
import io.pitchwatch.config.ConfigOutcome;
import io.pitchwatch.config.ConfigReader;
import io.pitchwatch.floor.FloorState;
import io.pitchwatch.mqtt.LinkClock;
import io.pitchwatch.mqtt.homie.LogLevel;
import io.pitchwatch.visit.Care;
import io.pitchwatch.visit.Report;
import io.pitchwatch.visit.Report.AlertReport;
import io.pitchwatch.visit.SensorSight;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A sensor that drifts with temperature, in a place on which the sun shines now and then, through
 * its registers and the whole service. By default the sun comes every three hours for half a day;
 * with {@code -Dpitchwatch.full=true} once a day for five days, which takes three minutes.
 */
class TemperatureDriftSimulationTest {

  private static final boolean FULL = Boolean.getBoolean("pitchwatch.full");
  private static final double CYCLE_H = FULL ? 24 : 3;
  private static final double RUN_H = FULL ? 120 : 12;
  private static final double ZERO_S = 600;

  /** False lean for each degree: 0.8 mg/K forward, −0.6 mg/K to the left, near level. */
  private static final double PITCH_PER_C = -0.8e-3;

  private static final double ROLL_PER_C = -0.6e-3;
  private static final Instant BEGINNING = Instant.parse("2026-06-01T12:00:00Z");

  @TempDir Path directory;

  /** The service at a coach, and what it says. */
  private final class Service implements AutoCloseable {
    final Config config;
    final SimulatedCoach coach;
    final List<String> alerts = new ArrayList<>();
    final List<String> said = new ArrayList<>();
    Lookout lookout;
    Report last = assertNever();
    long nowNanos;

    Service(String scenario, Config.Sensor... before) throws IOException {
      Scenarios.unpack("arrival", directory);
      Path file = Files.writeString(directory.resolve("sun.toml"), scenario);
      ConfigOutcome outcome = new ConfigReader(Map.of()).readScenario(file);
      Config read = assertInstanceOf(ConfigOutcome.Good.class, outcome, outcome::toString).config();
      config =
          new Config(
              read.file(),
              read.coach(),
              Stream.concat(Stream.of(before), read.sensors().stream()).toList(),
              read.mqtt(),
              read.page(),
              new Config.Store(directory.resolve("store")));
      SimulatedCoach.Opening opening = SimulatedCoach.open(file);
      coach =
          assertInstanceOf(SimulatedCoach.Opening.Opened.class, opening, opening::toString).coach();
      lookout = begin();
    }

    @SuppressWarnings("NullAway") // heard before it is asked for
    private Report assertNever() {
      return null;
    }

    private Lookout begin() {
      LinkClock clock = new LinkClock(() -> nowNanos, BEGINNING::plusNanos);
      Audience audience =
          new Audience() {
            @Override
            public void hear(Report report) {
              last = report;
              report.alerts().stream()
                  .map(AlertReport::id)
                  .filter(id -> !alerts.contains(id))
                  .forEach(alerts::add);
            }

            @Override
            public void say(LogLevel level, String text) {
              said.add(text);
            }
          };
      return new Lookout(
          config,
          coach.buses(),
          new Lookout.Surroundings(clock, Runnable::run, Runnable::run, Runnable::run, audience));
    }

    /** Switched off and on again. */
    void restart() {
      lookout.close();
      lookout = begin();
    }

    /** Goes on, and looks at what is known once a minute. */
    void until(double seconds, Runnable look) throws InterruptedException {
      long minuteNanos = nowNanos;
      while (nowNanos < seconds * 1e9) {
        nowNanos = Math.max(lookout.step(nowNanos), nowNanos + 1000);
        lookout.carryOut(0);
        coach.turnTo(nowNanos);
        if (nowNanos - minuteNanos >= 60_000_000_000L) {
          minuteNanos = nowNanos;
          look.run();
        }
      }
    }

    void zero() throws InterruptedException {
      until(ZERO_S, () -> {});
      lookout.orders().zero();
      until(ZERO_S + 60, () -> {});
      assertTrue(said.stream().anyMatch(it -> it.startsWith("zero: ")), said::toString);
    }

    SensorSight sight() {
      return last.sensors().get(0).sight();
    }

    @Override
    public void close() {
      lookout.abandon();
      coach.close();
    }
  }

  private static String scenario(String more) {
    String sensor =
        """
        chip = "mpu6050"
        address = "0x68"
        temperature-drift = { x = "0.8 mg/K", y = "-0.6 mg/K", z = "1.2 mg/K" }
        """;
    return scenario(sensor, more);
  }

  private static String scenario(String sensor, String more) {
    return String.format(
            Locale.ROOT,
            """
            seed = 55
            coach = "heron.toml"
            [sensor]
            %3$s
            bias = "0 mg"
            [site]
            surface = "concrete"
            [climate]
            temperature = "16 C"
            day-swing = "5 K"
            [[event]]
            at = "30 min"
            does = "sun"
            rise = "12 K"
            lag = "25 min"
            lasts = "%1$.2f h"
            every = "%2$.2f h"
            times = 40
            [[event]]
            at = "50 min"
            does = "walk"
            people = 2
            lasts = "20 min"
            every = "2 h"
            times = 60
            [run]
            days = 9
            """,
            CYCLE_H / 3,
            CYCLE_H,
            sensor)
        + more;
  }

  /** Errors of a floor that is level, minute by minute, as seen and as shown. */
  private static final class Errors {
    double seen2;
    double shown2;
    int angles;
    int covered;

    void add(Report report) {
      if (report.floor().state() != FloorState.STEADY) {
        return;
      }
      Lean seen = report.sensors().get(0).sight().seen().steady();
      Lean shown = report.floor().steady();
      seen2 += square(seen.rollRad()) + square(seen.pitchRad());
      shown2 += square(shown.rollRad()) + square(shown.pitchRad());
      for (double error : new double[] {shown.rollRad(), shown.pitchRad()}) {
        angles++;
        covered += Math.abs(error) < 2 * report.floor().uncertaintyRad() ? 1 : 0;
      }
    }

    private static double square(double value) {
      return value * value;
    }

    double seenDeg() {
      return Math.toDegrees(Math.sqrt(seen2 / angles));
    }

    double shownDeg() {
      return Math.toDegrees(Math.sqrt(shown2 / angles));
    }

    double coverage() {
      return (double) covered / angles;
    }
  }

  @Test
  void driftIsLearntTakenAwayAndKeptAndTheSunIsNoSettling() throws Exception {
    try (Service service = new Service(scenario(""))) {
      service.zero();
      service.until((RUN_H - CYCLE_H) * 3600, () -> {});
      Errors errors = new Errors();
      service.until(RUN_H * 3600, () -> errors.add(service.last));
      SensorSight sight = service.sight();
      double rollPerC = sight.drift().perC().y();
      double pitchPerC = -sight.drift().perC().x();
      double error = sight.drift().errorPerC();
      System.out.printf(
          Locale.ROOT,
          "MPU-6050 in the sun: lean wrong by %.3f deg rms as seen, %.3f as shown, %.1f %% inside"
              + " two stated errors; learnt %.4f and %.4f deg/°C ± %.4f, true %.4f and %.4f%n",
          errors.seenDeg(),
          errors.shownDeg(),
          100 * errors.coverage(),
          Math.toDegrees(rollPerC),
          Math.toDegrees(pitchPerC),
          Math.toDegrees(error),
          Math.toDegrees(ROLL_PER_C),
          Math.toDegrees(PITCH_PER_C));
      assertEquals(ROLL_PER_C, rollPerC, 2 * error);
      assertEquals(PITCH_PER_C, pitchPerC, 2 * error);
      assertTrue(errors.shownDeg() < errors.seenDeg() / 3, "it is taken away");
      assertTrue(errors.coverage() > 0.93, "what is stated holds");
      assertFalse(service.alerts.contains("settling"), service.alerts::toString);

      service.restart();
      service.until(RUN_H * 3600 + 60, () -> {});
      assertEquals(rollPerC, service.sight().drift().perC().y(), error / 10, "kept");
      assertTrue(service.sight().drift().errorPerC() < 1.1 * error, "with its error");
      service.lookout.orders().care(Care.DRIFT_FORGET, Optional.empty());
      service.until(RUN_H * 3600 + 70, () -> {});
      assertFalse(service.sight().drift().isLearnt(), service.said::toString);
      assertEquals(Lean.LEVEL, service.sight().drifted());
      service.restart();
      service.until(RUN_H * 3600 + 80, () -> {});
      assertFalse(service.sight().drift().isLearnt(), "forgotten for good");
    }
  }

  /** As an ADXL345 typically drifts, both its axes at once. */
  @Test
  void whatTheSunMayDoToASensorWithoutAThermometerIsStated() throws Exception {
    String sensor =
        """
        chip = "adxl345"
        address = "0x53"
        temperature-drift = { x = "0.4 mg/K", y = "-0.4 mg/K", z = "1.2 mg/K" }
        """;
    try (Service service = new Service(scenario(sensor, ""))) {
      service.zero();
      double justZeroedDeg = Math.toDegrees(service.last.floor().uncertaintyRad());
      Errors errors = new Errors();
      service.until(9 * 3600, () -> errors.add(service.last));
      double laterDeg = Math.toDegrees(service.last.floor().uncertaintyRad());
      System.out.printf(
          Locale.ROOT,
          "ADXL345 in the sun: lean wrong by %.3f deg rms, %.1f %% inside two stated errors;"
              + " stated %.3f deg after the zero, %.3f deg in the end%n",
          errors.shownDeg(),
          100 * errors.coverage(),
          justZeroedDeg,
          laterDeg);
      assertTrue(justZeroedDeg < 0.05, "a zero is worth something: " + justZeroedDeg);
      assertTrue(laterDeg > 0.1 && laterDeg < 0.2, "it ages: " + laterDeg);
      assertTrue(errors.coverage() > 0.93, "what is stated holds");
      assertFalse(service.alerts.contains("settling"), service.alerts::toString);
      assertFalse(service.alerts.contains("floor"), service.alerts::toString);
    }
  }

  /** The first sensor of the config has no thermometer, and never answers. */
  @Test
  void whoTakesOverIsJudgedByItsOwnTemperature() throws Exception {
    Config.Sensor dead = new Config.Sensor("dead", Chip.ADXL345, 1, 0x53, Mounting.FLAT);
    try (Service service = new Service(scenario(""), dead)) {
      service.zero();
      service.until(9 * 3600, () -> {});
      SensorSight sight = service.last.sensors().get(1).sight();
      double told = service.last.ground().roll().driftRadPerC();
      assertEquals(sight.drift().perC().y(), told, 1e-9, "the ground is that of the second");
      assertEquals(ROLL_PER_C, told, 2 * sight.drift().errorPerC());
      assertFalse(service.alerts.contains("settling"), service.alerts::toString);
      assertTrue(service.alerts.contains("sensor-dead-lost"), service.alerts::toString);
    }
  }

  @Test
  void coachThatSinksInTheSunIsTold() throws Exception {
    String sinking =
        """
        [[event]]
        at = "6 h"
        does = "settle"
        roll = "3 deg"
        lasts = "10 h"
        """;
    try (Service service = new Service(scenario(sinking))) {
      service.zero();
      service.until(6 * 3600, () -> {});
      assertFalse(service.alerts.contains("settling"), service.alerts::toString);
      while (!service.alerts.contains("settling") && service.nowNanos < 16 * 3600e9) {
        service.until(service.nowNanos / 1e9 + 600, () -> {});
      }
      double hours = service.nowNanos / 3600e9 - 6;
      System.out.printf(Locale.ROOT, "0.3 deg/h in the sun: told after %.1f h%n", hours);
      assertTrue(hours < 9, "an hour before the fridge's limit: " + hours);
      double rollDeg = service.last.floor().steady().rollDeg();
      assertEquals(
          0.3 * hours, rollDeg, 0.2, "drift is not taken for the sinking, nor it for drift");
    }
  }
}
