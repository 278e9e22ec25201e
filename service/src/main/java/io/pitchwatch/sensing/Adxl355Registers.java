package io.pitchwatch.sensing;

/** Registers of the ADXL355 as its data sheet names them (ADXL354/ADXL355, Rev. 0, Table 14). */
final class Adxl355Registers {

  private Adxl355Registers() {}

  static final int DEVID_AD = 0x00;
  static final int DEVID_AD_VALUE = 0xAD;

  /** Followed by PARTID. */
  static final int DEVID_MST = 0x01;

  static final int DEVID_MST_VALUE = 0x1D;
  static final int PARTID = 0x02;
  static final int PARTID_VALUE = 0xED;

  /** Followed by FIFO_ENTRIES, TEMP2, TEMP1. */
  static final int STATUS = 0x04;

  static final int STATUS_FIFO_OVR = 0x04;
  static final int FIFO_ENTRIES = 0x05;
  static final int FIFO_ENTRIES_MASK = 0x7F;
  static final int TEMP2 = 0x06;

  /** Three bytes a location, most significant first; the address does not step on. */
  static final int FIFO_DATA = 0x11;

  /** 96 locations, one an axis. */
  static final int FIFO_SETS = 32;

  static final int WORD_EMPTY = 0x02;
  static final int WORD_IS_X = 0x01;

  /** Six registers: x, y, z, high byte first. */
  static final int OFFSET_X_H = 0x1E;

  /** D6:4 high-pass corner, 0 for none; D3:0 rate. Followed by FIFO_SAMPLES … SELF_TEST. */
  static final int FILTER = 0x28;

  static final int INT_MAP = 0x2A;
  static final int SYNC = 0x2B;

  /** D7 I2C_HS (1 after reset), D6 INT_POL, D1:0 range 1 to 3. */
  static final int RANGE = 0x2C;

  static final int RANGE_I2C_HS = 0x80;
  static final int RANGE_4_G = 2;
  static final int POWER_CTL = 0x2D;
  static final int POWER_STANDBY = 0x01;
  static final int POWER_MEASURE = 0x00;

  /** D1 ST2 the force, D0 ST1 the mode. */
  static final int SELF_TEST = 0x2E;

  static final int SELF_TEST_MODE = 0x01;
  static final int SELF_TEST_FORCE = 0x02;
  static final int RESET = 0x2F;
  static final int RESET_CODE = 0x52;

  /** Table 43: 4000 Hz halved with each code. */
  static final double[] RATES_HZ = ratesHz();

  /** Table 47, for range codes 1 to 3; the full scale is 2.048, 4.096 and 8.192 g. */
  static final double[] RANGES_G = {2, 4, 8};

  /** Table 2, at ±2 g; half of it at each wider range. */
  static final double LSB_PER_G = 256_000;

  /**
   * Output of the thermometer at 25 °C: 1885 in later revisions of the data sheet and in Linux'
   * adxl355_core.c; Rev. 0 said 1852, 3.6 °C less. What matters here is change.
   */
  static final double TEMPERATURE_AT_25_C = 1885;

  static final double TEMPERATURE_LSB_PER_C = -9.05;

  private static double[] ratesHz() {
    double[] rates = new double[11];
    for (int code = 0; code < rates.length; code++) {
      rates[code] = 4000.0 / (1 << code);
    }
    return rates;
  }

  /** Twenty bits, two's complement, left-justified in three bytes, most significant first. */
  static int signed20(byte[] bytes, int at) {
    return bytes[at] << 12 | (bytes[at + 1] & 0xFF) << 4 | (bytes[at + 2] & 0xFF) >> 4;
  }

  /** °C of a twelve-bit reading. */
  static double temperatureC(int raw) {
    return 25 + (raw - TEMPERATURE_AT_25_C) / TEMPERATURE_LSB_PER_C;
  }
}
