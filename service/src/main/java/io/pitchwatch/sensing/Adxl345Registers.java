package io.pitchwatch.sensing;

/**
 * Registers of the ADXL345 as its data sheet names them (Rev. E, Table 19 and "Register
 * Definitions"). 0x01 to 0x1C are reserved and never touched.
 */
final class Adxl345Registers {

  private Adxl345Registers() {}

  static final int DEVID = 0x00;
  static final int DEVID_VALUE = 0xE5;

  /** Offsets of x, y and z, three registers; added to the output, 15.6 mg a step. */
  static final int OFSX = 0x1E;

  /** Rate and low power: D4 LOW_POWER, D3:0 rate. */
  static final int BW_RATE = 0x2C;

  static final int BW_RATE_RESET = 0x0A;
  static final int RATE_100_HZ = 0x0A;
  static final int RATE_800_HZ = 0x0D;

  static final int POWER_CTL = 0x2D;
  static final int POWER_STANDBY = 0x00;
  static final int POWER_MEASURE = 0x08;

  static final int INT_ENABLE = 0x2E;
  static final int INT_SOURCE = 0x30;
  static final int INT_DATA_READY = 0x80;

  /** Format of the data: D7 SELF_TEST, D3 FULL_RES, D2 Justify, D1:0 range. */
  static final int DATA_FORMAT = 0x31;

  static final int FORMAT_SELF_TEST = 0x80;
  static final int FORMAT_FULL_RES = 0x08;
  static final int FORMAT_16_G = 0x03;

  /** X, y and z, low byte first, six registers; a read takes the oldest sample from the FIFO. */
  static final int DATAX0 = 0x32;

  /** D7:6 mode, D4:0 samples that raise the watermark. */
  static final int FIFO_CTL = 0x38;

  static final int FIFO_BYPASS = 0x00;
  static final int FIFO_STREAM = 0x80;
  static final int FIFO_DEPTH = 32;

  /** D5:0 entries. */
  static final int FIFO_STATUS = 0x39;

  static final int FIFO_ENTRIES = 0x3F;

  /** Table 1, full resolution: 256 LSB/g whatever the range. */
  static final double LSB_PER_G = 256;

  /** Table 7: the rate doubles with each code, up to 3200 Hz at code 15. */
  static final double[] RATES_HZ = ratesHz();

  /** Table 35. */
  static final double[] RANGES_G = {2, 4, 8, 16};

  private static double[] ratesHz() {
    double[] rates = new double[16];
    for (int code = 0; code < rates.length; code++) {
      rates[code] = 3200.0 / (1 << (15 - code));
    }
    return rates;
  }

  /** A two's complement number, low byte first (DATA_FORMAT with Justify = 0). */
  static int signed16(byte[] bytes, int at) {
    return (bytes[at] & 0xFF) | bytes[at + 1] << 8;
  }
}
