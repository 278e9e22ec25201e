package io.pitchwatch.attitude;

/**
 * How far a chip's temperature may be from that of its zero where no thermometer tells: within
 * hours by what sun and night do to a place on a coach, within months by what the season does.
 * Twice the day's spread is the 13 K by which the sun may warm a sensor. All are our own figures.
 */
final class UnknownTemperature {

  private static final double DAY_C = 6.5;
  private static final double DAY_MEMORY_DAYS = 2.0 / 24;
  private static final double SEASON_C = 5;
  private static final double SEASON_MEMORY_DAYS = 45;

  private UnknownTemperature() {}

  /**
   * One standard deviation, °C.
   *
   * @param ageDays since the zero, days; not known: NaN, as after a day or two
   */
  static double spreadC(double ageDays) {
    if (Double.isNaN(ageDays)) {
      return DAY_C;
    }
    double age = Math.max(0, ageDays);
    double day = -Math.expm1(-age / DAY_MEMORY_DAYS);
    double season = -Math.expm1(-age / SEASON_MEMORY_DAYS);
    return Math.sqrt(DAY_C * DAY_C * day + SEASON_C * SEASON_C * season);
  }
}
