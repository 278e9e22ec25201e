package io.pitchwatch.config;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.pitchwatch.attitude.Mounting;
import io.pitchwatch.coach.Coach;
import io.pitchwatch.coach.Direction;
import io.pitchwatch.coach.Piece;
import java.net.URI;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The sample that the documentation shows is a good config, and says what it seems to say. */
class SampleConfigTest {

  private static final Path SAMPLE = Path.of("../docs/examples/heron.toml");

  private final Config heron =
      assertInstanceOf(ConfigOutcome.Good.class, new ConfigReader(Map.of()).read(SAMPLE)).config();

  @Test
  void theCoachStandsOnTwoAxlesTheBrakedOneTwinned() {
    Coach coach = heron.coach();
    assertEquals("heron", coach.id());
    assertEquals(List.of(0.0, -5600.0), coach.axles().stream().map(it -> it.positionMm()).toList());
    assertEquals(List.of(false, true), coach.axles().stream().map(it -> it.twin()).toList());
    assertEquals(
        List.of(false, true), coach.axles().stream().map(it -> it.parkingBrake()).toList());
    assertEquals(3600, coach.axles().get(0).loadKg());
  }

  @Test
  void stiffnessIsInProportionToLoadUnlessGiven() {
    Coach coach = heron.coach();
    assertEquals(
        3600.0 / 6900, coach.axles().get(0).stiffness() / coach.axles().get(1).stiffness(), 1e-12);
  }

  @Test
  void dressedLumberMayBeGivenInInches() {
    Piece board = heron.coach().pieces().get(1);
    assertEquals(38.1, board.thicknessMm());
    assertEquals(285.75, board.widthMm());
    assertEquals(Double.POSITIVE_INFINITY, board.maxLoadKg());
    assertEquals(4500, heron.coach().pieces().get(0).maxLoadKg());
  }

  @Test
  void anglesAreRadiansInside() {
    assertEquals(Math.toRadians(0.3), heron.coach().levelling().twistRad());
    assertEquals(Math.toRadians(6), heron.coach().fridges().get(0).frontToBackRad());
    assertTrue(heron.coach().fridges().get(0).faces().isEmpty());
    assertEquals(Direction.REAR, heron.coach().doors().get(0).opensTowards());
  }

  @Test
  void theServiceIsWhereTheFileSays() {
    Config.Sensor sensor = heron.sensors().get(0);
    assertEquals(new Config.Sensor("floor", Chip.ADXL345, 1, 0x53, Mounting.FLAT), sensor);
    assertEquals(URI.create("mqtt://127.0.0.1:1883"), heron.mqtt().url());
    assertEquals(Config.Broker.OWN, heron.mqtt().broker());
    Path beside = SAMPLE.toAbsolutePath().normalize().resolveSibling("mqtt-password");
    assertEquals(beside, heron.mqtt().login().orElseThrow().passwordFile());
    assertEquals(8080, heron.page().port());
    assertEquals(Path.of("/var/lib/pitchwatch"), heron.store().directory());
  }
}
