package io.pitchwatch.levelling;

import io.pitchwatch.coach.Words;

/** How good a plan is. */
public enum PlanVerdict {
  /** Inside the stay's tolerance. */
  GOOD,
  /** Outside it, but all that is on board allows, and inside every hard limit. */
  BEST_POSSIBLE,
  /** No plan keeps every hard limit. */
  MOVE;

  /** As it is written in documents: {@code good}, {@code best-possible}, {@code move}. */
  public String word() {
    return Words.of(this);
  }
}
