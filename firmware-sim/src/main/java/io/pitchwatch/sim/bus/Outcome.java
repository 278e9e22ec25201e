package io.pitchwatch.sim.bus;

/** How a transfer on the bus ended. */
public enum Outcome {
  /** Every byte went through. */
  DONE,
  /** Nobody acknowledged the address. */
  NO_ACKNOWLEDGE,
  /** The data line is held low: the bus cannot start a transfer until it is recovered. */
  STUCK,
  /** The chip stretched the clock for longer than the adapter waits. */
  TIMED_OUT
}
