package io.pitchwatch.levelling;

/** How far a lean exceeds a tolerance, as plans are compared: to a hundredth of a degree. */
final class Excess {

  private static final double HUNDREDTHS_PER_DEG = 100;

  private Excess() {}

  /** The excess in hundredths of a degree, halves rounded up; 0 inside the tolerance. */
  static long hundredths(double leanRad, double toleranceRad) {
    double excessDeg = Math.toDegrees(Math.max(0, leanRad - toleranceRad));
    return Math.round(excessDeg * HUNDREDTHS_PER_DEG);
  }

  /** No lean above this one has an excess that rounds to less than the given one, radians. */
  static double leanBelowRad(long hundredths, double toleranceRad) {
    return toleranceRad + Math.toRadians((hundredths - 0.5) / HUNDREDTHS_PER_DEG);
  }
}
