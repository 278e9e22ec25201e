package io.pitchwatch.sim.scenario;

import io.pitchwatch.sim.bus.Outcome;
import io.pitchwatch.sim.bus.SimulatedBus;
import io.pitchwatch.sim.bus.Slice;
import java.util.ArrayList;
import java.util.List;

/** A scenario played to a reader of an ADXL345's registers at 0x53 on bus 1, on virtual time. */
final class Rig {

  private static final int ADDRESS = 0x53;

  final Scenario scenario;
  final Simulation simulation;
  long nowNanos;

  Rig(String text) {
    this(Scenario.parse("test.toml", text));
  }

  Rig(ScenarioReading reading) {
    if (!(reading instanceof ScenarioReading.Understood understood)) {
      throw new AssertionError("refused: " + reading);
    }
    scenario = understood.scenario();
    simulation = new Simulation(scenario, () -> nowNanos, nanos -> {});
  }

  /** Full resolution, 2 g, 100 Hz, stream. */
  Rig start() {
    write(0x31, 0x08);
    write(0x38, 0x80);
    write(0x2D, 0x08);
    return this;
  }

  SimulatedBus bus() {
    return simulation.bus(1).orElseThrow();
  }

  void write(int register, int value) {
    if (bus().write(ADDRESS, new byte[] {(byte) register, (byte) value}, 0, 2) != Outcome.DONE) {
      throw new AssertionError("write failed at " + nowNanos);
    }
  }

  byte[] read(int register, int length) {
    byte[] in = new byte[length];
    Outcome outcome =
        bus()
            .transfer(
                ADDRESS, new Slice(new byte[] {(byte) register}, 0, 1), new Slice(in, 0, length));
    if (outcome != Outcome.DONE) {
      throw new AssertionError(outcome + " at " + nowNanos);
    }
    return in;
  }

  /** Runs to a time, emptying the FIFO every 100 ms; the words read on the way, in steps. */
  List<int[]> runTo(double seconds) {
    List<int[]> samples = new ArrayList<>();
    while (nowNanos < seconds * 1e9) {
      nowNanos += 100_000_000L;
      for (int left = read(0x39, 1)[0] & 0x3f; left > 0; left--) {
        byte[] bytes = read(0x32, 6);
        int[] words = new int[3];
        for (int axis = 0; axis < 3; axis++) {
          words[axis] = (short) ((bytes[2 * axis] & 0xff) | bytes[2 * axis + 1] << 8);
        }
        samples.add(words);
      }
    }
    return samples;
  }

  /** Mean of an axis, g. */
  static double meanG(List<int[]> samples, int axis) {
    return samples.stream().mapToInt(words -> words[axis]).average().orElseThrow() / 256;
  }
}
