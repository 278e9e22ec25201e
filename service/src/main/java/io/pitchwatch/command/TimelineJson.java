package io.pitchwatch.command;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import io.pitchwatch.coach.Words;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;

/** The timeline for programs: one document (docs/schemas/rehearsal.json), an entry a line. */
final class TimelineJson implements Timeline {

  private static final double NANOS_PER_MILLI = 1e6;

  private final PrintWriter out;
  private final JsonGenerator json;

  TimelineJson(PrintWriter out) {
    this.out = out;
    try {
      json = new JsonFactory().createGenerator(out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    json.disable(JsonGenerator.Feature.FLUSH_PASSED_TO_STREAM);
  }

  /** Writes a piece; a PrintWriter keeps its troubles to itself. */
  private interface Piece {
    void write() throws IOException;
  }

  private void write(Piece piece) {
    try {
      piece.write();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static double seconds(long nanos) {
    return Math.round(nanos / NANOS_PER_MILLI) / 1000.0;
  }

  @Override
  public void begin(Title title) {
    write(
        () -> {
          json.writeStartObject();
          json.writeStringField("scenario", title.scenario());
          json.writeStringField("coach", title.coach());
          json.writeNumberField("seed", title.seed());
          json.writeNumberField("seconds", title.seconds());
          json.writeArrayFieldStart("timeline");
        });
  }

  @Override
  public void add(Entry entry) {
    write(
        () -> {
          json.writeRaw('\n');
          json.writeStartObject();
          json.writeNumberField("atSeconds", seconds(entry.atNanos()));
          json.writeStringField("kind", Words.of(entry.kind()));
          boolean around = entry.kind() == Kind.AROUND;
          json.writeStringField(around ? "does" : "topic", entry.topic());
          if (entry.kind() == Kind.ALERT) {
            json.writeStringField("change", entry.change());
          }
          json.writeFieldName("value");
          if (entry.value().isPresent()) {
            json.writeString(entry.value().get());
          } else {
            json.writeNull();
          }
          json.writeEndObject();
        });
  }

  @Override
  public void end(Summary summary) {
    write(
        () -> {
          json.writeEndArray();
          json.writeRaw('\n');
          json.writeObjectFieldStart("summary");
          json.writeArrayFieldStart("alerts");
          for (AlertSpan alert : summary.alerts()) {
            json.writeStartObject();
            json.writeStringField("id", alert.id());
            json.writeNumberField("raisedAtSeconds", seconds(alert.raisedNanos()));
            json.writeFieldName("returnedAtSeconds");
            if (alert.returnedNanos().isPresent()) {
              json.writeNumber(seconds(alert.returnedNanos().get()));
            } else {
              json.writeNull();
            }
            json.writeStringField("text", alert.text());
            json.writeEndObject();
          }
          json.writeEndArray();
          json.writeNumberField("published", summary.published());
          json.writeNumberField("logged", summary.logged());
          json.writeNumberField("restarts", summary.restarts());
          json.writeEndObject();
          json.writeEndObject();
          json.writeRaw('\n');
          json.flush();
        });
    out.flush();
  }
}
