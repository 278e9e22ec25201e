package io.pitchwatch.attitude;

import java.util.Locale;

/** A lean in words: which side and which end is low, never a bare sign. */
public final class LeanText {

  private LeanText() {}

  /** One line to a tenth of a degree, such as "right side low 2.1°, rear low 0.8°". */
  public static String of(Lean lean) {
    return of(lean, 1);
  }

  /**
   * One line, such as "right side low 2.1°, rear low 0.8°". What shows as 0 has no low side.
   *
   * @param lean radians; NaN in either angle reads "lean unknown"
   * @param decimals of the degrees
   */
  public static String of(Lean lean, int decimals) {
    if (!lean.isKnown()) {
      return "lean unknown";
    }
    String side = part(lean.rollDeg(), decimals, "right side low", "left side low");
    String end = part(lean.pitchDeg(), decimals, "front low", "rear low");
    if (side.isEmpty() && end.isEmpty()) {
      return "level";
    }
    return side.isEmpty()
        ? "sides level, " + end
        : end.isEmpty() ? side + ", ends level" : side + ", " + end;
  }

  private static String part(double deg, int decimals, String positive, String negative) {
    if (Math.abs(deg) < 0.5 * Math.pow(10, -decimals)) {
      return "";
    }
    String size = String.format(Locale.ROOT, "%." + decimals + "f", Math.abs(deg));
    return (deg > 0 ? positive : negative) + " " + size + "°";
  }
}
