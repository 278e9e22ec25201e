package io.pitchwatch.store;

import com.fasterxml.jackson.core.JsonGenerator;
import io.pitchwatch.alarms.AlarmMemory;
import io.pitchwatch.attitude.Alignment;
import io.pitchwatch.attitude.Lean;
import io.pitchwatch.attitude.UpVector;
import io.pitchwatch.attitude.Zero;
import io.pitchwatch.coach.Direction;
import io.pitchwatch.coach.Stay;
import io.pitchwatch.coach.Surface;
import io.pitchwatch.levelling.Layer;
import io.pitchwatch.visit.Laid;
import io.pitchwatch.visit.Phase;
import io.pitchwatch.visit.VisitState;
import java.io.IOException;
import java.util.List;

/** The core's records as the texts that are kept of them. */
final class KeptText {

  private KeptText() {}

  static String of(Zero zero) {
    return JsonValue.write(
        json -> {
          json.writeStartObject();
          json.writeNumberField("x", zero.up().x());
          json.writeNumberField("y", zero.up().y());
          json.writeNumberField("z", zero.up().z());
          JsonValue.number(json, "standardErrorRad", zero.standardErrorRad());
          JsonValue.number(json, "temperatureC", zero.temperatureC());
          json.writeStringField("date", zero.date());
          json.writeEndObject();
        });
  }

  static Zero zero(JsonValue json) {
    UpVector up =
        new UpVector(json.get("x").number(), json.get("y").number(), json.get("z").number());
    return new Zero(
        up,
        json.get("standardErrorRad").number(),
        json.get("temperatureC").number(),
        json.get("date").text());
  }

  static String of(Alignment.Found alignment) {
    return JsonValue.write(
        json -> {
          json.writeStartObject();
          JsonValue.number(json, "yawRad", alignment.yawRad());
          JsonValue.number(json, "standardErrorRad", alignment.standardErrorRad());
          json.writeStringField("date", alignment.date());
          json.writeEndObject();
        });
  }

  static Alignment.Found alignment(JsonValue json) {
    return new Alignment.Found(
        json.get("yawRad").number(),
        json.get("standardErrorRad").number(),
        json.get("date").text());
  }

  static String of(AlarmMemory memory) {
    return JsonValue.write(
        json -> {
          json.writeStartObject();
          json.writeBooleanField("active", memory.active());
          json.writeBooleanField("acknowledged", memory.acknowledged());
          json.writeBooleanField("suppressed", memory.suppressed());
          json.writeNumberField("ageNanos", memory.ageNanos());
          json.writeNumberField("turnLeftNanos", memory.turnLeftNanos());
          json.writeNumberField("shelfLeftNanos", memory.shelfLeftNanos());
          json.writeNumberField("quietLeftNanos", memory.quietLeftNanos());
          json.writeBooleanField("owed", memory.owed());
          json.writeNumberField("notices", memory.notices());
          json.writeEndObject();
        });
  }

  static AlarmMemory alarm(JsonValue json) {
    return new AlarmMemory(
        json.get("active").flag(),
        json.get("acknowledged").flag(),
        json.get("suppressed").flag(),
        json.get("ageNanos").whole(),
        json.get("turnLeftNanos").whole(),
        json.get("shelfLeftNanos").whole(),
        json.get("quietLeftNanos").whole(),
        json.get("owed").flag(),
        json.get("notices").whole());
  }

  static String of(VisitState state) {
    return JsonValue.write(
        json -> {
          json.writeStartObject();
          json.writeStringField("phase", state.phase().name());
          json.writeStringField("stay", state.stay().name());
          json.writeStringField("surface", state.surface().name());
          json.writeFieldName("laid");
          write(json, state.laid());
          json.writeEndObject();
        });
  }

  static VisitState visit(JsonValue json, long nowNanos) {
    return new VisitState(
        json.get("phase").constant(Phase.class),
        json.get("stay").constant(Stay.class),
        json.get("surface").constant(Surface.class),
        new Laid(json.get("laid").list().stream().map(KeptText::wheel).toList()),
        false,
        nowNanos);
  }

  private static void write(JsonGenerator json, Laid laid) throws IOException {
    json.writeStartArray();
    for (Laid.Wheel wheel : laid.wheels()) {
      json.writeStartObject();
      json.writeStringField("axle", wheel.axle());
      json.writeStringField("side", wheel.side().name());
      json.writeFieldName("layers");
      write(json, wheel.layers());
      json.writeArrayFieldStart("stair");
      for (List<Layer> stack : wheel.stair()) {
        write(json, stack);
      }
      json.writeEndArray();
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private static void write(JsonGenerator json, List<Layer> layers) throws IOException {
    json.writeStartArray();
    for (Layer layer : layers) {
      json.writeStartObject();
      json.writeStringField("piece", layer.piece());
      json.writeNumberField("abreast", layer.abreast());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private static Laid.Wheel wheel(JsonValue json) {
    return new Laid.Wheel(
        json.get("axle").text(),
        json.get("side").constant(Direction.class),
        layers(json.get("layers")),
        json.get("stair").list().stream().map(KeptText::layers).toList());
  }

  private static List<Layer> layers(JsonValue json) {
    return json.list().stream()
        .map(it -> new Layer(it.get("piece").text(), Math.toIntExact(it.get("abreast").whole())))
        .toList();
  }

  static void write(JsonGenerator json, String name, Lean lean) throws IOException {
    json.writeObjectFieldStart(name);
    JsonValue.number(json, "rollRad", lean.rollRad());
    JsonValue.number(json, "pitchRad", lean.pitchRad());
    json.writeEndObject();
  }

  static Lean lean(JsonValue json) {
    return new Lean(json.get("rollRad").number(), json.get("pitchRad").number());
  }
}
