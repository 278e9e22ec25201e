package io.pitchwatch.mqtt.discovery;

import com.fasterxml.jackson.core.JsonGenerator;
import io.pitchwatch.mqtt.homie.DeviceState;
import io.pitchwatch.mqtt.homie.DeviceTopics;
import io.pitchwatch.mqtt.homie.Node;
import io.pitchwatch.mqtt.homie.Property;
import io.pitchwatch.mqtt.tree.CoachNode;
import io.pitchwatch.mqtt.tree.Guard;
import java.io.IOException;
import java.util.Optional;

/** Writes one property as the kind of component that a hub has for it. */
final class HubComponent {

  /** A value that is not known has no payload; a hub knows that word for it. */
  private static final String VALUE = "{{ value or 'None' }}";

  private static final String ONLINE_IF = "{{ 'online' if value %s '%s' else 'offline' }}";

  private final JsonGenerator json;
  private final DeviceTopics topics;
  private final String device;

  HubComponent(JsonGenerator json, DeviceTopics topics, String device) {
    this.json = json;
    this.topics = topics;
    this.device = device;
  }

  /** Writes the component; nothing for documents and for what takes free text. */
  void write(CoachNode coachNode, Property property) throws IOException {
    Optional<String> platform = platform(property);
    if (platform.isEmpty()) {
      return;
    }
    Node node = coachNode.node();
    String id = node.id() + "-" + property.id();
    json.writeObjectFieldStart(id);
    json.writeStringField("p", platform.get());
    json.writeStringField("unique_id", device + "-" + id);
    json.writeStringField("name", node.name() + ": " + property.name());
    if (property.settable()) {
      json.writeStringField("entity_category", "config");
      json.writeStringField("command_topic", topics.set(node, property).text());
    } else if (coachNode.isDiagnostic()) {
      json.writeStringField("entity_category", "diagnostic");
    }
    if (property.retained()) {
      json.writeStringField("state_topic", topics.value(node, property).text());
      json.writeStringField("value_template", VALUE);
      writeKind(coachNode, property);
    } else {
      json.writeStringField("payload_press", property.choices().get(0));
    }
    writeAvailability(coachNode, property);
    json.writeEndObject();
  }

  private static Optional<String> platform(Property property) {
    return switch (property.datatype()) {
      case FLOAT, DATETIME -> Optional.of("sensor");
      case BOOLEAN -> Optional.of("binary_sensor");
      case ENUM -> {
        if (!property.settable()) {
          yield Optional.of("sensor");
        }
        if (property.retained()) {
          yield Optional.of("select");
        }
        // A button presses one word; what has several steps wants its guide beside it.
        yield property.choices().size() == 1 ? Optional.of("button") : Optional.empty();
      }
      case STRING, JSON -> Optional.empty();
    };
  }

  private void writeKind(CoachNode node, Property property) throws IOException {
    switch (property.datatype()) {
      case FLOAT -> {
        json.writeStringField("unit_of_measurement", property.unit());
        json.writeStringField("state_class", "measurement");
        json.writeNumberField("suggested_display_precision", property.decimals());
      }
      case BOOLEAN -> {
        String wrong = node.wrong(property);
        json.writeStringField("device_class", "problem");
        json.writeStringField("payload_on", wrong);
        json.writeStringField("payload_off", wrong.equals("true") ? "false" : "true");
      }
      case DATETIME -> json.writeStringField("device_class", "timestamp");
      case ENUM -> {
        if (!property.settable()) {
          json.writeStringField("device_class", "enum");
        }
        json.writeArrayFieldStart("options");
        for (String choice : property.choices()) {
          json.writeString(choice);
        }
        json.writeEndArray();
      }
      case STRING, JSON -> throw new IllegalArgumentException(property.id() + " has no component");
    }
  }

  private void writeAvailability(CoachNode node, Property property) throws IOException {
    json.writeArrayFieldStart("availability");
    writeAvailable(topics.state().text(), "==", DeviceState.READY.word());
    Optional<Guard> guard = node.guard(property);
    if (guard.isPresent()) {
      Guard by = guard.get();
      writeAvailable(topics.value(by.node(), by.property()).text(), "!=", by.bad());
    }
    json.writeEndArray();
    json.writeStringField("availability_mode", "all");
  }

  private void writeAvailable(String topic, String relation, String word) throws IOException {
    json.writeStartObject();
    json.writeStringField("topic", topic);
    json.writeStringField("value_template", ONLINE_IF.formatted(relation, word));
    json.writeEndObject();
  }
}
