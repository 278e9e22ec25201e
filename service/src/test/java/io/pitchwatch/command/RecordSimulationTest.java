package io.pitchwatch.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.pitchwatch.sensing.Recorder;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Recording a simulated coach, and playing what was recorded through the registers again. */
class RecordSimulationTest {

  private static final long MINUTE = 60_000_000_000L;

  private static final String COACH =
      """
      seed = 11
      [sensor]
      chip = "adxl355"
      bias = { x = "12 mg", y = "-9 mg", z = "25 mg" }
      [site]
      roll = "2 deg"
      pitch = "-1 deg"
      [climate]
      temperature = "18 C"
      """;

  @TempDir Path directory;

  private final StringWriter said = new StringWriter();

  private Recorder.Outcome record(String scenario, Path file, long forNanos)
      throws IOException, InterruptedException {
    try (VirtualBench bench = new VirtualBench(directory, "adxl355", scenario)) {
      RecordingSession session =
          new RecordingSession(bench.bench().driver(), file, forNanos, new PrintWriter(said, true));
      return session.run(bench.bench());
    }
  }

  private static double[] mean(Path file) throws IOException {
    List<String> lines = Files.readAllLines(file);
    double[] mean = new double[4];
    for (String line : lines.subList(1, lines.size())) {
      String[] cells = line.split(",", -1);
      for (int i = 0; i < 4; i++) {
        mean[i] += Double.parseDouble(cells[i + 1]) / (lines.size() - 1);
      }
    }
    return mean;
  }

  @Test
  void oneMinuteIsRecordedWithTemperatureAndPlaysAgain() throws Exception {
    Path first = directory.resolve("first.csv");
    Path second = directory.resolve("second.csv");
    var written = assertInstanceOf(Recorder.Outcome.Written.class, record(COACH, first, MINUTE));
    assertEquals(60, written.seconds(), 0.1);
    assertEquals(7500.0, (double) written.rows(), 20);
    assertEquals("t_s,ax_g,ay_g,az_g,temp_c", Files.readAllLines(first).get(0));
    String again = "seed = 12\n[sensor]\nchip = \"adxl355\"\nrecording = \"" + first + "\"\n";
    assertInstanceOf(Recorder.Outcome.Written.class, record(again, second, MINUTE - MINUTE / 20));
    double[] was = mean(first);
    double[] is = mean(second);
    for (int i = 0; i < 3; i++) {
      assertEquals(was[i], is[i], 2e-5, "axis " + i);
    }
    assertEquals(18, was[3], 1.5, "temperature");
    assertEquals(was[3], is[3], 0.3, "temperature played again");
  }

  @Test
  void progressIsSaidTenTimes() throws Exception {
    record(COACH, directory.resolve("long.csv"), 2 * MINUTE);
    List<String> lines = said.toString().lines().toList();
    assertTrue(Math.abs(lines.size() - 10) <= 1, said.toString());
    assertTrue(lines.get(0).startsWith("  12 s of 2 min: "), lines.get(0));
    assertTrue(lines.get(3).endsWith(" samples; sensor: good"), lines.get(3));
  }

  @Test
  void sensorThatIsNotThereIsToldAfterTenSeconds() throws Exception {
    Path file = directory.resolve("none.csv");
    String elsewhere = "seed = 1\n[sensor]\nchip = \"adxl355\"\naddress = \"0x53\"\n";
    var failed = assertInstanceOf(Recorder.Outcome.Failed.class, record(elsewhere, file, MINUTE));
    assertEquals("no samples: no chip answers at this address", failed.text());
    assertFalse(Files.exists(file));
  }
}
