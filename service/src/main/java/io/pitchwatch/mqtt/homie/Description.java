package io.pitchwatch.mqtt.homie;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;

/**
 * The document under {@code $description} (Homie 5.0, "Device Attributes").
 *
 * @param name of the device, for people
 * @param nodes in order
 */
public record Description(String name, List<Node> nodes) {

  private static final String CONVENTION = "5.0";

  /** Copies the list. */
  public Description {
    nodes = List.copyOf(nodes);
  }

  /**
   * The document.
   *
   * @param version must rise whenever anything else in the document changes
   * @return UTF-8 JSON
   */
  public byte[] json(long version) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(4096);
    try (JsonGenerator json = new JsonFactory().createGenerator(bytes)) {
      json.writeStartObject();
      json.writeStringField("homie", CONVENTION);
      json.writeNumberField("version", version);
      json.writeStringField("name", name);
      json.writeObjectFieldStart("nodes");
      for (Node node : nodes) {
        write(json, node);
      }
      json.writeEndObject();
      json.writeEndObject();
    } catch (IOException e) {
      throw new UncheckedIOException("writing to memory failed", e);
    }
    return bytes.toByteArray();
  }

  private static void write(JsonGenerator json, Node node) throws IOException {
    json.writeObjectFieldStart(node.id());
    json.writeStringField("name", node.name());
    json.writeObjectFieldStart("properties");
    for (Property property : node.properties()) {
      write(json, property);
    }
    json.writeEndObject();
    json.writeEndObject();
  }

  private static void write(JsonGenerator json, Property property) throws IOException {
    json.writeObjectFieldStart(property.id());
    json.writeStringField("name", property.name());
    json.writeStringField("datatype", property.datatype().word());
    if (!property.format().isEmpty()) {
      json.writeStringField("format", property.format());
    }
    if (!property.unit().isEmpty()) {
      json.writeStringField("unit", property.unit());
    }
    json.writeBooleanField("settable", property.settable());
    json.writeBooleanField("retained", property.retained());
    json.writeEndObject();
  }
}
