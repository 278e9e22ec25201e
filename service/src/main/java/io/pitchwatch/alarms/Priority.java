package io.pitchwatch.alarms;

/** How soon somebody should act, most urgent first. */
public enum Priority {
  /** Now: something is being harmed, or somebody may be. */
  URGENT,
  /** Within the hour. */
  HIGH,
  /** Today. */
  MEDIUM,
  /** When there is time. */
  LOW
}
