package io.pitchwatch.command;

import io.pitchwatch.store.Kept;
import io.pitchwatch.visit.Watchkeeper;
import java.util.List;

/**
 * The parts that the rounds walk through.
 *
 * @param posts the sensors; the first is the one that is believed
 * @param keeper makes reports of what they say
 * @param kept what must last
 * @param historian answers what people ask about the history
 */
record Watch(List<SensorPost> posts, Watchkeeper keeper, Kept kept, Historian historian) {

  /** Copies the list. */
  Watch {
    posts = List.copyOf(posts);
  }
}
