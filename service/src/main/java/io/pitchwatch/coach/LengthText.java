package io.pitchwatch.coach;

/**
 * A length as people read it: "48 mm", or "1-7/8 in" as it is read off a folding rule.
 *
 * <p>One inch is exactly 25.4 mm (international yard and pound agreement of 1959).
 */
public final class LengthText {

  /** Millimetres in an inch, exactly. */
  public static final double MM_PER_INCH = 25.4;

  private static final int PARTS = 16;

  private LengthText() {}

  /**
   * The length in the owner's units, rounded to 1 mm or to the nearest 1/16 in, the fraction in its
   * lowest terms. Halves are rounded away from zero. A negative length keeps its sign.
   *
   * @param lengthMm millimetres, below 1e12 in size; NaN and infinities read "unknown"
   * @param units the owner's units
   */
  public static String of(double lengthMm, Units units) {
    if (Double.isNaN(lengthMm) || Double.isInfinite(lengthMm)) {
      return "unknown";
    }
    double size = Math.abs(lengthMm);
    long rounded = Math.round(units == Units.METRIC ? size : size / MM_PER_INCH * PARTS);
    String sign = lengthMm < 0 && rounded > 0 ? "-" : "";
    return sign + (units == Units.METRIC ? rounded + " mm" : inches(rounded));
  }

  private static String inches(long sixteenths) {
    long whole = sixteenths / PARTS;
    long top = sixteenths % PARTS;
    int bottom = PARTS;
    if (top == 0) {
      return whole + " in";
    }
    while (top % 2 == 0) {
      top /= 2;
      bottom /= 2;
    }
    return (whole == 0 ? "" : whole + "-") + top + "/" + bottom + " in";
  }
}
