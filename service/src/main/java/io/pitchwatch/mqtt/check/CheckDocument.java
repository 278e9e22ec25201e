package io.pitchwatch.mqtt.check;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import io.pitchwatch.floor.FloorReading;
import io.pitchwatch.floor.FloorState;
import io.pitchwatch.mqtt.homie.Datatype;
import io.pitchwatch.mqtt.tree.Decimals;
import io.pitchwatch.mqtt.tree.DeviceTree;
import io.pitchwatch.mqtt.tree.Reading;
import io.pitchwatch.mqtt.tree.Value;
import io.pitchwatch.visit.Report;
import io.pitchwatch.visit.Report.AlertReport;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.function.LongFunction;

/**
 * The answer to a remote check: every property of the tree with its value, unit and age.
 *
 * @param tree what there is to tell
 * @param report what is known
 * @param wall wall time of a monotonic instant
 * @param askedAtNanos monotonic time at which the question arrived
 * @param nowNanos monotonic time
 */
public record CheckDocument(
    DeviceTree tree, Report report, LongFunction<Instant> wall, long askedAtNanos, long nowNanos) {

  private static final double NANOS_PER_S = 1e9;

  /** Whether a sample that can be believed was read after the question arrived. */
  public boolean isFresh() {
    FloorReading floor = report.floor();
    return floor.state() != FloorState.UNKNOWN && floor.takenAtNanos() - askedAtNanos > 0;
  }

  /** The document, UTF-8 JSON. */
  public byte[] json() {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(4096);
    try (JsonGenerator json = new JsonFactory().createGenerator(bytes)) {
      json.writeStartObject();
      json.writeStringField("coach", tree.name());
      json.writeStringField("askedAt", label(askedAtNanos));
      json.writeStringField("answeredAt", label(nowNanos));
      json.writeBooleanField("fresh", isFresh());
      json.writeObjectFieldStart("nodes");
      writeNodes(json);
      json.writeEndObject();
      json.writeArrayFieldStart("alerts");
      for (AlertReport alert : report.alerts()) {
        json.writeStartObject();
        json.writeStringField("id", alert.id());
        json.writeStringField("text", alert.text());
        writeAge(json, alert.sinceNanos());
        json.writeEndObject();
      }
      json.writeEndArray();
      json.writeEndObject();
    } catch (IOException e) {
      throw new UncheckedIOException("writing to memory failed", e);
    }
    return bytes.toByteArray();
  }

  private String label(long atNanos) {
    return wall.apply(atNanos).truncatedTo(ChronoUnit.MILLIS).toString();
  }

  private void writeNodes(JsonGenerator json) throws IOException {
    List<Reading> readings = tree.read(report, wall);
    String open = "";
    for (Reading reading : readings) {
      if (!reading.node().id().equals(open)) {
        if (!open.isEmpty()) {
          json.writeEndObject();
        }
        open = reading.node().id();
        json.writeObjectFieldStart(open);
      }
      json.writeObjectFieldStart(reading.property().id());
      writeFigure(json, reading);
      json.writeEndObject();
    }
    if (!open.isEmpty()) {
      json.writeEndObject();
    }
  }

  private void writeFigure(JsonGenerator json, Reading reading) throws IOException {
    json.writeFieldName("value");
    if (reading.value() instanceof Value.Amount amount) {
      json.writeNumber(Decimals.rounded(amount.number(), reading.property().decimals()));
    } else if (reading.value() instanceof Value.Text text) {
      writeText(json, reading.property().datatype(), text.text());
    } else {
      json.writeNull();
    }
    if (!reading.property().unit().isEmpty()) {
      json.writeStringField("unit", reading.property().unit());
    }
    if (reading.value() instanceof Value.Unknown) {
      json.writeNullField("ageSeconds");
    } else {
      writeAge(json, reading.takenAtNanos());
    }
  }

  private static void writeText(JsonGenerator json, Datatype datatype, String text)
      throws IOException {
    switch (datatype) {
      case BOOLEAN -> json.writeBoolean(Boolean.parseBoolean(text));
      case JSON -> json.writeRawValue(text);
      default -> json.writeString(text);
    }
  }

  private void writeAge(JsonGenerator json, long sinceNanos) throws IOException {
    double ageS = Math.max(0, nowNanos - sinceNanos) / NANOS_PER_S;
    json.writeNumberField("ageSeconds", Decimals.rounded(ageS, 2));
  }
}
