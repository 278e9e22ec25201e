package io.pitchwatch.command;

import io.pitchwatch.attitude.Alignment;
import io.pitchwatch.attitude.SensorSetup;
import io.pitchwatch.attitude.Zero;
import java.util.Locale;

/** How what is found out about a sensor is put in words. */
final class CareWords {

  /** Two decimals are said; less than this would be said as nothing. */
  static final double LEAST_SAID_RAD = Math.toRadians(0.01);

  private CareWords() {}

  /** What there is of a setup, and since when. */
  static String of(SensorSetup setup) {
    return "zero "
        + of(setup.zero().equals(Zero.NONE), setup.zero().date())
        + ", heading "
        + of(setup.alignment().equals(Alignment.Found.NONE), setup.alignment().date())
        + ", calibration "
        + of(setup.calibration().isNone(), setup.calibration().date());
  }

  private static String of(boolean none, String date) {
    return none ? "none" : date.isEmpty() ? "without a date" : "of " + date;
  }

  /** Two standard errors, as people take a plus-minus. */
  static String within(double errorRad) {
    return " within ± " + degrees(Math.max(2 * errorRad, LEAST_SAID_RAD));
  }

  static String degrees(double rad) {
    return String.format(Locale.ROOT, "%.2f deg", Math.toDegrees(rad));
  }
}
