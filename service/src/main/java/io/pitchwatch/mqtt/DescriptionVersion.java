package io.pitchwatch.mqtt;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import io.pitchwatch.mqtt.homie.Description;
import io.pitchwatch.mqtt.link.Payload;
import java.io.IOException;
import java.util.Optional;

/**
 * Numbers the description: the number stays while the document does and rises when it changes, as
 * those see it who read it last. So the broker is asked, and not a file that may be lost.
 */
final class DescriptionVersion {

  private DescriptionVersion() {}

  /**
   * The document with its number.
   *
   * @param description what the tree is
   * @param standing the document that stood on the broker
   */
  static Payload of(Description description, Optional<Payload> standing) {
    long last = standing.flatMap(DescriptionVersion::number).orElse(0L);
    Payload same = Payload.of(description.json(last));
    boolean unchanged = standing.isPresent() && standing.get().equals(same);
    return unchanged ? same : Payload.of(description.json(last + 1));
  }

  private static Optional<Long> number(Payload document) {
    try (JsonParser json = new JsonFactory().createParser(document.bytes())) {
      json.nextToken();
      while (json.nextToken() == JsonToken.FIELD_NAME) {
        boolean version = json.currentName().equals("version");
        JsonToken value = json.nextToken();
        if (version && value == JsonToken.VALUE_NUMBER_INT) {
          return Optional.of(Math.max(0, json.getLongValue())).filter(n -> n < Long.MAX_VALUE);
        }
        json.skipChildren();
      }
      return Optional.empty();
    } catch (IOException e) {
      // Somebody else's document, or none: numbers start anew.
      return Optional.empty();
    }
  }
}
