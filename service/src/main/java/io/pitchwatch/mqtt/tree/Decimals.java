package io.pitchwatch.mqtt.tree;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as they go on the wire: plain, with so many decimals, never a negative zero. */
public final class Decimals {

  private Decimals() {}

  /**
   * The number nearest to it with so many decimals; halves away from zero.
   *
   * @param number finite
   * @param decimals 0 or more
   */
  public static BigDecimal rounded(double number, int decimals) {
    return BigDecimal.valueOf(number).setScale(decimals, RoundingMode.HALF_UP);
  }
}
