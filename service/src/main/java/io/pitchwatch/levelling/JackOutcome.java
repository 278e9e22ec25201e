package io.pitchwatch.levelling;

import io.pitchwatch.attitude.Lean;
import java.util.List;

/** What came of planning the jacks. */
sealed interface JackOutcome {

  /**
   * They can do it.
   *
   * @param moves in their order
   * @param after the lean with the jacks out
   * @param remarks what the owner should know
   */
  record Planned(List<JackMove> moves, Lean after, List<Reason> remarks) implements JackOutcome {}

  /** They would break a limit; every one that they would. */
  record Refused(List<Reason> reasons) implements JackOutcome {}
}
