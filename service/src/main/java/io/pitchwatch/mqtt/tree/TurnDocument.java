package io.pitchwatch.mqtt.tree;

import com.fasterxml.jackson.core.JsonGenerator;
import io.pitchwatch.levelling.Turning.Heading;
import io.pitchwatch.levelling.Turning.Headings;
import java.io.IOException;

/** What turning the coach would bring, as JSON: docs/schemas/turn.json. */
public final class TurnDocument {

  private TurnDocument() {}

  /** The document. */
  public static String of(Headings headings) {
    return Json.object(
        json -> {
          Json.lean(json, "lean", headings.site().lean());
          Json.deg(json, "slopeDeg", headings.slopeRad());
          Json.array(json, "headings", headings.all(), TurnDocument::heading);
          Json.array(json, "best", headings.best(), TurnDocument::advised);
          json.writeStringField("headline", headings.headline());
          Json.cautions(json);
        });
  }

  private static void heading(JsonGenerator json, Heading heading) throws IOException {
    json.writeNumberField("turnDeg", heading.turnDeg());
    Json.deg(json, "rollDeg", heading.lean().rollRad());
    Json.deg(json, "pitchDeg", heading.lean().pitchRad());
    json.writeStringField("verdict", heading.verdict().word());
    json.writeNumberField("pieces", heading.pieces());
    Json.mm(json, "raiseMm", heading.raiseMm());
  }

  private static void advised(JsonGenerator json, Heading heading) throws IOException {
    heading(json, heading);
    json.writeStringField("text", heading.text());
  }
}
