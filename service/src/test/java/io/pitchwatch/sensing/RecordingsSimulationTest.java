package io.pitchwatch.sensing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Real recordings played through the chip's registers: what the driver hands on are the recording's
 * own values within one step of the chip.
 */
class RecordingsSimulationTest {

  private static final double LSB = 1 / 256.0;

  /** Times and values of a recording, g. */
  private static final class Recording {
    final double[] s;
    final double[][] g;

    Recording(int rows) {
      s = new double[rows];
      g = new double[3][rows];
    }
  }

  @Test
  void busIdling() throws IOException {
    plays("bus-idling.csv", 800);
  }

  @Test
  void busRideWithStops() throws IOException {
    plays("bus-ride-with-stops.csv", 200);
  }

  @Test
  void tramRideWithStops() throws IOException {
    plays("tram-ride-with-stops.csv", 200);
  }

  @Test
  void mpu6050ElevenMinutesStill() throws IOException {
    plays("mpu6050-still-11min.csv", 200);
  }

  @Test
  void vehicleStandingEngineIdling() throws IOException {
    plays("vehicle-standing-engine-idling.csv", 100);
  }

  @Test
  void vehicleUnderWay() throws IOException {
    plays("vehicle-under-way.csv", 100);
  }

  /** Raw counts turned into g by the bias and scale that its SOURCE.md prints. */
  @Test
  void multiPoseRawCounts() throws IOException {
    List<String> lines = SharedFiles.lines("recordings/multi-pose-raw-counts.csv");
    double[] bias = {33124.2, 33275.2, 32364.4};
    double[] perG = {414.478 * 9.81744, 412.102 * 9.81744, 414.538 * 9.81744};
    StringBuilder csv = new StringBuilder("t_s,ax_g,ay_g,az_g\n");
    double first = Double.parseDouble(lines.get(1).split(",", -1)[0]);
    for (String line : lines.subList(1, lines.size())) {
      String[] cells = line.split(",", -1);
      csv.append(Double.parseDouble(cells[0]) - first);
      for (int axis = 0; axis < 3; axis++) {
        csv.append(',').append((Double.parseDouble(cells[axis + 1]) - bias[axis]) / perG[axis]);
      }
      csv.append('\n');
    }
    Path file = Files.createTempFile("multi-pose", ".csv");
    file.toFile().deleteOnExit();
    plays(Files.writeString(file, csv), 200);
  }

  private static void plays(String name, double rateHz) throws IOException {
    plays(SharedFiles.path("recordings/" + name).toAbsolutePath(), rateHz);
  }

  private static void plays(Path file, double rateHz) throws IOException {
    Recording recording = read(file);
    double endS = recording.s[recording.s.length - 1] - 0.05;
    String scenario =
        """
        seed = 5
        [sensor]
        chip = "adxl345"
        recording = "%s"
        """
            .formatted(file);
    try (Bench bench =
        new Bench(Chip.ADXL345, new AccelerometerSettings(2, rateHz), scenario).runTo(endS)) {
      int sound = bench.samples.size() + bench.saturated.size();
      assertTrue(sound > 0.95 * (endS - 1) * rateHz, "only " + sound + " samples in " + endS);
      assertEquals(0, bench.gaps.size());
      int at = 0;
      for (Bench.Sample sample : bench.samples) {
        at = assertWithinOneStep(recording, at, sample, 1.5 / rateHz);
      }
    }
  }

  /** A sample's time is known within a period; so its value lies between those about that time. */
  private static int assertWithinOneStep(
      Recording recording, int from, Bench.Sample sample, double slackS) {
    int first = from;
    while (first + 1 < recording.s.length && recording.s[first + 1] < sample.s() - slackS) {
      first++;
    }
    double[] value = {sample.x(), sample.y(), sample.z()};
    for (int axis = 0; axis < 3; axis++) {
      double least = Double.POSITIVE_INFINITY;
      double most = Double.NEGATIVE_INFINITY;
      int i = first;
      do {
        least = Math.min(least, recording.g[axis][i]);
        most = Math.max(most, recording.g[axis][i]);
        i++;
      } while (i < recording.s.length && recording.s[i - 1] < sample.s() + slackS);
      if (value[axis] < least - LSB || value[axis] > most + LSB) {
        fail(sample + " axis " + axis + "; recording " + least + " to " + most);
      }
    }
    return first;
  }

  private static Recording read(Path file) throws IOException {
    List<String> lines = new ArrayList<>(Files.readAllLines(file));
    lines.remove(0);
    Recording recording = new Recording(lines.size());
    for (int i = 0; i < recording.s.length; i++) {
      String[] cells = lines.get(i).split(",", -1);
      recording.s[i] = Double.parseDouble(cells[0]);
      for (int axis = 0; axis < 3; axis++) {
        recording.g[axis][i] = Double.parseDouble(cells[axis + 1]);
      }
    }
    return recording;
  }
}
