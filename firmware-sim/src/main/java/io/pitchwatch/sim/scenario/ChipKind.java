package io.pitchwatch.sim.scenario;

import io.pitchwatch.sim.chip.Adxl345;
import io.pitchwatch.sim.chip.Adxl355;
import io.pitchwatch.sim.chip.Chip;
import io.pitchwatch.sim.chip.Flaws;
import io.pitchwatch.sim.chip.Mpu6050;
import io.pitchwatch.sim.chip.Part;
import io.pitchwatch.sim.chip.Surroundings;
import java.util.List;
import java.util.Locale;
import java.util.function.LongSupplier;
import java.util.stream.Stream;

/** The chips that can be simulated. */
enum ChipKind {
  ADXL345(Adxl345.ADDRESS, Adxl345.ALTERNATE_ADDRESS) {
    @Override
    Part typicalPart() {
      return Part.adxl345();
    }

    @Override
    Chip build(
        Part part, Surroundings surroundings, Flaws flaws, LongSupplier nowNanos, long seed) {
      return new Adxl345(part, surroundings, flaws, nowNanos, seed);
    }
  },
  ADXL355(Adxl355.ADDRESS, Adxl355.ALTERNATE_ADDRESS) {
    @Override
    Part typicalPart() {
      return Part.adxl355();
    }

    @Override
    Chip build(
        Part part, Surroundings surroundings, Flaws flaws, LongSupplier nowNanos, long seed) {
      return new Adxl355(part, surroundings, flaws, nowNanos, seed);
    }
  },
  MPU6050(Mpu6050.ADDRESS, Mpu6050.ALTERNATE_ADDRESS) {
    @Override
    Part typicalPart() {
      return Part.mpu6050();
    }

    @Override
    Chip build(
        Part part, Surroundings surroundings, Flaws flaws, LongSupplier nowNanos, long seed) {
      return new Mpu6050(part, surroundings, flaws, nowNanos, seed);
    }
  };

  private final int usualAddress;
  private final int otherAddress;

  ChipKind(int usualAddress, int otherAddress) {
    this.usualAddress = usualAddress;
    this.otherAddress = otherAddress;
  }

  /** Its name in files. */
  String label() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** All names. */
  static List<String> labels() {
    return Stream.of(values()).map(ChipKind::label).toList();
  }

  /** The addresses that its strap allows, the usual one first. */
  List<Integer> addresses() {
    return List.of(usualAddress, otherAddress);
  }

  abstract Part typicalPart();

  abstract Chip build(
      Part part, Surroundings surroundings, Flaws flaws, LongSupplier nowNanos, long seed);
}
