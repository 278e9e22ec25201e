package io.pitchwatch.mqtt.link;

/** What a connection tells; called on Paho's threads, so return at once and call nothing of it. */
public interface SessionEvents {

  /** A message came in. */
  void arrived(Arrival arrival);

  /**
   * The broker took a message only to throw it away.
   *
   * @param topic where it was sent to
   * @param why one sentence for people
   */
  void refused(String topic, String why);

  /** Something changed: a delivery ended, or the connection did. */
  void stirred();
}
