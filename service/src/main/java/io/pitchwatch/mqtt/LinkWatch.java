package io.pitchwatch.mqtt;

/**
 * What the link tells of itself. Called on the link's thread; an implementation returns at once.
 */
public interface LinkWatch {

  /** The whole tree stands on the broker. */
  void ready();

  /**
   * The broker is out of reach; the link goes on trying.
   *
   * @param why one sentence for people
   */
  void away(String why);

  /**
   * The link has left more behind in this process than it should; only a restart mends that.
   *
   * @param why one sentence for people
   */
  void wornOut(String why);
}
