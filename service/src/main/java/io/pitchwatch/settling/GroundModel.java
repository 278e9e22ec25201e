package io.pitchwatch.settling;

/**
 * What moves the lean of a coach whose ground is firm, as the settling filter takes it.
 *
 * <p>Every figure is our own, set on the safe side of what a coach on its springs does and checked
 * by simulation (docs/figures/settling.md). Standard deviations in radians, times in hours; times
 * are those in which a part of the model forgets by a factor e.
 *
 * @param startRad how little is known of the level at first
 * @param busyRad people, water tanks and steady wind
 * @param busyHours how long these last
 * @param warmRad what warmth does beyond coefficient and daily wave
 * @param warmHours how long that lasts
 * @param coefficientRadPerC the sensor's drift with temperature; 0 without a thermometer
 * @param coefficientHours how long the coefficient lasts
 * @param dailyRad each of the two parts of the daily wave
 * @param dailyHours how long the daily wave keeps its shape
 * @param levelRadPerRootHour random walk of the level, radians in one hour, growing with the root
 * @param rateRadPerHour rate of settling, before anything is known of it
 * @param rateHours how long a rate lasts
 */
public record GroundModel(
    double startRad,
    double busyRad,
    double busyHours,
    double warmRad,
    double warmHours,
    double coefficientRadPerC,
    double coefficientHours,
    double dailyRad,
    double dailyHours,
    double levelRadPerRootHour,
    double rateRadPerHour,
    double rateHours) {

  private static final double DAY = 24;

  /** A chip drifts as it does for years; what else goes with its warmth changes with the season. */
  private static final double HALF_A_YEAR = 180 * DAY;

  /** For a sensor without a thermometer: the sun's doing is only seen by its daily return. */
  public static GroundModel withoutThermometer() {
    return of(0, 0.08, 0.12);
  }

  /**
   * For a sensor with a thermometer of its own.
   *
   * @param coefficientRadPerC typical drift with temperature, radians per degree Celsius; the
   *     datasheet's offset against temperature times 1 rad/g
   * @throws IllegalArgumentException if the coefficient is negative or not finite
   */
  public static GroundModel withThermometer(double coefficientRadPerC) {
    if (!(coefficientRadPerC >= 0) || Double.isInfinite(coefficientRadPerC)) {
      throw new IllegalArgumentException(
          "coefficientRadPerC is " + coefficientRadPerC + "; it must be 0 or more");
    }
    return of(coefficientRadPerC, 0.02, 0.03);
  }

  private static GroundModel of(double coefficientRadPerC, double warmDeg, double dailyDeg) {
    return new GroundModel(
        Math.toRadians(1),
        Math.toRadians(0.1),
        4,
        Math.toRadians(warmDeg),
        6,
        coefficientRadPerC,
        HALF_A_YEAR,
        Math.toRadians(dailyDeg),
        5 * DAY,
        Math.toRadians(0.004),
        Math.toRadians(0.15),
        2 * DAY);
  }
}
