package io.pitchwatch.mqtt.link;

import java.util.ArrayDeque;
import java.util.Optional;

/**
 * What came in and is not read yet: so much and no more. What comes while it is full is counted and
 * dropped, so that no flood fills the memory or keeps the reader busy for long.
 */
public final class Inbox {

  private final ArrayDeque<Arrival> waiting = new ArrayDeque<>();
  private final int capacity;
  private long dropped;

  /**
   * An empty one.
   *
   * @param capacity how many messages may wait
   */
  public Inbox(int capacity) {
    this.capacity = capacity;
  }

  /** Keeps the message, or counts it as dropped. */
  public synchronized void put(Arrival arrival) {
    if (waiting.size() < capacity) {
      waiting.add(arrival);
    } else {
      dropped++;
    }
  }

  /** The oldest message not read yet. */
  public synchronized Optional<Arrival> poll() {
    return Optional.ofNullable(waiting.poll());
  }

  /** How many were dropped since this was last asked. */
  public synchronized long takeDropped() {
    long count = dropped;
    dropped = 0;
    return count;
  }
}
