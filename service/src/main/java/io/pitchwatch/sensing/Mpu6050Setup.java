package io.pitchwatch.sensing;

import static io.pitchwatch.sensing.Mpu6050Registers.*;

/** Writes an MPU-6050's settings, and tells whether it still has them. */
final class Mpu6050Setup {

  private final RegisterBus bus;
  private final int divider;
  private final int filter;
  private final byte[] settings = new byte[4];
  private final byte[] power = new byte[2];
  private int accel;

  /**
   * A setup for one rate.
   *
   * @param bus the chip
   * @param rate index into {@link Mpu6050Registers#RATES_HZ}
   */
  Mpu6050Setup(RegisterBus bus, int rate) {
    this.bus = bus;
    this.divider = (int) Math.round(1000 / RATES_HZ[rate]) - 1;
    this.filter = FILTERS[rate];
  }

  /**
   * Writes and verifies all that matters, and starts measuring into an empty FIFO.
   *
   * @param accelBits of register ACCEL_CONFIG
   */
  ChipOutcome write(int accelBits) {
    accel = accelBits;
    int[] writes = {
      PWR_MGMT_1, PWR_GYRO_CLOCK,
      INT_ENABLE, 0,
      SMPLRT_DIV, divider,
      CONFIG, filter,
      ACCEL_CONFIG, accel
    };
    BusOutcome written = Registers.writeAll(bus, writes);
    if (written.ok()) {
      written = emptyFifo();
    }
    ChipOutcome kept = written.ok() ? check() : ChipOutcome.of(written);
    return kept == ChipOutcome.Plain.SETTINGS_LOST
        ? Registers.disobeyed(PWR_MGMT_1, PWR_GYRO_CLOCK, power[1])
        : kept;
  }

  /** The FIFO resets only while it is disabled. */
  BusOutcome emptyFifo() {
    int[] writes = {
      FIFO_EN, 0,
      USER_CTRL, 0,
      USER_CTRL, USER_FIFO_RESET,
      USER_CTRL, USER_FIFO_EN,
      FIFO_EN, FIFO_EN_ACCEL
    };
    return Registers.writeAll(bus, writes);
  }

  /** Reads the settings back. */
  ChipOutcome check() {
    BusOutcome read = bus.read(SMPLRT_DIV, settings, settings.length);
    if (read.ok()) {
      read = bus.read(USER_CTRL, power, 2);
    }
    if (!read.ok()) {
      return ChipOutcome.of(read);
    }
    int awake = power[1] & 0xFF;
    if (awake == PWR_ASLEEP) {
      return ChipOutcome.Plain.SETTINGS_LOST;
    }
    if (awake != PWR_GYRO_CLOCK) {
      return Registers.disobeyed(PWR_MGMT_1, PWR_GYRO_CLOCK, awake);
    }
    if ((power[0] & USER_FIFO_EN) == 0) {
      return Registers.disobeyed(USER_CTRL, USER_FIFO_EN, power[0]);
    }
    int[] written = {SMPLRT_DIV, divider, CONFIG, filter, ACCEL_CONFIG, accel};
    return Registers.hold(settings, SMPLRT_DIV, written);
  }
}
