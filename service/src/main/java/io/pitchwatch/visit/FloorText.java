package io.pitchwatch.visit;

import io.pitchwatch.attitude.Lean;
import java.util.Locale;

/** How a floor leans, in words: which side and which end is low, never a bare sign. */
public final class FloorText {

  /** A lean that shows as 0.0 has no low side. */
  private static final double SHOWN_DEG = 0.05;

  private FloorText() {}

  /**
   * One line, such as "right side low 2.1°, front high 0.8°".
   *
   * @param lean radians; NaN in either angle reads "unknown"
   */
  public static String of(Lean lean) {
    if (Double.isNaN(lean.rollRad() + lean.pitchRad())) {
      return "lean unknown";
    }
    String side = side(lean.rollDeg());
    String end = end(lean.pitchDeg());
    if (side.isEmpty() && end.isEmpty()) {
      return "level";
    }
    return side.isEmpty()
        ? "sides level, " + end
        : end.isEmpty() ? side + ", ends level" : side + ", " + end;
  }

  private static String side(double rollDeg) {
    if (Math.abs(rollDeg) < SHOWN_DEG) {
      return "";
    }
    return String.format(
        Locale.ROOT, "%s side low %.1f°", rollDeg > 0 ? "right" : "left", Math.abs(rollDeg));
  }

  private static String end(double pitchDeg) {
    if (Math.abs(pitchDeg) < SHOWN_DEG) {
      return "";
    }
    return String.format(
        Locale.ROOT, "front %s %.1f°", pitchDeg > 0 ? "low" : "high", Math.abs(pitchDeg));
  }
}
