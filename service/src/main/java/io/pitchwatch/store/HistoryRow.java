package io.pitchwatch.store;

import java.util.Set;

/**
 * One row of history: a minute, an hour or a day of one run of the service. What is not known is
 * NaN. Rows come in the order in which they happened, whatever the labels say.
 *
 * @param number rises from row to row of one resolution
 * @param run which run of the service, from 1; each start is a new one
 * @param atSeconds monotonic seconds since the run began, at the end of a minute, or the beginning
 *     of an hour or a day
 * @param wallSeconds seconds since 1970 of the first minute, a label
 * @param minutes how many minutes it sums up
 * @param known how many of them had a known lean
 * @param roll roll
 * @param pitch pitch
 * @param uncertaintyRad root mean square of the minutes' standard errors, radians
 * @param spreadRad root mean square of the minutes' spreads, radians
 * @param temperatureC mean temperature of the sensor, degrees Celsius
 * @param marks what was the case in at least one minute
 */
public record HistoryRow(
    long number,
    long run,
    long atSeconds,
    long wallSeconds,
    int minutes,
    int known,
    Angle roll,
    Angle pitch,
    double uncertaintyRad,
    double spreadRad,
    double temperatureC,
    Set<Mark> marks) {

  /** Copies the marks. */
  public HistoryRow {
    marks = Set.copyOf(marks);
  }

  /**
   * An angle over the row's time, radians; NaN when it was never known.
   *
   * @param meanRad mean of the minutes
   * @param leastRad the least minute
   * @param mostRad the most minute
   */
  public record Angle(double meanRad, double leastRad, double mostRad) {}
}
