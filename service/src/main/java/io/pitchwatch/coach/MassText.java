package io.pitchwatch.coach;

/**
 * A mass as people read it: "3600 kg" or "7937 lb".
 *
 * <p>One pound is exactly 0.45359237 kg (international yard and pound agreement of 1959).
 */
public final class MassText {

  /** Kilograms in a pound, exactly. */
  public static final double KG_PER_POUND = 0.45359237;

  private MassText() {}

  /**
   * The mass in the owner's units, rounded to a whole kilogram or pound.
   *
   * @param massKg kilograms; NaN reads "unknown", infinity "no limit"
   * @param units the owner's units
   */
  public static String of(double massKg, Units units) {
    if (Double.isNaN(massKg)) {
      return "unknown";
    }
    if (Double.isInfinite(massKg)) {
      return "no limit";
    }
    return units == Units.METRIC
        ? Math.round(massKg) + " kg"
        : Math.round(massKg / KG_PER_POUND) + " lb";
  }
}
