package io.pitchwatch.settling;

/**
 * When a settling floor reaches the first limit it has not passed yet.
 *
 * @param limit the limit's name; empty when none is foreseen
 * @param hours best estimate, hours; NaN when none is foreseen
 * @param soonestHours lower end of the 90 % interval, hours; NaN when none is foreseen
 * @param latestHours upper end, hours; infinite when it may never come; NaN when none is foreseen
 */
public record HoursToLimit(String limit, double hours, double soonestHours, double latestHours) {

  /** No limit is foreseen. */
  public static final HoursToLimit NONE = new HoursToLimit("", Double.NaN, Double.NaN, Double.NaN);

  /** Whether a limit is foreseen. */
  public boolean isForeseen() {
    return !Double.isNaN(hours);
  }
}
