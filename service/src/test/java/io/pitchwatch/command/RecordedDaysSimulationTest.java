package io.pitchwatch.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Real recordings, minutes long, played to the whole service again and again, or stretched: nothing
 * in them sinks, so nothing may be said to. Three hours each; with {@code -Dpitchwatch.full=true} a
 * day. Rides are not stretched: braking at a tenth of g, made to last an hour, is to any
 * accelerometer a floor that leans by 6 deg for an hour.
 */
class RecordedDaysSimulationTest {

  private static final int HOURS = Boolean.getBoolean("pitchwatch.full") ? 24 : 3;
  private static final Path RECORDINGS = Path.of("../../shared/refs/recordings");

  @TempDir Path directory;

  @ParameterizedTest
  @ValueSource(
      strings = {
        "vehicle-standing-engine-idling",
        "vehicle-under-way",
        "mpu6050-still-11min",
        "bus-idling",
        "bus-ride-with-stops",
        "tram-ride-with-stops",
      })
  void loopedForHoursNothingSinks(String name) throws Exception {
    assertNothingSinks(play(name, "loop = true"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"vehicle-standing-engine-idling", "mpu6050-still-11min", "bus-idling"})
  void stretchedToHoursNothingSinks(String name) throws Exception {
    List<String> lines = Files.readAllLines(recording(name));
    String last = lines.get(lines.size() - 1);
    double lengthS = Double.parseDouble(last.substring(0, last.indexOf(',')));
    String stretch = String.format(Locale.ROOT, "stretch = %.3f", HOURS * 3600 / lengthS);
    assertNothingSinks(play(name, stretch));
  }

  private static Path recording(String name) {
    Path file = RECORDINGS.resolve(name + ".csv");
    assumeTrue(Files.exists(file), file + " is not here; it is only beside the full checkout");
    return file.toAbsolutePath();
  }

  private String play(String name, String how) throws IOException {
    Scenarios.unpack("arrival", directory);
    String scenario =
        """
        seed = 5
        coach = "heron.toml"
        [sensor]
        recording = "%s"
        %s
        [run]
        hours = %d
        """
            .formatted(recording(name), how, HOURS);
    Path file = Files.writeString(directory.resolve("day.toml"), scenario);
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int exit =
        Pitchwatch.commandLine()
            .setOut(new PrintWriter(out))
            .setErr(new PrintWriter(err))
            .execute("rehearse", "--brief", "--scenario", file.toString());
    assertEquals(ExitCode.GOOD, exit, err.toString());
    return out.toString();
  }

  private static void assertNothingSinks(String timeline) {
    List<String> said =
        timeline
            .lines()
            .filter(line -> line.contains("ground/settling") || line.contains("$alert/settling"))
            .filter(line -> !line.endsWith("false") && !line.endsWith("(empty)"))
            .toList();
    assertEquals(List.of(), said);
    assertTrue(timeline.contains("floor/verdict"), timeline);
  }
}
