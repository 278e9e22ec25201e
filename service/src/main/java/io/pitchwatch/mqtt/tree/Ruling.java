package io.pitchwatch.mqtt.tree;

/** What became of a command. */
public sealed interface Ruling {

  /** It was understood and handed on. */
  record Accepted() implements Ruling {}

  /**
   * It changed nothing.
   *
   * @param why one sentence for people: what was found and what is allowed
   */
  record Refused(String why) implements Ruling {}
}
