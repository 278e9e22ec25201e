package io.pitchwatch.mqtt.check;

import io.pitchwatch.comfort.Verdict;

/** What became of a remote check. Whatever is not an answer is no news at all, never good news. */
public sealed interface CheckOutcome {

  /**
   * The daemon answered.
   *
   * @param json the document as it came
   * @param fresh whether it rests on a sample read after the question arrived
   * @param verdict what it says of the floor; unknown if it does not say, or is not fresh
   */
  record Answer(String json, boolean fresh, Verdict verdict) implements CheckOutcome {}

  /** There is no answer. */
  sealed interface NoAnswer extends CheckOutcome {

    /** One sentence for people: what, and what to do. */
    String why();
  }

  /** The broker is there, and says that the daemon is not, or does not know it. */
  record DaemonAway(String why) implements NoAnswer {}

  /** The broker cannot be reached, or the way to it broke. */
  record BrokerUnreachable(String why) implements NoAnswer {}

  /** The broker turned the user or the password down, or lets it not ask. */
  record CredentialsRefused(String why) implements NoAnswer {}

  /** The broker says that the daemon is there, but no answer came. */
  record TimedOut(String why) implements NoAnswer {}
}
