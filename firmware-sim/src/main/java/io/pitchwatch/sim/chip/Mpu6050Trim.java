package io.pitchwatch.sim.chip;

/**
 * What the factory wrote into an MPU-6050: how much its accelerometer answered to self-test there,
 * as a code of five bits for each axis. FT = 0.34·(0.92/0.34)^((code − 1)/30) g (register map Rev.
 * 4.2, section on registers 13 to 16; formula from memory).
 */
final class Mpu6050Trim {

  /** SELF_TEST_X, _Y, _Z and _A. */
  static final int REGISTERS = 4;

  private static final int[] CODES = {16, 17, 14};

  private Mpu6050Trim() {}

  /**
   * A register: the code's upper three bits beside the gyroscope's, which are 0; in the fourth the
   * lower two of all axes.
   *
   * @param index 0 to 3
   */
  static int register(int index) {
    if (index < CODES.length) {
      return CODES[index] >> 2 << 5;
    }
    int low = 0;
    for (int axis = 0; axis < CODES.length; axis++) {
      low |= (CODES[axis] & 3) << (4 - 2 * axis);
    }
    return low;
  }

  /** Change under self-test, g, of a part that is off its factory trim by these shares. */
  static Axes answerG(double offX, double offY, double offZ) {
    return new Axes(
        factoryG(CODES[0]) * (1 + offX),
        factoryG(CODES[1]) * (1 + offY),
        factoryG(CODES[2]) * (1 + offZ));
  }

  private static double factoryG(int code) {
    return 0.34 * Math.pow(0.92 / 0.34, (code - 1) / 30.0);
  }
}
