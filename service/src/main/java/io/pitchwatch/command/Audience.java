package io.pitchwatch.command;

import io.pitchwatch.mqtt.homie.LogLevel;
import io.pitchwatch.visit.Report;

/** Who hears what the lookout has to tell: the broker, or whoever follows a rehearsal. */
interface Audience {

  /** All that is known, five times a second, on the thread of the rounds. */
  void hear(Report report);

  /** Something that happened, for people. */
  void say(LogLevel level, String text);
}
