package io.pitchwatch.mqtt.tree;

import com.fasterxml.jackson.core.JsonGenerator;
import io.pitchwatch.coach.Piece;
import io.pitchwatch.coach.Words;
import io.pitchwatch.levelling.Headline;
import io.pitchwatch.levelling.JackMove;
import io.pitchwatch.levelling.PadPile;
import io.pitchwatch.levelling.Plan;
import io.pitchwatch.levelling.Sides;
import io.pitchwatch.levelling.WheelStack;
import java.io.IOException;

/** A levelling plan as JSON: docs/schemas/plan.json. */
public final class PlanDocument {

  private PlanDocument() {}

  /** The document. */
  public static String of(Plan plan) {
    return Json.object(
        json -> {
          Json.lean(json, "lean", plan.site().lean());
          json.writeStringField("surface", Words.of(plan.site().surface()));
          json.writeStringField("stay", Words.of(plan.site().stay()));
          body(json, plan);
          Json.array(json, "alternatives", plan.alternatives(), PlanDocument::alternative);
          Json.cautions(json);
        });
  }

  private static void alternative(JsonGenerator json, Plan.Alternative other) throws IOException {
    json.writeStringField("without", other.without());
    body(json, other.plan());
  }

  private static void body(JsonGenerator json, Plan plan) throws IOException {
    Json.array(json, "wheels", plan.wheels().wheels(), PlanDocument::wheel);
    Json.lean(json, "afterWheels", plan.wheels().after());
    Json.array(json, "jacks", plan.jacks(), PlanDocument::jack);
    Json.lean(json, "afterJacks", plan.after());
    Json.deg(json, "twistDeg", plan.wheels().twistRad());
    Json.array(
        json,
        "pieces",
        plan.site().coach().pieces().stream()
            .filter(piece -> plan.wheels().piecesOf(piece.id()) > 0)
            .toList(),
        (out, piece) -> piece(out, piece, plan));
    json.writeStringField("verdict", plan.verdict().word());
    Json.array(
        json,
        "reasons",
        plan.reasons(),
        (out, reason) -> {
          out.writeStringField("code", reason.code());
          out.writeStringField("text", reason.text());
        });
    json.writeStringField("headline", Headline.of(plan));
  }

  private static void wheel(JsonGenerator json, WheelStack wheel) throws IOException {
    json.writeStringField("axle", wheel.axle());
    json.writeStringField("side", Words.of(wheel.side()));
    Json.mm(json, "liftMm", wheel.liftMm());
    Json.stack(json, wheel.layers(), wheel.stair());
  }

  private static void piece(JsonGenerator json, Piece piece, Plan plan) throws IOException {
    json.writeStringField("piece", piece.id());
    json.writeNumberField("used", plan.wheels().piecesOf(piece.id()));
    json.writeNumberField("of", piece.count());
  }

  private static void jack(JsonGenerator json, JackMove move) throws IOException {
    json.writeStringField("pair", move.pair());
    json.writeNumberField("order", move.order());
    Json.mm(json, "raiseMm", move.raiseMm());
    sides(json, "padMm", move.padMm());
    sides(json, "travelMm", move.travelMm());
    json.writeObjectFieldStart("pads");
    Json.array(json, "left", move.leftPads(), PlanDocument::pads);
    Json.array(json, "right", move.rightPads(), PlanDocument::pads);
    json.writeEndObject();
  }

  private static void pads(JsonGenerator json, PadPile pile) throws IOException {
    json.writeStringField("pad", pile.pad());
    json.writeNumberField("count", pile.count());
  }

  private static void sides(JsonGenerator json, String field, Sides sides) throws IOException {
    json.writeObjectFieldStart(field);
    Json.mm(json, "left", sides.left());
    Json.mm(json, "right", sides.right());
    json.writeEndObject();
  }
}
