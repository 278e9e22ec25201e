package io.pitchwatch.mqtt.link;

/** Where a connection is in its short life. It never comes back from a later one to an earlier. */
public sealed interface Standing {

  /** The broker has not answered yet. */
  record Connecting() implements Standing {}

  /** Messages flow. */
  record Connected() implements Standing {}

  /** Over, or never begun. */
  sealed interface Ended extends Standing {

    /** One sentence for people: what, and what to do. */
    String why();
  }

  /** The broker turned the user or the password down, or they could not be read. */
  record Unwelcome(String why) implements Ended {}

  /** Nobody answers there, or nobody who speaks MQTT 5. */
  record Unreachable(String why) implements Ended {}

  /** Another client of the same id took our place. */
  record TakenOver(String why) implements Ended {}

  /**
   * The connection broke.
   *
   * @param why see there
   * @param closed whether the other side closed it in good order, yet without a reason
   */
  record Lost(String why, boolean closed) implements Ended {}
}
