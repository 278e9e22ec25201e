package io.pitchwatch.floor;

/** What the stream of samples says of the coach's rest. */
public enum FloorState {
  /** Under way, or being driven onto blocks. */
  MOVING,
  /** At rest, the steady estimate not yet trustworthy; or just begun, rest not yet known. */
  UNSETTLED,
  /** At rest, the steady estimate as good as the noise allows. */
  STEADY,
  /** No good sample for too long. */
  UNKNOWN
}
