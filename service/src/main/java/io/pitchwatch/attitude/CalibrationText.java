package io.pitchwatch.attitude;

import java.util.Locale;

/** A calibration in words, for people. */
public final class CalibrationText {

  /** A fit that misses 1 g by this much less than before is worth having: our own figure. */
  private static final double WORTHWHILE = 0.5;

  private static final int UNKNOWNS = 9;

  private CalibrationText() {}

  /** What it improves, one sentence without its full stop. */
  public static String improvement(Calibration calibration) {
    CalibrationQuality quality = calibration.quality();
    String change =
        String.format(
            Locale.ROOT,
            "|a| missed 1 g by %.1f mg before and by %.2f mg with it, over %d poses",
            1e3 * quality.beforeG(),
            1e3 * quality.afterG(),
            quality.poses());
    return worthwhile(calibration) ? change : change + ": no real gain, the old one is as good";
  }

  /** Whether it is better than what was there before. */
  public static boolean worthwhile(Calibration calibration) {
    CalibrationQuality quality = calibration.quality();
    // Nine unknowns take a share of the residual away whether they mean something or not.
    double fair = (double) quality.poses() / Math.max(1, quality.poses() - UNKNOWNS);
    return quality.afterG() * Math.sqrt(fair) < WORTHWHILE * quality.beforeG();
  }

  /** What it found, with standard errors; three lines for x, y, z. */
  public static String figures(Calibration calibration) {
    CalibrationQuality quality = calibration.quality();
    Triad scale = calibration.scale();
    Triad off = new Triad(scale.x() - 1, scale.y() - 1, scale.z() - 1);
    return line("bias, mg", calibration.bias(), quality.biasError(), 1e3)
        + line("scale, % off", off, quality.scaleError(), 100)
        + line(
            "misalignment, deg",
            calibration.misalignment(),
            quality.misalignmentError(),
            Math.toDegrees(1));
  }

  private static String line(String what, Triad value, Triad error, double factor) {
    return String.format(
        Locale.ROOT,
        "%-18s%9.3f %9.3f %9.3f  ± %.3f %.3f %.3f%n",
        what,
        factor * value.x(),
        factor * value.y(),
        factor * value.z(),
        factor * error.x(),
        factor * error.y(),
        factor * error.z());
  }
}
