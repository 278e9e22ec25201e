package io.pitchwatch.levelling;

import io.pitchwatch.levelling.Choices.Choice;

/**
 * A combination of choices.
 *
 * @param choices one for each axle
 * @param rollRad that remains
 * @param pitchRad that remains
 * @param leanRad of the two what counts
 * @param tallestMm height of the tallest stack
 */
@SuppressWarnings("ArrayRecordComponent") // Millions are compared; nobody writes to it.
record Find(Choice[] choices, double rollRad, double pitchRad, double leanRad, double tallestMm) {

  /** Pieces taken in all, stairs included. */
  int pieces() {
    int pieces = 0;
    for (Choice choice : choices) {
      pieces += choice.right().pieces();
      pieces += choice.left() == null ? 0 : choice.left().pieces();
    }
    return pieces;
  }
}
