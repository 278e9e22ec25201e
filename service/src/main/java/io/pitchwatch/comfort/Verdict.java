package io.pitchwatch.comfort;

/** How the floor's lean compares with what the stay and the fridges ask. */
public enum Verdict {
  /** Inside the stay's tolerance, and every fridge inside its limits. */
  GOOD,
  /** Outside the stay's tolerance, every fridge inside its limits. */
  NEAR_ENOUGH,
  /** A fridge is outside its limits. */
  OUTSIDE,
  /** Moving, or no good sample. */
  UNKNOWN
}
