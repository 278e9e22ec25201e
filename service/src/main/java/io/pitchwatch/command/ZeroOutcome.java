package io.pitchwatch.command;

import io.pitchwatch.attitude.Zero;

/** What came of taking the floor as it stands for level. */
sealed interface ZeroOutcome {

  /** The zero to use from now on. */
  record Taken(Zero zero) implements ZeroOutcome {}

  /**
   * Nothing was changed.
   *
   * @param reason for people: why not, and what to do
   */
  record Refused(String reason) implements ZeroOutcome {}
}
