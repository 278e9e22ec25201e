package io.pitchwatch.levelling;

import org.jspecify.annotations.Nullable;

/** The best combination of so many pieces, by the order of preference of docs/levelling.md. */
final class BestFind {

  private final Question question;
  private @Nullable Find fewer;
  private @Nullable Find best;

  /** None so far. */
  BestFind(Question question) {
    this.question = question;
  }

  /**
   * Combinations of another number of pieces follow.
   *
   * @param ofFewer the best of fewer pieces; null if there is none
   */
  void begin(@Nullable Find ofFewer) {
    fewer = ofFewer;
    best = null;
  }

  /** The best since the last beginning; null if there is none. */
  @Nullable Find get() {
    return best;
  }

  /** From now on this one is the best. */
  void set(Find find) {
    best = find;
  }

  /** Whether a lean, radians, with a tallest stack, millimetres, would be better. */
  boolean isWorseThan(double lean, double tallestMm) {
    return best == null
        ? isWorthMorePieces(lean)
        : lean < best.leanRad() - Bound.SAME_RAD
            || (lean <= best.leanRad() + Bound.SAME_RAD && tallestMm < best.tallestMm());
  }

  private boolean isWorthMorePieces(double lean) {
    return fewer == null
        || Excess.hundredths(lean, question.toleranceRad())
            < Excess.hundredths(fewer.leanRad(), question.toleranceRad());
  }
}
