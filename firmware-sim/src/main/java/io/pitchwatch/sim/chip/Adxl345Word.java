package io.pitchwatch.sim.chip;

/**
 * The data word of the ADXL345 as DATA_FORMAT asks for it (datasheet, table 21 and "Data format").
 *
 * <p>Full resolution: 1/256 g a step whatever the range, 10 to 13 bits. Otherwise 10 bits over the
 * range. Saturates at the range's ends; rounds to the nearest step.
 */
final class Adxl345Word {

  private static final int FULL_RES = 0x08;
  private static final int JUSTIFY_LEFT = 0x04;
  private static final int RANGE = 0x03;
  private static final int WORD_BITS = 16;
  private static final double FINEST_PER_G = 256;

  /** 15.6 mg a step, that is 4 steps of 1/256 g. */
  private static final double OFFSET_PER_G = 64;

  private Adxl345Word() {}

  /**
   * The word for one axis.
   *
   * @param forceG specific force, g; NaN gives 0
   * @param offset the axis's offset register, 0 to 255, two's complement
   * @param format DATA_FORMAT, 0 to 255
   */
  static short of(double forceG, int offset, int format) {
    int range = format & RANGE;
    boolean full = (format & FULL_RES) != 0;
    int bits = full ? 10 + range : 10;
    double perG = full ? FINEST_PER_G : FINEST_PER_G / (1 << range);
    int end = 1 << (bits - 1);
    long steps = Math.round((forceG + (byte) offset / OFFSET_PER_G) * perG);
    int held = (int) Math.max(-end, Math.min(end - 1, steps));
    return (short) ((format & JUSTIFY_LEFT) != 0 ? held << (WORD_BITS - bits) : held);
  }
}
