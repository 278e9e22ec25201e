package io.pitchwatch.coach;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** An angle as people read it: "0.25 deg". Degrees whatever the owner's units. */
public final class AngleText {

  private AngleText() {}

  /**
   * The angle in degrees with a fixed number of decimals, halves rounded away from zero. What
   * rounds to zero has no sign.
   *
   * @param angleRad radians; NaN and infinities read "unknown"
   * @param decimals digits after the point, 0 to 6
   * @throws IllegalArgumentException if decimals is outside 0 to 6
   */
  public static String of(double angleRad, int decimals) {
    if (decimals < 0 || decimals > 6) {
      throw new IllegalArgumentException("decimals is " + decimals + "; it must be 0 to 6");
    }
    if (Double.isNaN(angleRad) || Double.isInfinite(angleRad)) {
      return "unknown";
    }
    // The shortest decimal that names the double: 0.5 deg stays 0.5 on its way through radians.
    return BigDecimal.valueOf(Math.toDegrees(angleRad))
            .setScale(decimals, RoundingMode.HALF_UP)
            .toPlainString()
        + " deg";
  }
}
