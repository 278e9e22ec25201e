package io.pitchwatch.sim.chip;

import io.pitchwatch.sim.bus.BusFaults;
import io.pitchwatch.sim.bus.Outcome;
import io.pitchwatch.sim.bus.SimulatedBus;
import io.pitchwatch.sim.bus.Slice;
import io.pitchwatch.sim.bus.Target;
import java.util.function.Function;

/** A chip on a bus, and a clock turned by hand. */
final class Bench {

  static final Part QUIET = Part.adxl345().withNoise(Axes.ZERO);
  static final long MILLISECOND = 1_000_000L;
  static final long SECOND = 1_000_000_000L;
  static final long SEED = 42;

  final Flaws flaws = new Flaws(1);
  final SimulatedBus bus = new SimulatedBus(new BusFaults(1), nanos -> {});
  private final int address;
  long nowNanos;

  private Bench(int address, Function<Bench, Target> chip) {
    this.address = address;
    bus.attach(address, chip.apply(this));
  }

  static Bench adxl345(Part part, Surroundings surroundings) {
    return new Bench(
        Adxl345.ADDRESS, b -> new Adxl345(part, surroundings, b.flaws, b::now, SEED).onBus());
  }

  static Bench adxl355(Part part, Surroundings surroundings) {
    return new Bench(
        Adxl355.ADDRESS, b -> new Adxl355(part, surroundings, b.flaws, b::now, SEED).onBus());
  }

  static Bench mpu6050(Part part, Surroundings surroundings) {
    return new Bench(
        Mpu6050.ADDRESS, b -> new Mpu6050(part, surroundings, b.flaws, b::now, SEED).onBus());
  }

  static Bench quiet() {
    return adxl345(QUIET, Still.FLAT);
  }

  private long now() {
    return nowNanos;
  }

  int read(int register) {
    return read(register, 1)[0] & 0xff;
  }

  byte[] read(int register, int length) {
    byte[] in = new byte[length];
    Outcome outcome =
        bus.transfer(
            address, new Slice(new byte[] {(byte) register}, 0, 1), new Slice(in, 0, length));
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
    if (bus.write(address, out, 0, out.length) != Outcome.DONE) {
      throw new AssertionError("not acknowledged");
    }
  }

  void pass(long nanos) {
    nowNanos += nanos;
  }

  /** Three words, low byte first, as one burst of an ADXL345's data registers reads them. */
  int[] data() {
    byte[] bytes = read(0x32, 6);
    int[] words = new int[3];
    for (int axis = 0; axis < 3; axis++) {
      words[axis] = (short) ((bytes[2 * axis] & 0xff) | bytes[2 * axis + 1] << 8);
    }
    return words;
  }

  /** Three words of 20 bits, high byte first, from a register of an ADXL355 on. */
  int[] words20(int register) {
    byte[] bytes = read(register, 9);
    int[] words = new int[3];
    for (int axis = 0; axis < 3; axis++) {
      int at = 3 * axis;
      words[axis] =
          (bytes[at] << 24 | (bytes[at + 1] & 0xff) << 16 | (bytes[at + 2] & 0xff) << 8) >> 12;
    }
    return words;
  }

  /** Words of 16 bits, high byte first. */
  int[] words16(int register, int count) {
    byte[] bytes = read(register, 2 * count);
    int[] words = new int[count];
    for (int i = 0; i < count; i++) {
      words[i] = (short) (bytes[2 * i] << 8 | (bytes[2 * i + 1] & 0xff));
    }
    return words;
  }
}
