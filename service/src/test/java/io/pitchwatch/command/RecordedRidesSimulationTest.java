package io.pitchwatch.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import io.pitchwatch.attitude.Axis;
import io.pitchwatch.attitude.Lean;
import io.pitchwatch.attitude.Mounting;
import io.pitchwatch.attitude.UpVector;
import io.pitchwatch.floor.FloorReading;
import io.pitchwatch.floor.FloorState;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Real recordings, played through an ADXL345's registers and read by the service's own driver. What
 * each holds and where it is from: SOURCE.md beside them; the tests are skipped where they are not.
 */
class RecordedRidesSimulationTest {

  private static final Path RECORDINGS = Path.of("../../shared/refs/recordings");

  /** "Each stop is found within 3 s of its start and end." */
  private static final double FOUND_WITHIN_S = 3;

  @TempDir Path directory;

  private record Seen(double s, FloorReading reading) {}

  @Test
  void busIdlingHasTheLeanOfAPlainRobustMeanOfTheFile() throws IOException {
    List<Seen> seen = play("bus-idling.csv", 16.4, SimulatedPost.FLAT);
    FloorReading last = seen.get(seen.size() - 1).reading();
    assertEquals(FloorState.STEADY, last.state(), "engine idling, standing");
    Lean plain = robustMean("bus-idling.csv").lean();
    double tolerance = 3 * last.uncertaintyRad();
    assertEquals(plain.rollRad(), last.steady().rollRad(), tolerance, "roll");
    assertEquals(plain.pitchRad(), last.steady().pitchRad(), tolerance, "pitch");
    assertTrue(Math.toDegrees(last.uncertaintyRad()) < 0.2, "uncertainty " + last);
  }

  @Test
  void busRideMovesAndItsStopsAreFound() throws IOException {
    List<Seen> seen = play("bus-ride-with-stops.csv", 89, SimulatedPost.FLAT);
    assertMoving(seen, 4, 13);
    assertStop(seen, 14, 19);
    assertMoving(seen, 23, 36);
    assertStop(seen, 40, 58);
    assertConstantLean(seen, 44, 57);
    assertMoving(seen, 62, 70);
  }

  @Test
  void tramRideMovesAndItsStopsAreFound() throws IOException {
    List<Seen> seen = play("tram-ride-with-stops.csv", 88, SimulatedPost.FLAT);
    assertStop(seen, 10, 22.5);
    assertConstantLean(seen, 14, 22);
    assertMoving(seen, 27, 70);
    assertStop(seen, 75.5, 88);
  }

  @Test
  void standingAndMovingVehiclesAreToldApart() throws IOException {
    List<Seen> standing = play("vehicle-standing-engine-idling.csv", 77, SimulatedPost.FLAT);
    double still = share(standing, 5, 77, false);
    assertTrue(still > 0.85, "standing, at rest " + still);
    List<Seen> moving = play("vehicle-under-way.csv", 73, SimulatedPost.FLAT);
    double onTheMove = share(moving, 5, 73, true);
    assertTrue(onTheMove > 0.85, "under way, moving " + onTheMove);
  }

  @Test
  void elevenMinutesStillReproduceTheirPublishedMean() throws IOException {
    // Its z is negative with the part's z axis up: played, it is a chip on its back.
    Mounting onItsBack = Mounting.ofXz(Axis.FORWARD, Axis.DOWN);
    List<Seen> seen = play("mpu6050-still-11min.csv", 650, onItsBack);
    assertTrue(share(seen, 5, 650, false) > 0.999, "still throughout");
    FloorReading last = seen.get(seen.size() - 1).reading();
    assertEquals(FloorState.STEADY, last.state());
    // The source's own statistics: mean 0.0407945, 0.0657738, -1.03408 g. On its back y is right.
    Lean published = UpVector.of(0.0407945, -0.0657738, 1.03408).lean();
    // One count of the chip it is played through is 0.22 deg; its noise dithers it.
    double tolerance = 3 * last.uncertaintyRad() + Math.toRadians(0.02);
    assertEquals(published.rollRad(), last.steady().rollRad(), tolerance, "roll");
    assertEquals(published.pitchRad(), last.steady().pitchRad(), tolerance, "pitch");
  }

  private List<Seen> play(String name, double endS, Mounting mounting) throws IOException {
    Path file = RECORDINGS.resolve(name);
    assumeTrue(Files.exists(file), "skipped: no recordings at " + RECORDINGS);
    String scenario =
        "seed = 1\n[sensor]\nchip = \"adxl345\"\nrecording = \"" + file.toAbsolutePath() + "\"\n";
    List<Seen> seen = new ArrayList<>();
    try (SimulatedPost simulated = SimulatedPost.of(scenario, directory, mounting)) {
      simulated.until(endS, (s, reading) -> seen.add(new Seen(s, reading)));
    }
    return seen;
  }

  private static void assertMoving(List<Seen> seen, double fromS, double toS) {
    double moving = share(seen, fromS, toS, true);
    assertTrue(moving > 0.9, "moving from " + fromS + " to " + toS + " s: " + moving);
  }

  /** Rest is seen at the latest 3 s after the stop begins, and motion 3 s after it ends. */
  private static void assertStop(List<Seen> seen, double startS, double endS) {
    double found = firstAfter(seen, startS - FOUND_WITHIN_S, false);
    assertTrue(
        Math.abs(found - startS) <= FOUND_WITHIN_S, "stop at " + startS + " found at " + found);
    double last = seen.get(seen.size() - 1).s();
    if (endS + FOUND_WITHIN_S < last) {
      double left = firstAfter(seen, Math.max(found, endS - FOUND_WITHIN_S), true);
      assertTrue(Math.abs(left - endS) <= FOUND_WITHIN_S, "end at " + endS + " found at " + left);
    }
    assertTrue(
        share(seen, startS + FOUND_WITHIN_S, endS - FOUND_WITHIN_S / 3, false) > 0.95,
        "at rest in between");
  }

  /** SOURCE.md: "means constant to 0.1 deg". */
  private static void assertConstantLean(List<Seen> seen, double fromS, double toS) {
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (Seen at : seen) {
      if (at.s() >= fromS && at.s() <= toS && at.reading().state() == FloorState.STEADY) {
        least = Math.min(least, at.reading().steady().rollDeg());
        most = Math.max(most, at.reading().steady().rollDeg());
      }
    }
    assertTrue(most - least <= 0.3, "roll from " + least + " to " + most);
  }

  private static double firstAfter(List<Seen> seen, double fromS, boolean moving) {
    for (Seen at : seen) {
      if (at.s() >= fromS && (at.reading().state() == FloorState.MOVING) == moving) {
        return at.s();
      }
    }
    return Double.POSITIVE_INFINITY;
  }

  private static double share(List<Seen> seen, double fromS, double toS, boolean moving) {
    int all = 0;
    int such = 0;
    for (Seen at : seen) {
      if (at.s() >= fromS && at.s() <= toS) {
        all++;
        such += (at.reading().state() == FloorState.MOVING) == moving ? 1 : 0;
      }
    }
    return (double) such / all;
  }

  private static UpVector robustMean(String name) throws IOException {
    List<String> lines = Files.readAllLines(RECORDINGS.resolve(name));
    double[][] columns = new double[3][lines.size() - 1];
    for (int row = 1; row < lines.size(); row++) {
      String[] cells = lines.get(row).split(",", -1);
      for (int axis = 0; axis < 3; axis++) {
        columns[axis][row - 1] = Double.parseDouble(cells[axis + 1]);
      }
    }
    return UpVector.of(trimmedMean(columns[0]), trimmedMean(columns[1]), trimmedMean(columns[2]));
  }

  /** The mean of the middle 80 %. */
  private static double trimmedMean(double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    int cut = sorted.length / 10;
    return Arrays.stream(sorted, cut, sorted.length - cut).average().orElseThrow();
  }
}
