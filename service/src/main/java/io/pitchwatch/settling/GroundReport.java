package io.pitchwatch.settling;

import java.util.Optional;

/**
 * What is known of the ground under the parked coach.
 *
 * @param atNanos monotonic time up to which minutes were counted
 * @param settling whether the ground is giving way
 * @param sinceNanos monotonic time at which that began, as far as it can be told; 0 when it is not
 * @param roll how roll changes
 * @param pitch how pitch changes
 * @param toLimit when the first limit is reached; {@link HoursToLimit#NONE} unless settling
 * @param lastEvent the last change that came at once and stayed
 */
public record GroundReport(
    long atNanos,
    boolean settling,
    long sinceNanos,
    Trend roll,
    Trend pitch,
    HoursToLimit toLimit,
    Optional<GroundEvent> lastEvent) {

  /** Nothing is known yet. */
  public static final GroundReport UNKNOWN =
      new GroundReport(
          0, false, 0, Trend.UNKNOWN, Trend.UNKNOWN, HoursToLimit.NONE, Optional.empty());

  /**
   * How one angle changes.
   *
   * @param rateRadPerHour radians an hour, same sign as the angle; NaN when not known yet
   * @param errorRadPerHour one standard error of it; NaN when not known yet
   * @param sunkRad how far it has gone since settling began, events not counted; 0 when it is not
   *     settling
   * @param driftRadPerC how the sensor's angle drifts with its temperature, as learnt so far,
   *     radians per degree Celsius; NaN when not known yet
   * @param driftErrorRadPerC one standard error of it; NaN when not known yet
   */
  public record Trend(
      double rateRadPerHour,
      double errorRadPerHour,
      double sunkRad,
      double driftRadPerC,
      double driftErrorRadPerC) {

    static final Trend UNKNOWN = new Trend(Double.NaN, Double.NaN, 0, Double.NaN, Double.NaN);
  }
}
