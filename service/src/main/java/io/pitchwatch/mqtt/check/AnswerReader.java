package io.pitchwatch.mqtt.check;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import io.pitchwatch.coach.Words;
import io.pitchwatch.comfort.Verdict;
import java.io.IOException;
import java.util.Optional;

/** Reads from an answer what decides: whether it is fresh, and the verdict. */
final class AnswerReader {

  private static final String VERDICT = "/nodes/floor/verdict/value";
  private static final String FRESH = "/fresh";

  private AnswerReader() {}

  /** The answer; empty if the text is not a JSON object. */
  static Optional<CheckOutcome.Answer> read(String text) {
    boolean fresh = false;
    Verdict verdict = Verdict.UNKNOWN;
    try (JsonParser json = new JsonFactory().createParser(text)) {
      if (json.nextToken() != JsonToken.START_OBJECT) {
        return Optional.empty();
      }
      for (JsonToken token = json.nextToken(); token != null; token = json.nextToken()) {
        if (token.isScalarValue()) {
          String place = json.getParsingContext().pathAsPointer().toString();
          if (place.equals(FRESH)) {
            fresh = token == JsonToken.VALUE_TRUE;
          } else if (place.equals(VERDICT)) {
            verdict = verdict(json.getText());
          }
        }
      }
    } catch (IOException e) {
      return Optional.empty();
    }
    return Optional.of(new CheckOutcome.Answer(text, fresh, fresh ? verdict : Verdict.UNKNOWN));
  }

  private static Verdict verdict(String word) {
    return Words.find(Verdict.values(), word).orElse(Verdict.UNKNOWN);
  }
}
