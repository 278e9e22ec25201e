package io.pitchwatch.alarms;

/** What became of something that somebody asked of an alarm. */
public sealed interface AlarmOutcome {

  /** It was done; or there was nothing left to do. */
  record Done() implements AlarmOutcome {}

  /**
   * It was not done.
   *
   * @param reason why, one sentence that says what is allowed
   */
  record Refused(String reason) implements AlarmOutcome {}
}
