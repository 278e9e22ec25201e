package io.pitchwatch.mqtt.tree;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import io.pitchwatch.coach.Words;
import io.pitchwatch.visit.Guide;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;

/**
 * How far somebody is with looking after the sensors, as JSON: {@code {"task": "reversal", "said":
 * "first reading taken", "next": "turn the coach …", "undo": ""}}.
 */
final class GuideDocument {

  private static final JsonFactory FACTORY = new JsonFactory();

  private GuideDocument() {}

  static String write(Guide guide) {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = FACTORY.createGenerator(text)) {
      json.writeStartObject();
      json.writeStringField("task", Words.of(guide.task()));
      json.writeStringField("said", guide.said());
      json.writeStringField("next", guide.next());
      json.writeStringField("undo", guide.undo());
      json.writeEndObject();
    } catch (IOException e) {
      throw new UncheckedIOException("a StringWriter does not fail", e);
    }
    return text.toString();
  }
}
