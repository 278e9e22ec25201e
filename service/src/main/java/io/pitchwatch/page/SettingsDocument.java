package io.pitchwatch.page;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import io.pitchwatch.coach.Axle;
import io.pitchwatch.coach.Coach;
import io.pitchwatch.coach.Direction;
import io.pitchwatch.coach.Door;
import io.pitchwatch.coach.Fridge;
import io.pitchwatch.coach.JackPair;
import io.pitchwatch.coach.Levelling;
import io.pitchwatch.coach.Pad;
import io.pitchwatch.coach.Piece;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Locale;

/**
 * {@code settings.json}: where the page finds the tree, and the coach's figures. Lengths in
 * millimetres, angles in degrees. No credentials.
 */
final class SettingsDocument {

  private final JsonGenerator json;

  private SettingsDocument(JsonGenerator json) {
    this.json = json;
  }

  static byte[] of(PageSettings settings) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (JsonGenerator json = new JsonFactory().createGenerator(bytes)) {
      new SettingsDocument(json).write(settings);
    } catch (IOException e) {
      throw new UncheckedIOException("writing settings.json in memory failed", e);
    }
    return bytes.toByteArray();
  }

  private void write(PageSettings settings) throws IOException {
    Coach coach = settings.coach();
    json.writeStartObject();
    json.writeStringField("coach", coach.id());
    json.writeStringField("tree", settings.tree());
    json.writeBooleanField("signIn", settings.signIn());
    writeBroker(settings.broker());
    json.writeStringField("units", word(coach.units()));
    writeAxles(coach);
    writeJackPairs(coach);
    writePieces(coach);
    writePads(coach);
    writeTolerances(coach.levelling());
    writeFridges(coach);
    writeDoors(coach);
    json.writeEndObject();
  }

  private void writeBroker(BrokerAddress broker) throws IOException {
    json.writeObjectFieldStart("broker");
    if (broker instanceof BrokerAddress.SameHost here) {
      json.writeNumberField("port", here.port());
      json.writeStringField("path", here.path());
    } else if (broker instanceof BrokerAddress.At there) {
      json.writeStringField("url", there.uri().toString());
    }
    json.writeEndObject();
  }

  private void writeAxles(Coach coach) throws IOException {
    json.writeArrayFieldStart("axles");
    for (Axle axle : coach.axles()) {
      json.writeStartObject();
      json.writeStringField("id", axle.id());
      json.writeNumberField("positionMm", axle.positionMm());
      json.writeNumberField("trackMm", axle.trackMm());
      json.writeNumberField("footprintMm", axle.footprintMm());
      json.writeBooleanField("twin", axle.twin());
      json.writeBooleanField("parkingBrake", axle.parkingBrake());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void writeJackPairs(Coach coach) throws IOException {
    json.writeArrayFieldStart("jackPairs");
    for (JackPair pair : coach.jackPairs()) {
      json.writeStartObject();
      json.writeStringField("id", pair.id());
      json.writeNumberField("positionMm", pair.positionMm());
      json.writeNumberField("spacingMm", pair.spacingMm());
      json.writeNumberField("strokeMm", pair.strokeMm());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void writePieces(Coach coach) throws IOException {
    json.writeArrayFieldStart("pieces");
    for (Piece piece : coach.pieces()) {
      json.writeStartObject();
      json.writeStringField("id", piece.id());
      json.writeStringField("kind", word(piece.kind()));
      json.writeNumberField("thicknessMm", piece.thicknessMm());
      json.writeNumberField("lengthMm", piece.lengthMm());
      json.writeNumberField("widthMm", piece.widthMm());
      json.writeNumberField("count", piece.count());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void writePads(Coach coach) throws IOException {
    json.writeArrayFieldStart("pads");
    for (Pad pad : coach.pads()) {
      json.writeStartObject();
      json.writeStringField("id", pad.id());
      json.writeNumberField("thicknessMm", pad.thicknessMm());
      json.writeNumberField("count", pad.count());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void writeTolerances(Levelling levelling) throws IOException {
    json.writeObjectFieldStart("toleranceDeg");
    writeDegrees("overnight", levelling.overnightRad());
    writeDegrees("stay", levelling.stayRad());
    writeDegrees("season", levelling.seasonRad());
    json.writeEndObject();
  }

  private void writeFridges(Coach coach) throws IOException {
    json.writeArrayFieldStart("fridges");
    for (Fridge fridge : coach.fridges()) {
      json.writeStartObject();
      json.writeStringField("id", fridge.id());
      writeDegrees("sideToSideDeg", fridge.sideToSideRad());
      writeDegrees("frontToBackDeg", fridge.frontToBackRad());
      json.writeStringField(
          "faces",
          fridge.faces().map(Direction::name).map(SettingsDocument::lower).orElse("coach"));
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void writeDoors(Coach coach) throws IOException {
    json.writeArrayFieldStart("doors");
    for (Door door : coach.doors()) {
      json.writeStartObject();
      json.writeStringField("id", door.id());
      json.writeStringField("shutTowards", word(door.shutTowards()));
      json.writeStringField("opensTowards", word(door.opensTowards()));
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  /** Degrees to a ten-thousandth, so that 0.25 deg does not come back as 0.250000000001. */
  private void writeDegrees(String name, double radians) throws IOException {
    json.writeNumberField(name, Math.round(Math.toDegrees(radians) * 1e4) / 1e4);
  }

  private static String word(Enum<?> value) {
    return lower(value.name());
  }

  private static String lower(String name) {
    return name.toLowerCase(Locale.ROOT);
  }
}
