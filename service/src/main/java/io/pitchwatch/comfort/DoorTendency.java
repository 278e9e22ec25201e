package io.pitchwatch.comfort;

/** What a door does by itself, let go anywhere between shut and its stop. */
public enum DoorTendency {
  /** Stays wherever it is left. */
  STAYS,
  /** Moves towards shut, or stays. */
  DRIFTS_SHUT,
  /** Moves towards its stop, or stays. */
  DRIFTS_OPEN,
  /** Moves towards shut from some angles and towards its stop from others. */
  EITHER
}
