package io.pitchwatch.config;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A scenario's coach is read as a config's, and the rest of the scenario is let be. */
class ScenarioCoachTest {

  private static final String SCENARIO =
      """
      seed = 7

      [site]
      slope = "2 deg"
      [sensor]
      chip = "adxl345"
      address = "0x1D"
      noise = 1.5
      [run]
      days = 3
      [[event]]
      at = "90 min"
      does = "rain"
      """;

  @TempDir Path directory;

  private ConfigOutcome read(String toml) throws IOException {
    Path file = Files.writeString(directory.resolve("scenario.toml"), toml);
    return new ConfigReader(Map.of()).readScenario(file);
  }

  @Test
  void aCoachMayStandInTheScenario() throws IOException {
    Config config =
        assertInstanceOf(ConfigOutcome.Good.class, read(SCENARIO + Configs.LEAST)).config();
    assertEquals("heron", config.coach().id());
    assertEquals(0x1D, config.sensors().get(0).address());
  }

  @Test
  void aCoachMayBeAConfigBesideTheScenario() throws IOException {
    Files.writeString(directory.resolve("heron.toml"), Configs.LEAST);
    Config config =
        assertInstanceOf(ConfigOutcome.Good.class, read("coach = \"heron.toml\"\n" + SCENARIO))
            .config();
    assertEquals("heron", config.coach().id());
    assertEquals(directory.resolve("heron.toml"), config.file());
  }

  @Test
  void sensorsThatTheScenarioNamesAreTheCoachs() throws IOException {
    Files.writeString(directory.resolve("heron.toml"), Configs.LEAST);
    String scenario = "coach = \"heron.toml\"\n[sensor]\nchip = \"mpu6050\"\nnoise = 1\n";
    Config config = assertInstanceOf(ConfigOutcome.Good.class, read(scenario)).config();
    assertEquals(Chip.MPU6050, config.sensors().get(0).chip());
    String wrong = only(read(scenario.replace("6050", "9999")));
    assertTrue(wrong.startsWith("scenario.toml:3: sensor.chip"), wrong);
  }

  @Test
  void theCoachsFaultsAreToldWithTheFileTheyAreIn() throws IOException {
    Files.writeString(directory.resolve("heron.toml"), Configs.LEAST.replace("kg", "mm"));
    assertTrue(only(read("coach = \"heron.toml\"\n" + SCENARIO)).startsWith("heron.toml:8: axle"));
    assertTrue(
        only(read(SCENARIO + Configs.LEAST.replace("kg", "mm"))).startsWith("scenario.toml:21"));
    assertTrue(only(read("coach = \"none.toml\"\n")).startsWith("none.toml: found no file /"));
    assertTrue(only(read("coach = \"\"\n")).startsWith("scenario.toml:1: coach: found \"\""));
  }

  @Test
  void aCoachsOwnTablesStayStrict() throws IOException {
    String fault = only(read(SCENARIO + Configs.LEAST + "trak = \"2 m\"\n"));
    assertTrue(fault.startsWith("scenario.toml:23: axle[1].trak"), fault);
  }

  @Test
  void aScenarioWithoutACoachIsTold() throws IOException {
    List<ConfigFault> faults =
        assertInstanceOf(ConfigOutcome.Faulty.class, read(SCENARIO)).faults();
    assertEquals(List.of("coach", "axle"), faults.stream().map(ConfigFault::key).toList());
  }

  private static String only(ConfigOutcome outcome) {
    List<ConfigFault> faults = assertInstanceOf(ConfigOutcome.Faulty.class, outcome).faults();
    assertEquals(1, faults.size(), faults::toString);
    return faults.get(0).toString();
  }
}
