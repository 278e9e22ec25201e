package io.pitchwatch.sensing;

/**
 * Registers of the MPU-6050 as its register map names them (RM-MPU-6000A-00, Rev. 4.2), with
 * figures of its product specification (PS-MPU-6000A-00, Rev. 3.4).
 */
final class Mpu6050Registers {

  private Mpu6050Registers() {}

  /** Followed by SELF_TEST_Y, _Z and _A: the factory's trim of the self-test. */
  static final int SELF_TEST_X = 0x0D;

  /** Rate = 1 kHz / (1 + SMPLRT_DIV). Followed by CONFIG, GYRO_CONFIG, ACCEL_CONFIG. */
  static final int SMPLRT_DIV = 0x19;

  static final int CONFIG = 0x1A;

  /** D7:5 self-test of x, y, z; D4:3 range. */
  static final int ACCEL_CONFIG = 0x1C;

  static final int ACCEL_SELF_TEST = 0xE0;
  static final int ACCEL_8_G = 2;
  static final int FIFO_EN = 0x23;
  static final int FIFO_EN_ACCEL = 0x08;
  static final int INT_ENABLE = 0x38;

  /** High byte first, two registers. */
  static final int TEMP_OUT_H = 0x41;

  /** D6 FIFO_EN, D2 FIFO_RESET (clears itself). Followed by PWR_MGMT_1. */
  static final int USER_CTRL = 0x6A;

  static final int USER_FIFO_EN = 0x40;
  static final int USER_FIFO_RESET = 0x04;

  /** D7 DEVICE_RESET, D6 SLEEP, D2:0 clock: 1 the oscillator of the x gyroscope. */
  static final int PWR_MGMT_1 = 0x6B;

  static final int PWR_RESET = 0x80;
  static final int PWR_ASLEEP = 0x40;
  static final int PWR_GYRO_CLOCK = 0x01;

  /** High byte first, two registers. */
  static final int FIFO_COUNT_H = 0x72;

  /** The address does not step on. */
  static final int FIFO_R_W = 0x74;

  static final int FIFO_BYTES = 1024;
  static final int WHO_AM_I = 0x75;
  static final int WHO_AM_I_VALUE = 0x68;

  /** Section 6.2, at ±2 g; half of it at each wider range. */
  static final double LSB_PER_G = 16_384;

  static final double[] RANGES_G = {2, 4, 8, 16};

  /** Some of the rates that the divider gives. */
  static final double[] RATES_HZ = {1000, 500, 250, 200, 125, 100, 50, 25};

  /**
   * Low pass for each of these rates, DLPF_CFG: 184, 184, 94, 94, 44, 44, 21 and 10 Hz. Every one
   * of them makes the base rate 1 kHz.
   */
  static final int[] FILTERS = {1, 1, 2, 2, 3, 3, 4, 5};

  /** Two's complement, high byte first. */
  static int signed16(byte[] bytes, int at) {
    return bytes[at] << 8 | (bytes[at + 1] & 0xFF);
  }

  /** °C of a reading (register map, registers 65 and 66). */
  static double temperatureC(int raw) {
    return raw / 340.0 + 36.53;
  }

  /**
   * The factory's change of output in self-test, g (register map, registers 13 to 16; there in
   * counts at ±8 g).
   *
   * @param code 1 to 31
   */
  static double factoryChangeG(int code) {
    return 0.34 * Math.pow(0.92 / 0.34, (code - 1) / 30.0);
  }
}
