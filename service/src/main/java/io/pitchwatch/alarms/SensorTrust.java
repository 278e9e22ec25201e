package io.pitchwatch.alarms;

/**
 * Whether a sensor can be believed, as far as alarms go.
 *
 * @param id its name, of a-z, 0-9 and -
 * @param trust how far
 * @param reason why not further, one sentence; empty when good
 */
public record SensorTrust(String id, Trust trust, String reason) {

  /** How far a sensor is believed. */
  public enum Trust {
    GOOD,
    DOUBTFUL,
    LOST
  }
}
