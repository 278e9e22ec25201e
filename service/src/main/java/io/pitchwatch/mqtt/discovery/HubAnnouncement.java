package io.pitchwatch.mqtt.discovery;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import io.pitchwatch.mqtt.homie.DeviceTopics;
import io.pitchwatch.mqtt.homie.Property;
import io.pitchwatch.mqtt.tree.CoachNode;
import io.pitchwatch.mqtt.tree.DeviceTree;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;

/**
 * The message that tells a hub which of the tree's topics to show, and how. Nothing is published
 * for hubs but this: they read the tree like everyone else.
 *
 * <p>Source: the hub's documentation of device-based MQTT discovery, and the schema in its own
 * source (homeassistant/components/mqtt/schemas.py, DEVICE_DISCOVERY_SCHEMA).
 *
 * @param tree what to announce
 * @param topics where its values are
 * @param device unique id of the device among all that announce themselves there
 * @param version of this program
 */
public record HubAnnouncement(DeviceTree tree, DeviceTopics topics, String device, String version) {

  private static final String PROGRAM = "pitchwatch";

  /** The message, UTF-8 JSON. */
  public byte[] json() {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(8192);
    try (JsonGenerator json = new JsonFactory().createGenerator(bytes)) {
      json.writeStartObject();
      writeDevice(json);
      writeOrigin(json);
      json.writeNumberField("qos", 2);
      json.writeObjectFieldStart("cmps");
      for (CoachNode node : tree.nodes()) {
        for (Property property : node.node().properties()) {
          new HubComponent(json, topics, device).write(node, property);
        }
      }
      json.writeEndObject();
      json.writeEndObject();
    } catch (IOException e) {
      throw new UncheckedIOException("writing to memory failed", e);
    }
    return bytes.toByteArray();
  }

  private void writeDevice(JsonGenerator json) throws IOException {
    json.writeObjectFieldStart("dev");
    json.writeArrayFieldStart("ids");
    json.writeString(device);
    json.writeEndArray();
    json.writeStringField("name", tree.name());
    json.writeStringField("mdl", PROGRAM);
    json.writeStringField("sw", version);
    json.writeEndObject();
  }

  private void writeOrigin(JsonGenerator json) throws IOException {
    json.writeObjectFieldStart("o");
    json.writeStringField("name", PROGRAM);
    json.writeStringField("sw", version);
    json.writeEndObject();
  }
}
