package io.pitchwatch.mqtt.tree;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import io.pitchwatch.attitude.Lean;
import io.pitchwatch.levelling.Cautions;
import io.pitchwatch.levelling.Layer;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.List;

/** What the documents that are written have in common. */
final class Json {

  private static final JsonFactory FACTORY = new JsonFactory();

  private Json() {}

  /** Writes one document. */
  interface Body {
    void write(JsonGenerator json) throws IOException;
  }

  /** An object, with what the body writes into it. */
  static String object(Body body) {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = FACTORY.createGenerator(text)) {
      json.writeStartObject();
      body.write(json);
      json.writeEndObject();
    } catch (IOException e) {
      throw new UncheckedIOException("writing to memory failed", e);
    }
    return text.toString();
  }

  /** A lean in degrees, to a thousandth. */
  static void lean(JsonGenerator json, String field, Lean lean) throws IOException {
    json.writeObjectFieldStart(field);
    deg(json, "rollDeg", lean.rollRad());
    deg(json, "pitchDeg", lean.pitchRad());
    json.writeEndObject();
  }

  /** An angle in degrees, to a thousandth. */
  static void deg(JsonGenerator json, String field, double rad) throws IOException {
    json.writeNumberField(field, rounded(Math.toDegrees(rad), 3));
  }

  /** A length in millimetres, to a hundredth. */
  static void mm(JsonGenerator json, String field, double mm) throws IOException {
    json.writeNumberField(field, rounded(mm, 2));
  }

  /** The cautions that go with every plan. */
  static void cautions(JsonGenerator json) throws IOException {
    json.writeArrayFieldStart("cautions");
    for (String caution : Cautions.ALL) {
      json.writeString(caution);
    }
    json.writeEndArray();
  }

  /** A list of objects. */
  static <T> void array(JsonGenerator json, String field, List<T> items, Item<T> item)
      throws IOException {
    json.writeArrayFieldStart(field);
    for (T each : items) {
      json.writeStartObject();
      item.write(json, each);
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  /** Writes the fields of one object. */
  interface Item<T> {
    void write(JsonGenerator json, T item) throws IOException;
  }

  /** Layers from the ground up, as a list. */
  static void layers(JsonGenerator json, List<Layer> layers) throws IOException {
    json.writeStartArray();
    for (Layer layer : layers) {
      json.writeStartObject();
      json.writeStringField("piece", layer.piece());
      json.writeNumberField("abreast", layer.abreast());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  /** A stack and the shorter ones in front of it, lowest first, as two fields. */
  static void stack(JsonGenerator json, List<Layer> layers, List<List<Layer>> stair)
      throws IOException {
    json.writeFieldName("layers");
    layers(json, layers);
    json.writeArrayFieldStart("stair");
    for (List<Layer> step : stair) {
      layers(json, step);
    }
    json.writeEndArray();
  }

  private static BigDecimal rounded(double number, int decimals) {
    BigDecimal rounded = Decimals.rounded(number, decimals).stripTrailingZeros();
    return rounded.scale() < 0 ? rounded.setScale(0) : rounded;
  }
}
