package io.pitchwatch.sensing;

import java.util.List;

/** The accelerometers that Pitchwatch knows. */
public enum Chip {
  ADXL345("adxl345", 0x53, 0x1D),
  ADXL355("adxl355", 0x1D, 0x53),
  MPU6050("mpu6050", 0x68, 0x69);

  private final String id;
  private final int usualAddress;
  private final int otherAddress;

  Chip(String id, int usualAddress, int otherAddress) {
    this.id = id;
    this.usualAddress = usualAddress;
    this.otherAddress = otherAddress;
  }

  /** Its name in the configuration. */
  public String id() {
    return id;
  }

  /** The I2C addresses that its pins can choose, the usual one first. */
  public List<Integer> addresses() {
    return List.of(usualAddress, otherAddress);
  }

  /** Range and rate for watching a coach; the driver says why these. */
  public AccelerometerSettings defaults() {
    return switch (this) {
      case ADXL345 -> Adxl345Driver.DEFAULTS;
      case ADXL355 -> Adxl355Driver.DEFAULTS;
      case MPU6050 -> Mpu6050Driver.DEFAULTS;
    };
  }

  /** What its datasheet promises at the range that is used. */
  public ChipFacts facts() {
    return switch (this) {
      case ADXL345 -> Adxl345Driver.FACTS;
      case ADXL355 -> Adxl355Driver.FACTS;
      case MPU6050 -> Mpu6050Driver.FACTS;
    };
  }

  /** Whether it knows its own temperature. */
  public boolean hasThermometer() {
    return this != ADXL345;
  }

  /**
   * A driver for one such chip.
   *
   * @throws IllegalArgumentException if the chip does not know the range or rate
   */
  public AccelerometerDriver driver(RegisterBus bus, AccelerometerSettings settings) {
    return switch (this) {
      case ADXL345 -> new Adxl345Driver(bus, settings);
      case ADXL355 -> new Adxl355Driver(bus, settings);
      case MPU6050 -> new Mpu6050Driver(bus, settings);
    };
  }

  /** The chip's driver with its default settings. */
  public AccelerometerDriver driver(RegisterBus bus) {
    return driver(bus, defaults());
  }

  /**
   * The chip of a name.
   *
   * @throws IllegalArgumentException if there is none; says which there are
   */
  public static Chip of(String id) {
    StringBuilder known = new StringBuilder();
    for (Chip chip : values()) {
      if (chip.id.equals(id)) {
        return chip;
      }
      known.append(known.isEmpty() ? "" : ", ").append(chip.id);
    }
    throw new IllegalArgumentException("chip is \"" + id + "\"; known are " + known);
  }
}
