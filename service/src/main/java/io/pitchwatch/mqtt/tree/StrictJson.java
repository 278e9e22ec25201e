package io.pitchwatch.mqtt.tree;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Reads a small document a stranger sent: an object, a list, text and numbers, nothing nested
 * deeply, no key twice, nothing after the end.
 */
final class StrictJson {

  private static final int DEEPEST = 8;
  private static final int LONGEST_TEXT = 64;
  private static final int LONGEST_NUMBER = 20;

  private static final JsonFactory FACTORY =
      JsonFactory.builder()
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .disable(StreamReadFeature.INCLUDE_SOURCE_IN_LOCATION)
          .streamReadConstraints(
              StreamReadConstraints.builder()
                  .maxNestingDepth(DEEPEST)
                  .maxStringLength(LONGEST_TEXT)
                  .maxNameLength(LONGEST_TEXT)
                  .maxNumberLength(LONGEST_NUMBER)
                  .build())
          .build();

  private StrictJson() {}

  /**
   * The document as maps, lists, strings and doubles.
   *
   * @throws MalformedException if it is not JSON, or not of that kind
   */
  static Map<String, Object> object(String payload) throws MalformedException {
    try (JsonParser json = FACTORY.createParser(payload)) {
      if (json.nextToken() != JsonToken.START_OBJECT) {
        throw new MalformedException("found " + Quoted.of(payload) + "; allowed is a JSON object");
      }
      Map<String, Object> object = members(json);
      if (json.nextToken() != null) {
        throw new MalformedException("found something after the end of the JSON object");
      }
      return object;
    } catch (JsonProcessingException e) {
      throw new MalformedException(
          "not JSON: " + Quoted.of(String.valueOf(e.getOriginalMessage())));
    } catch (IOException e) {
      throw new MalformedException("not readable: " + Quoted.of(String.valueOf(e.getMessage())));
    }
  }

  private static Map<String, Object> members(JsonParser json)
      throws IOException, MalformedException {
    Map<String, Object> members = new LinkedHashMap<>();
    while (json.nextToken() == JsonToken.FIELD_NAME) {
      String name = json.currentName();
      members.put(name, value(json, json.nextToken()));
    }
    return members;
  }

  private static List<Object> elements(JsonParser json) throws IOException, MalformedException {
    List<Object> elements = new ArrayList<>();
    JsonToken token = json.nextToken();
    while (token != JsonToken.END_ARRAY) {
      elements.add(value(json, token));
      token = json.nextToken();
    }
    return elements;
  }

  private static Object value(JsonParser json, JsonToken token)
      throws IOException, MalformedException {
    return switch (token) {
      case START_OBJECT -> members(json);
      case START_ARRAY -> elements(json);
      case VALUE_STRING -> json.getText();
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> json.getDoubleValue();
      default -> throw new MalformedException("found " + token.asString() + " in the JSON object");
    };
  }
}
