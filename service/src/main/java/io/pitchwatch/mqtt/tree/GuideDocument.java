package io.pitchwatch.mqtt.tree;

import io.pitchwatch.coach.Words;
import io.pitchwatch.visit.Guide;

/**
 * How far somebody is with looking after the sensors, as JSON: {@code {"task": "reversal", "said":
 * "first reading taken", "next": "turn the coach …", "undo": ""}}.
 */
final class GuideDocument {

  private GuideDocument() {}

  static String write(Guide guide) {
    return Json.object(
        json -> {
          json.writeStringField("task", Words.of(guide.task()));
          json.writeStringField("said", guide.said());
          json.writeStringField("next", guide.next());
          json.writeStringField("undo", guide.undo());
        });
  }
}
