package io.pitchwatch.sensing;

import io.pitchwatch.visit.Health;

/**
 * Whether a sensor can be believed, and why not.
 *
 * @param health good, doubtful or failed
 * @param reason one sentence for people; empty when good
 * @param temperatureC the chip's own thermometer, degrees Celsius; NaN when it has none or is lost
 * @param rateHz rate of the chip's samples measured against the host's clock, Hz; the nominal rate
 *     until measured
 * @param silentNanos time since the last good sample, or since sampling began, nanoseconds
 * @param counts what happened since sampling began
 */
public record SensorCondition(
    Health health,
    String reason,
    double temperatureC,
    double rateHz,
    long silentNanos,
    Counts counts) {

  /**
   * Tallies since sampling began.
   *
   * @param samples samples handed on
   * @param saturated samples at the end of the range, not handed on
   * @param spikes samples handed on that stood far from both neighbours
   * @param gaps times that samples went missing
   * @param busErrors failed transactions
   * @param brownOuts times the chip was found back at its reset values
   * @param restarts times the chip was set up anew after the first
   */
  public record Counts(
      long samples,
      long saturated,
      long spikes,
      long gaps,
      long busErrors,
      long brownOuts,
      long restarts) {}
}
