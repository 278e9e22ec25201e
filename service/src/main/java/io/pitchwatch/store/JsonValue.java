package io.pitchwatch.store;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A small JSON document, read whole. What is not as asked for is an IllegalArgumentException. */
final class JsonValue {

  private static final JsonFactory FACTORY = new JsonFactory();
  private static final int DEEPEST = 16;

  /** Writes a document. */
  interface Writing {
    void to(JsonGenerator json) throws IOException;
  }

  private final @Nullable Object value;

  private JsonValue(@Nullable Object value) {
    this.value = value;
  }

  /**
   * Reads a document.
   *
   * @throws IllegalArgumentException if the text is not JSON, or nested too deep
   */
  static JsonValue parse(String text) {
    try (JsonParser parser = FACTORY.createParser(text)) {
      parser.nextToken();
      return new JsonValue(tree(parser, 0));
    } catch (IOException e) {
      throw new IllegalArgumentException("not JSON: " + e.getMessage(), e);
    }
  }

  private static @Nullable Object tree(JsonParser parser, int depth) throws IOException {
    if (depth > DEEPEST) {
      throw new IllegalArgumentException("nested deeper than " + DEEPEST);
    }
    JsonToken token = parser.currentToken();
    if (token == JsonToken.START_OBJECT) {
      Map<String, @Nullable Object> object = new LinkedHashMap<>();
      while (parser.nextToken() == JsonToken.FIELD_NAME) {
        String name = parser.currentName();
        parser.nextToken();
        object.put(name, tree(parser, depth + 1));
      }
      return object;
    }
    if (token == JsonToken.START_ARRAY) {
      List<JsonValue> array = new ArrayList<>();
      while (parser.nextToken() != JsonToken.END_ARRAY) {
        array.add(new JsonValue(tree(parser, depth + 1)));
      }
      return array;
    }
    if (token == null || token == JsonToken.VALUE_NULL) {
      return null;
    }
    if (token == JsonToken.VALUE_NUMBER_INT) {
      return parser.getLongValue();
    }
    return token.isNumeric() ? parser.getDoubleValue() : parser.getText();
  }

  /** A document as text. */
  static String write(Writing writing) {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = FACTORY.createGenerator(text)) {
      writing.to(json);
    } catch (IOException e) {
      throw new UncheckedIOException("a StringWriter does not fail", e);
    }
    return text.toString();
  }

  /** Writes a number, or null where it is not one. */
  static void number(JsonGenerator json, String name, double value) throws IOException {
    json.writeFieldName(name);
    if (Double.isFinite(value)) {
      json.writeNumber(value);
    } else {
      json.writeNull();
    }
  }

  JsonValue get(String name) {
    return find(name).orElseThrow(() -> new IllegalArgumentException("no " + name));
  }

  /** What was written under a name; empty in a text of before there was such a thing. */
  Optional<JsonValue> find(String name) {
    return value instanceof Map<?, ?> object && object.containsKey(name)
        ? Optional.of(new JsonValue(object.get(name)))
        : Optional.empty();
  }

  List<JsonValue> list() {
    if (value instanceof List<?> array) {
      return array.stream().map(JsonValue.class::cast).toList();
    }
    throw new IllegalArgumentException("not an array");
  }

  String text() {
    if (value instanceof String text) {
      return text;
    }
    throw new IllegalArgumentException("not a text");
  }

  /** The number; NaN for null. */
  double number() {
    if (value instanceof Number number) {
      return number.doubleValue();
    }
    if (value == null) {
      return Double.NaN;
    }
    throw new IllegalArgumentException("not a number");
  }

  /** The whole number. */
  long whole() {
    if (value instanceof Long number) {
      return number;
    }
    throw new IllegalArgumentException("not a whole number");
  }

  boolean flag() {
    return switch (text()) {
      case "true" -> true;
      case "false" -> false;
      default -> throw new IllegalArgumentException("neither true nor false");
    };
  }

  /** One of an enum's constants. */
  <E extends Enum<E>> E constant(Class<E> type) {
    return Enum.valueOf(type, text());
  }
}
