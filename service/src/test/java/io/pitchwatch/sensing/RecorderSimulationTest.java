package io.pitchwatch.sensing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RecorderSimulationTest {

  private static final String COACH =
      """
      seed = 3
      [sensor]
      chip = "adxl345"
      [site]
      roll = "2 deg"
      pitch = "-1 deg"
      """;

  @TempDir Path directory;

  private static Bench play(String scenario, double endS) {
    return new Bench(Chip.ADXL345, Adxl345Driver.DEFAULTS, scenario).runTo(endS);
  }

  private static Recorder record(Bench bench, Path file, double mostS, long mostBytes) {
    Recorder recorder =
        new Recorder(file, (long) (mostS * 1e9), mostBytes, bench.driver::temperatureC);
    for (Bench.Sample sample : bench.samples) {
      recorder.sample((long) (sample.s() * 1e9), sample.x(), sample.y(), sample.z());
    }
    return recorder;
  }

  @Test
  void recordingPlayedAgainGivesTheSameSamples() throws IOException {
    Path file = directory.resolve("owner.csv");
    try (Bench first = play(COACH, 30)) {
      Recorder recorder = record(first, file, 20, 1_000_000);
      assertTrue(recorder.done());
      assertFalse(Files.exists(file), "the file shows before it is complete");
      var written = assertInstanceOf(Recorder.Outcome.Written.class, recorder.finish());
      assertEquals(20, written.seconds(), 0.02);
      assertEquals(2001.0, (double) written.rows(), 2);
      List<String> lines = Files.readAllLines(file);
      assertEquals("t_s,ax_g,ay_g,az_g", lines.get(0));
      assertEquals(written.rows() + 1, lines.size());
      String again = "seed = 4\n[sensor]\nchip = \"adxl345\"\nrecording = \"" + file + "\"\n";
      try (Bench second = play(again, 19)) {
        for (Bench.Sample sample : second.samples) {
          assertTrue(holds(lines, sample), sample + " is not in the recording");
        }
      }
    }
  }

  /** Whether a sample's very values stand in the recording within two rows of its time. */
  private static boolean holds(List<String> lines, Bench.Sample sample) {
    int row = 1 + (int) Math.round(sample.s() * 100);
    for (int i = Math.max(1, row - 2); i <= Math.min(lines.size() - 1, row + 2); i++) {
      String[] cells = lines.get(i).split(",", -1);
      if (Math.abs(Double.parseDouble(cells[1]) - sample.x()) < 1e-6
          && Math.abs(Double.parseDouble(cells[2]) - sample.y()) < 1e-6
          && Math.abs(Double.parseDouble(cells[3]) - sample.z()) < 1e-6) {
        return true;
      }
    }
    return false;
  }

  @Test
  void fileStaysWithinItsBound() throws IOException {
    Path file = directory.resolve("small.csv");
    try (Bench bench = play(COACH, 20)) {
      assertInstanceOf(Recorder.Outcome.Written.class, record(bench, file, 1000, 5_000).finish());
    }
    assertEquals(5_000.0, (double) Files.size(file), 40);
  }

  @Test
  void directoryThatIsMissingIsToldAndLeavesNothing() {
    Path file = directory.resolve("nowhere/owner.csv");
    try (Bench bench = play(COACH, 3)) {
      var failed =
          assertInstanceOf(
              Recorder.Outcome.Failed.class, record(bench, file, 1000, 5_000).finish());
      assertTrue(failed.text().startsWith("cannot write " + file), failed.text());
    }
  }

  @Test
  void nothingIsWrittenWithoutASample() {
    Path file = directory.resolve("empty.csv");
    Recorder recorder = new Recorder(file, 1, 1, () -> 20);
    assertEquals(new Recorder.Outcome.Failed("no sample came"), recorder.finish());
    assertFalse(Files.exists(file));
  }

  @Test
  void thermometerHasItsColumn() throws IOException {
    Path file = directory.resolve("warm.csv");
    Recorder recorder = new Recorder(file, 1_000_000_000, 1000, () -> 21.505);
    recorder.sample(5_000_000_000L, -0.0000004, 0.5, -1.25);
    recorder.sample(5_010_000_000L, 1, -0.000001, 0);
    assertInstanceOf(Recorder.Outcome.Written.class, recorder.finish());
    assertEquals(
        List.of(
            "t_s,ax_g,ay_g,az_g,temp_c",
            "0.0000,0.000000,0.500000,-1.250000,21.51",
            "0.0100,1.000000,-0.000001,0.000000,21.51"),
        Files.readAllLines(file));
  }
}
