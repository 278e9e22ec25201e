package io.pitchwatch.mqtt.link;

import io.pitchwatch.mqtt.homie.Topic;
import java.util.ArrayDeque;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Predicate;

/**
 * What is to go out: of every topic whose value stands only the latest, in the order in which the
 * topics first came; then events, of which the oldest give way. It cannot grow with the length of
 * an outage.
 */
public final class Outbox {

  private final Map<Topic, Publication> standing = new LinkedHashMap<>();
  private final ArrayDeque<Publication> events = new ArrayDeque<>();
  private final int eventCapacity;
  private long droppedEvents;

  /**
   * An empty one.
   *
   * @param eventCapacity how many events may wait
   */
  public Outbox(int eventCapacity) {
    this.eventCapacity = eventCapacity;
  }

  /** Puts a message in line. */
  public void put(Publication publication) {
    if (publication.retained()) {
      standing.put(publication.topic(), publication);
      return;
    }
    if (events.size() == eventCapacity) {
      events.poll();
      droppedEvents++;
    }
    events.add(publication);
  }

  /** Puts a value in line behind all others, wherever one for its topic stood. */
  public void putLast(Publication publication) {
    standing.remove(publication.topic());
    put(publication);
  }

  /**
   * Offers the messages in line, first to last, until one is not taken.
   *
   * @param taker true: it is under way; false: later
   */
  public void pump(Predicate<Publication> taker) {
    Iterator<Publication> values = standing.values().iterator();
    while (values.hasNext()) {
      if (!taker.test(values.next())) {
        return;
      }
      values.remove();
    }
    while (!events.isEmpty() && taker.test(events.element())) {
      events.remove();
    }
  }

  /** Forgets the values; they are about to be put anew. Events stay. */
  public void clearStanding() {
    standing.clear();
  }

  /** Whether nothing waits. */
  public boolean isEmpty() {
    return standing.isEmpty() && events.isEmpty();
  }

  /** How many events gave way so far. */
  public long droppedEvents() {
    return droppedEvents;
  }
}
