package io.pitchwatch.sim.chip;

import io.pitchwatch.sim.bus.BusFaults;
import io.pitchwatch.sim.bus.Outcome;
import io.pitchwatch.sim.bus.SimulatedBus;
import io.pitchwatch.sim.bus.Slice;

/** An ADXL345 on a bus, and a clock turned by hand. */
final class Bench {

  static final Part QUIET = Part.adxl345().withNoise(Axes.ZERO);
  static final long MILLISECOND = 1_000_000L;
  static final long SECOND = 1_000_000_000L;

  final Flaws flaws = new Flaws(1);
  final SimulatedBus bus = new SimulatedBus(new BusFaults(1), nanos -> {});
  long nowNanos;

  Bench(Part part, Surroundings surroundings) {
    bus.attach(Adxl345.ADDRESS, new Adxl345(part, surroundings, flaws, () -> nowNanos, 42).onBus());
  }

  static Bench quiet() {
    return new Bench(QUIET, Still.FLAT);
  }

  int read(int register) {
    return read(register, 1)[0] & 0xff;
  }

  byte[] read(int register, int length) {
    byte[] in = new byte[length];
    Outcome outcome =
        bus.transfer(
            Adxl345.ADDRESS,
            new Slice(new byte[] {(byte) register}, 0, 1),
            new Slice(in, 0, length));
    if (outcome != Outcome.DONE) {
      throw new AssertionError(outcome);
    }
    return in;
  }

  void write(int register, int... values) {
    byte[] out = new byte[values.length + 1];
    out[0] = (byte) register;
    for (int i = 0; i < values.length; i++) {
      out[i + 1] = (byte) values[i];
    }
    if (bus.write(Adxl345.ADDRESS, out, 0, out.length) != Outcome.DONE) {
      throw new AssertionError("not acknowledged");
    }
  }

  void pass(long nanos) {
    nowNanos += nanos;
  }

  /** The three data words as one burst reads them. */
  int[] data() {
    byte[] bytes = read(0x32, 6);
    int[] words = new int[3];
    for (int axis = 0; axis < 3; axis++) {
      words[axis] = (short) ((bytes[2 * axis] & 0xff) | bytes[2 * axis + 1] << 8);
    }
    return words;
  }
}
