package io.pitchwatch.command;

import io.pitchwatch.visit.Watchkeeper;
import java.util.List;

/**
 * The parts that the rounds walk through.
 *
 * @param posts the sensors; the first is the one that is believed
 * @param keeper makes reports of what they say
 * @param memory keeps what must last
 */
record Watch(List<SensorPost> posts, Watchkeeper keeper, Memory memory) {

  /** Copies the list. */
  Watch {
    posts = List.copyOf(posts);
  }
}
