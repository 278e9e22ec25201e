package io.pitchwatch.sensing;

import static io.pitchwatch.sensing.Adxl355Registers.*;

/** Writes an ADXL355's settings, and tells whether it still has them. */
final class Adxl355Setup {

  private final RegisterBus bus;
  private final int rateBits;
  private final byte[] settings = new byte[SELF_TEST - FILTER + 1];
  private final byte[] offsets = new byte[6];
  private int range;
  private int selfTest;

  Adxl355Setup(RegisterBus bus, int rateBits) {
    this.bus = bus;
    this.rateBits = rateBits;
  }

  /**
   * Writes and verifies all that matters, and starts measuring. Settings may change in standby
   * only, which also empties the FIFO (Table 48).
   *
   * @param rangeBits 1 to 3
   * @param selfTestBits of register SELF_TEST
   */
  ChipOutcome write(int rangeBits, int selfTestBits) {
    range = RANGE_I2C_HS | rangeBits;
    selfTest = selfTestBits;
    int[] writes = {
      POWER_CTL,
      POWER_STANDBY,
      OFFSET_X_H,
      0,
      OFFSET_X_H + 1,
      0,
      OFFSET_X_H + 2,
      0,
      OFFSET_X_H + 3,
      0,
      OFFSET_X_H + 4,
      0,
      OFFSET_X_H + 5,
      0,
      FILTER,
      rateBits,
      INT_MAP,
      0,
      SYNC,
      0,
      RANGE,
      range,
      SELF_TEST,
      selfTest,
      POWER_CTL,
      POWER_MEASURE
    };
    BusOutcome written = Registers.writeAll(bus, writes);
    return written.ok() ? verify() : ChipOutcome.of(written);
  }

  private ChipOutcome verify() {
    ChipOutcome zeros = Registers.zeros(bus, OFFSET_X_H, offsets);
    ChipOutcome kept = zeros.ok() ? check() : zeros;
    return kept == ChipOutcome.Plain.SETTINGS_LOST
        ? Registers.disobeyed(POWER_CTL, POWER_MEASURE, setting(POWER_CTL))
        : kept;
  }

  /** Reads the settings back. */
  ChipOutcome check() {
    BusOutcome read = bus.read(FILTER, settings, settings.length);
    if (!read.ok()) {
      return ChipOutcome.of(read);
    }
    if (setting(POWER_CTL) == POWER_STANDBY) {
      return ChipOutcome.Plain.SETTINGS_LOST;
    }
    int[] written = {POWER_CTL, POWER_MEASURE, FILTER, rateBits, RANGE, range, SELF_TEST, selfTest};
    return Registers.hold(settings, FILTER, written);
  }

  private int setting(int register) {
    return settings[register - FILTER] & 0xFF;
  }
}
