package io.pitchwatch.config;

import java.util.List;
import java.util.Locale;

/** The accelerometers that a config may name: the one list of them. */
public enum Chip {
  /** Addresses by its ALT ADDRESS pin: low 0x53, high 0x1D. */
  ADXL345(0x53, 0x1D),
  /** Addresses by its ASEL pin: low 0x1D, high 0x53. */
  ADXL355(0x1D, 0x53),
  /** Addresses by its AD0 pin: low 0x68, high 0x69. */
  MPU6050(0x68, 0x69);

  private final int usual;
  private final int other;

  Chip(int usual, int other) {
    this.usual = usual;
    this.other = other;
  }

  /** The word for it in the file. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The I2C addresses that its pins can choose; the first is the usual one. */
  public List<Integer> addresses() {
    return List.of(usual, other);
  }
}
