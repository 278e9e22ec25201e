package io.pitchwatch.visit;

/** Whether a sensor can be believed. */
public enum Health {
  GOOD,
  DOUBTFUL,
  FAILED
}
