package io.pitchwatch.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.pitchwatch.attitude.Mounting;
import io.pitchwatch.attitude.SensorSetup;
import io.pitchwatch.attitude.UpVector;
import io.pitchwatch.attitude.Zero;
import io.pitchwatch.bus.Pi4jBus;
import io.pitchwatch.floor.FloorReading;
import io.pitchwatch.floor.FloorState;
import io.pitchwatch.sensing.Chip;
import io.pitchwatch.store.Store;
import io.pitchwatch.visit.Guide;
import io.pitchwatch.visit.Health;
import io.pitchwatch.visit.Installation;
import io.pitchwatch.visit.Report.SensorReport;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.LongConsumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two sensors on one coach, through their registers: who is believed, and how the frame twists. */
class SensorsSimulationTest {

  private static final Instant NOW = Instant.parse("2026-11-01T00:00:00Z");

  /** Both chips stand on one body, the second one screwed on with a roll of one degree. */
  private static final String COACH =
      """
      seed = 21
      [[sensor]]
      id = "front"
      chip = "adxl355"
      address = "0x1D"
      [[sensor]]
      id = "rear"
      chip = "mpu6050"
      address = "0x68"
      mounting-error = { roll = "%s", pitch = "%s" }
      [site]
      roll = "1 deg"
      pitch = "-0.5 deg"
      [climate]
      temperature = "20 C"
      """;

  @TempDir Path directory;

  private final class Pair implements AutoCloseable {
    final Pi4jBus buses;
    final LongConsumer clock;
    final LooseWire wire;
    final List<SensorPost> posts;
    final Sensors sensors;
    long nowNanos;

    Pair(String scenario) throws IOException {
      Path file = Files.writeString(directory.resolve("two.toml"), scenario);
      buses = BusChoice.simulated(file.toString()).open();
      clock = buses.face(LongConsumer.class).orElseThrow();
      clock.accept(0);
      wire = new LooseWire(buses.at(1, 0x1D));
      posts =
          List.of(
              new SensorPost("front", Chip.ADXL355.driver(wire), Mounting.FLAT),
              new SensorPost("rear", Chip.MPU6050.driver(buses.at(1, 0x68)), Mounting.FLAT));
      Upkeep upkeep = new Upkeep(posts, Store.inMemory(0).kept());
      sensors = new Sensors(posts, upkeep, nanos -> NOW);
    }

    FloorReading at(double seconds) {
      while (nowNanos < seconds * 1e9) {
        nowNanos += 100_000_000L;
        clock.accept(nowNanos);
        sensors.poll(nowNanos);
        sensors.reports(nowNanos);
        sensors.installation(nowNanos);
      }
      return sensors.floor(nowNanos);
    }

    Installation installation() {
      return sensors.installation(nowNanos);
    }

    @Override
    public void close() {
      buses.close();
    }
  }

  private static String plain() {
    return COACH.formatted("0 deg", "0 deg");
  }

  @Test
  void secondTakesOverWithItsOwnZeroWhenTheFirstDiesAndGivesBackAfterwards() throws Exception {
    try (Pair pair = new Pair(COACH.formatted("1 deg", "0 deg"))) {
      // The second one's zero takes its own mounting error away.
      double askew = Math.toRadians(1);
      UpVector seen = new UpVector(0, Math.sin(askew), Math.cos(askew));
      pair.posts.get(1).use(SensorSetup.NONE.with(new Zero(seen, 1e-4, 20, "")));
      FloorReading first = pair.at(55);
      assertEquals("front", pair.sensors.believed().id());
      assertEquals(1, first.steady().rollDeg(), 0.3);
      pair.wire.loose = true;
      FloorReading second = pair.at(70);
      assertEquals("rear", pair.sensors.believed().id());
      assertEquals(Health.FAILED, pair.sensors.reports(pair.nowNanos).get(0).health());
      assertEquals(FloorState.STEADY, second.state());
      assertEquals(first.steady().rollDeg(), second.steady().rollDeg(), 0.1, "floor goes on");
      assertTrue(Double.isNaN(pair.installation().twistRad()), "no twist by one sensor");
      pair.wire.loose = false;
      pair.at(100);
      assertEquals("rear", pair.sensors.believed().id(), "not back at once");
      pair.at(150);
      assertEquals("front", pair.sensors.believed().id(), "back after a minute's good health");
    }
  }

  @Test
  void twistIsWhatTheRearLeansMoreThanTheFront() throws Exception {
    try (Pair pair = new Pair(COACH.formatted("0.6 deg", "0 deg"))) {
      pair.at(60);
      double twistDeg = Math.toDegrees(pair.installation().twistRad());
      assertEquals(0.6, Math.abs(twistDeg), 0.05);
      assertEquals("", pair.installation().zeroDoubt());
    }
  }

  @Test
  void calibrationAndUndoAreOfTheSensorThatIsNamed() throws Exception {
    try (Pair pair = new Pair(plain())) {
      pair.at(40);
      Upkeep upkeep = pair.sensors.upkeep();
      CareStep begun = upkeep.calibrate(Optional.of("rear"), "");
      assertTrue(begun.said().startsWith("calibration begun: take sensor rear in"), begun.said());
      pair.at(45);
      List<SensorReport> reports = pair.sensors.reports(pair.nowNanos);
      assertEquals(Health.GOOD, reports.get(0).health());
      assertEquals("it is being calibrated", reports.get(1).reason());
      upkeep.cancel(Guide.Task.CALIBRATE);
      pair.at(90);
      assertTrue(upkeep.zero(pair.nowNanos, "now").done());
      assertTrue(upkeep.undo(Optional.of("rear")).done());
      assertEquals("now", pair.posts.get(0).setup().zero().date(), "the front one keeps its zero");
      assertEquals(SensorSetup.NONE, pair.posts.get(1).setup());
      assertEquals(
          "zero none, heading none, calibration none; sensor rear: zero of now, heading none,"
              + " calibration none",
          upkeep.guide().undo());
    }
  }

  @Test
  void zeroIsTakenOfTheSensorThatLivesThoughTheFirstIsDead() throws Exception {
    try (Pair pair = new Pair(plain())) {
      pair.at(20);
      pair.wire.loose = true;
      pair.at(60);
      CareStep zero = pair.sensors.upkeep().zero(pair.nowNanos, "now");
      assertTrue(zero.done(), zero.said());
      assertTrue(zero.said().startsWith("sensor front: not done, the sensor: "), zero.said());
      assertTrue(zero.said().contains("; sensor rear: the floor as it stands now is level"));
      assertEquals(SensorSetup.NONE, pair.posts.get(0).setup());
      assertEquals(0, pair.at(100).steady().rollDeg(), 0.03);
    }
  }

  @Test
  void sensorsThatDifferFrontToBackSayThatOneMoved() throws Exception {
    try (Pair pair = new Pair(COACH.formatted("0 deg", "1 deg"))) {
      pair.at(60);
      String doubt = pair.installation().zeroDoubt();
      assertTrue(doubt.startsWith("sensors front and rear differ front to back by "), doubt);
      assertTrue(doubt.endsWith("; one of them has moved or drifted"), doubt);
    }
  }

  @Test
  void zeroTakenInTheColdIsDoubtedByAChipThatDrifts() throws Exception {
    try (Pair pair = new Pair(plain())) {
      Zero winter = new Zero(UpVector.LEVEL, 1e-4, -5, "2026-01-15T00:00:00Z");
      pair.posts.get(0).use(SensorSetup.NONE.with(winter));
      pair.at(10);
      assertEquals("", pair.installation().zeroDoubt(), "25 K are nothing to an ADXL355");
      assertEquals(290, pair.installation().zeroAgeDays(), 0.5);
    }
    String hot = plain().replace("chip = \"adxl355\"\naddress = \"0x1D\"", "chip = \"adxl345\"");
    try (Pair pair = new Pair(hot)) {
      pair.posts.get(1).use(SensorSetup.NONE.with(new Zero(UpVector.LEVEL, 1e-4, -5, "")));
      pair.at(10);
      assertEquals("rear", pair.sensors.believed().id(), "nothing answers where the first should");
      String doubt = pair.installation().zeroDoubt();
      assertTrue(doubt.contains("\u00b0C warmer than when sensor rear was zeroed"), doubt);
    }
  }
}
