package io.pitchwatch.command;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import io.pitchwatch.coach.Coach;
import io.pitchwatch.coach.Fridge;
import io.pitchwatch.coach.Stay;
import io.pitchwatch.coach.Words;
import io.pitchwatch.comfort.FridgeLimits;
import io.pitchwatch.settling.GroundReport;
import io.pitchwatch.settling.HoursToLimit;
import io.pitchwatch.store.HistoryRow;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** A page of history as one document (docs/schemas/history.json). */
final class HistoryDocument {

  /** The columns of a row, in order. */
  static final List<String> COLUMNS =
      List.of(
          "time",
          "roll",
          "rollLeast",
          "rollMost",
          "pitch",
          "pitchLeast",
          "pitchMost",
          "uncertainty",
          "spread",
          "temperature",
          "minutes",
          "known",
          "marks");

  private static final int ANGLE_DECIMALS = 4;
  private static final int TEMPERATURE_DECIMALS = 2;

  private final JsonGenerator json;

  private HistoryDocument(JsonGenerator json) {
    this.json = json;
  }

  /**
   * What the rows are to be seen against.
   *
   * @param coach whose limits; empty where only a store is known
   * @param now the wall clock, a label
   * @param outlook the stay and the ground now; empty where no service was asked
   */
  record About(Optional<Coach> coach, Instant now, Optional<Outlook> outlook) {}

  /**
   * The stay and the ground now.
   *
   * @param stay kind of stay
   * @param ground what is known of it
   */
  record Outlook(Stay stay, GroundReport ground) {}

  /** The document, UTF-8 JSON. */
  static byte[] of(HistoryPage page, About about) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 16);
    try (JsonGenerator json = new JsonFactory().createGenerator(bytes)) {
      new HistoryDocument(json).write(page, about);
    } catch (IOException e) {
      throw new UncheckedIOException("writing to memory failed", e);
    }
    return bytes.toByteArray();
  }

  private void write(HistoryPage page, About about) throws IOException {
    json.writeStartObject();
    if (about.coach().isPresent()) {
      json.writeStringField("coach", about.coach().get().id());
    } else {
      json.writeNullField("coach");
    }
    json.writeNumberField("now", about.now().getEpochSecond());
    json.writeStringField("step", Words.of(page.resolution()));
    json.writeBooleanField("truncated", page.truncated());
    if (page.trouble().isPresent()) {
      json.writeStringField("trouble", page.trouble().get());
    }
    writeLimits(about);
    writeForecast(about.outlook().map(Outlook::ground).orElse(GroundReport.UNKNOWN));
    json.writeArrayFieldStart("columns");
    for (String column : COLUMNS) {
      json.writeString(column);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("rows");
    for (HistoryPage.Entry entry : page.entries()) {
      writeRow(entry);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("events");
    for (HistoryPage.Event each : page.events()) {
      json.writeStartObject();
      json.writeNumberField("time", each.wallSeconds());
      json.writeStringField("kind", each.event().kind());
      json.writeStringField("name", each.event().name());
      json.writeStringField("text", each.event().text());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void writeLimits(About about) throws IOException {
    json.writeObjectFieldStart("limits");
    if (about.coach().isPresent()) {
      Coach coach = about.coach().get();
      json.writeFieldName("tolerance");
      write(
          about
              .outlook()
              .map(outlook -> Math.toDegrees(coach.levelling().toleranceRad(outlook.stay())))
              .orElse(Double.NaN),
          ANGLE_DECIMALS);
      json.writeArrayFieldStart("fridges");
      for (Fridge fridge : coach.fridges()) {
        json.writeStartObject();
        json.writeStringField("id", fridge.id());
        degrees("roll", FridgeLimits.rollLimitRad(fridge));
        degrees("pitch", FridgeLimits.pitchLimitRad(fridge));
        json.writeEndObject();
      }
      json.writeEndArray();
    }
    json.writeEndObject();
  }

  private void writeForecast(GroundReport ground) throws IOException {
    HoursToLimit toLimit = ground.toLimit();
    json.writeObjectFieldStart("forecast");
    json.writeBooleanField("settling", ground.settling());
    writeTrend("roll", ground.roll());
    writeTrend("pitch", ground.pitch());
    if (toLimit.isForeseen()) {
      json.writeObjectFieldStart("toLimit");
      json.writeStringField("limit", toLimit.limit());
      json.writeFieldName("hours");
      write(toLimit.hours(), TEMPERATURE_DECIMALS);
      json.writeFieldName("soonestHours");
      write(toLimit.soonestHours(), TEMPERATURE_DECIMALS);
      json.writeFieldName("latestHours");
      write(toLimit.latestHours(), TEMPERATURE_DECIMALS);
      json.writeEndObject();
    } else {
      json.writeNullField("toLimit");
    }
    json.writeEndObject();
  }

  private void writeTrend(String name, GroundReport.Trend trend) throws IOException {
    json.writeObjectFieldStart(name);
    degrees("ratePerHour", trend.rateRadPerHour());
    degrees("rateError", trend.errorRadPerHour());
    degrees("sunk", trend.sunkRad());
    json.writeEndObject();
  }

  private void writeRow(HistoryPage.Entry entry) throws IOException {
    json.writeStartArray();
    json.writeNumber(entry.wallSeconds());
    if (entry.row().isPresent()) {
      HistoryRow row = entry.row().get();
      writeAngle(row.roll());
      writeAngle(row.pitch());
      write(Math.toDegrees(row.uncertaintyRad()), ANGLE_DECIMALS);
      write(Math.toDegrees(row.spreadRad()), ANGLE_DECIMALS);
      write(row.temperatureC(), TEMPERATURE_DECIMALS);
      json.writeNumber(row.minutes());
      json.writeNumber(row.known());
      json.writeString(marks(row));
    } else {
      for (int i = 1; i < COLUMNS.size(); i++) {
        json.writeNull();
      }
    }
    json.writeEndArray();
  }

  /** The marks of a row, in words. */
  static String marks(HistoryRow row) {
    return row.marks().stream().sorted().map(Words::of).collect(Collectors.joining(" "));
  }

  private void writeAngle(HistoryRow.Angle angle) throws IOException {
    write(Math.toDegrees(angle.meanRad()), ANGLE_DECIMALS);
    write(Math.toDegrees(angle.leastRad()), ANGLE_DECIMALS);
    write(Math.toDegrees(angle.mostRad()), ANGLE_DECIMALS);
  }

  private void degrees(String name, double rad) throws IOException {
    json.writeFieldName(name);
    write(Math.toDegrees(rad), ANGLE_DECIMALS);
  }

  private void write(double value, int decimals) throws IOException {
    if (Double.isFinite(value)) {
      json.writeNumber(plain(value, decimals));
    } else {
      json.writeNull();
    }
  }

  /** The number with so many decimals at most, never with an exponent. */
  static String plain(double value, int decimals) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_EVEN);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
