package io.pitchwatch.sim.scenario;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.pitchwatch.sim.chip.SharedFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RecordingTest {

  @TempDir private Path folder;

  private Recording read(String... lines) throws IOException {
    List<Complaint> complaints = new ArrayList<>();
    Path file = Files.write(folder.resolve("recording.csv"), List.of(lines));
    List<Recording> found = Recording.read(file, complaints);
    if (found.isEmpty()) {
      throw new AssertionError(complaints);
    }
    return found.get(0);
  }

  private List<Complaint> refuse(String... lines) throws IOException {
    List<Complaint> complaints = new ArrayList<>();
    Path file = Files.write(folder.resolve("recording.csv"), List.of(lines));
    assertEquals(List.of(), Recording.read(file, complaints));
    return complaints;
  }

  private Rig rig(String sensor) throws IOException {
    Path file = folder.resolve("scenario.toml");
    Files.writeString(file, "[sensor]\nrecording = \"recording.csv\"\n" + sensor);
    return new Rig(Scenario.read(file.toString()));
  }

  @Test
  void beginsAtItsFirstSample() throws IOException {
    Recording recording = read("t_s,ax_g,ay_g,az_g", "12.5,0,0,1", "13.5,0.1,0,1");
    assertEquals(1, recording.lengthS());
    assertEquals(0, recording.at(0));
    assertEquals(0, recording.at(0.999));
    assertEquals(1, recording.at(1));
  }

  @Test
  void readsColumnsByNameAndPassesOverComments() throws IOException {
    Recording recording =
        read("# a note", "temp_c,az_g,ay_g,ax_g,t_s", "30,3,2,1,0", "", "31,6,5,4,1");
    assertEquals(4, recording.forceG(0, 1));
    assertEquals(6, recording.forceG(2, 1));
    assertEquals(31, recording.temperatureC(1));
  }

  @Test
  void saysWhatIsWrongAndWhere() throws IOException {
    assertTrue(refuse("time,x,y,z", "0,0,0,1").get(0).toString().contains("t_s,ax_g,ay_g,az_g"));
    List<Complaint> complaints =
        refuse("t_s,ax_g,ay_g,az_g", "0,0,0,1", "1,0,x,1", "0.5,0,0,1", "2,0,0", "3,NaN,0,1");
    assertArrayEquals(new int[] {3, 5, 6}, complaints.stream().mapToInt(Complaint::line).toArray());
    assertEquals(4, refuse("t_s,ax_g,ay_g,az_g", "0,0,0,1", "1,0,0,1", "0.5,0,0,1").get(0).line());
    assertEquals(1, refuse("t_s,ax_g,ay_g,az_g", "0,0,0,1").size());
  }

  /** What is played comes out of the registers within one step of 1/256 g, sample for sample. */
  @Test
  void comesOutOfTheRegistersAsItIs() throws IOException {
    List<String> lines = new ArrayList<>(List.of("t_s,ax_g,ay_g,az_g"));
    SplittableRandom random = new SplittableRandom(8);
    double[][] force = new double[400][3];
    for (int i = 0; i < force.length; i++) {
      for (int axis = 0; axis < 3; axis++) {
        force[i][axis] = random.nextDouble(-1.9, 1.9);
      }
      lines.add(
          String.format(
              Locale.ROOT, "%.3f,%f,%f,%f", i / 100.0, force[i][0], force[i][1], force[i][2]));
    }
    read(lines.toArray(new String[0]));
    Rig rig = rig("");
    List<int[]> samples = rig.start().runTo(3.5);
    // The first sample falls due 11.1 ms after the start: within the recording's second.
    for (int i = 0; i < samples.size(); i++) {
      for (int axis = 0; axis < 3; axis++) {
        assertEquals(force[i + 1][axis], samples.get(i)[axis] / 256.0, 0.5 / 256 + 1e-6);
      }
    }
    assertEquals(348, samples.size(), 2);
  }

  @Test
  void standsAtItsEndOrBeginsAgain() throws IOException {
    read("t_s,ax_g,ay_g,az_g", "0,0,0,1", "1,0.5,0,1", "2,1,0,1");
    List<int[]> once = rig("").start().runTo(10);
    assertEquals(256, once.get(once.size() - 1)[0]);
    List<int[]> again = rig("loop = true\n").start().runTo(10);
    assertEquals(0, again.get(350)[0]);
    assertEquals(128, again.get(450)[0]);
  }

  @Test
  void stretchesAlongStraightLines() throws IOException {
    read("t_s,ax_g,ay_g,az_g", "0,0,0,1", "1,1,0,1");
    List<int[]> samples = rig("stretch = 10.0\n").start().runTo(6);
    assertEquals(0.5, samples.get(499)[0] / 256.0, 0.01);
  }

  @Test
  void loopNeedsARecording() {
    assertInstanceOf(
        ScenarioReading.Refused.class, Scenario.parse("s.toml", "[sensor]\nloop = true\n"));
  }

  /** A real bus at idle, recorded at 500 Hz: the mean of what comes out is the mean of the file. */
  @Test
  void busAtIdleKeepsItsMeanThroughTheFilter() throws IOException {
    Path real = SharedFiles.path("recordings/bus-idling.csv");
    List<Complaint> complaints = new ArrayList<>();
    Recording recording = Recording.read(real, complaints).get(0);
    Path file = folder.resolve("bus.toml");
    Files.writeString(
        file, "[sensor]\nrecording = \"" + real.toAbsolutePath().normalize() + "\"\n");
    List<int[]> samples = new Rig(Scenario.read(file.toString())).start().runTo(16.5);
    for (int axis = 0; axis < 3; axis++) {
      double mean = 0;
      for (int i = 0; i < recording.size(); i++) {
        mean += recording.forceG(axis, i) / recording.size();
      }
      assertEquals(mean, Rig.meanG(samples, axis), 0.001, "axis " + axis);
    }
  }
}
