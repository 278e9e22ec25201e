package io.pitchwatch.store;

import com.fasterxml.jackson.core.JsonGenerator;
import io.pitchwatch.attitude.Calibration;
import io.pitchwatch.attitude.CalibrationQuality;
import io.pitchwatch.attitude.TemperatureDrift;
import io.pitchwatch.attitude.Triad;
import java.io.IOException;
import java.util.List;

/** What was found out about a sensor at length, as the text that is kept of it. */
final class SetupText {

  private SetupText() {}

  static String of(Calibration calibration) {
    CalibrationQuality quality = calibration.quality();
    return JsonValue.write(
        json -> {
          json.writeStartObject();
          write(json, "scale", calibration.scale());
          write(json, "misalignment", calibration.misalignment());
          write(json, "bias", calibration.bias());
          write(json, "scaleError", quality.scaleError());
          write(json, "misalignmentError", quality.misalignmentError());
          write(json, "biasError", quality.biasError());
          JsonValue.number(json, "beforeG", quality.beforeG());
          JsonValue.number(json, "afterG", quality.afterG());
          json.writeNumberField("poses", quality.poses());
          json.writeStringField("date", calibration.date());
          json.writeEndObject();
        });
  }

  static Calibration calibration(JsonValue json) {
    CalibrationQuality quality =
        new CalibrationQuality(
            triad(json.get("scaleError")),
            triad(json.get("misalignmentError")),
            triad(json.get("biasError")),
            json.get("beforeG").number(),
            json.get("afterG").number(),
            Math.toIntExact(json.get("poses").whole()));
    return new Calibration(
        triad(json.get("scale")),
        triad(json.get("misalignment")),
        triad(json.get("bias")),
        quality,
        json.get("date").text());
  }

  /** The drift of a chip, what chip it was, and when it was kept. */
  record ChipDrift(String chip, TemperatureDrift drift, String date) {}

  static String of(ChipDrift of) {
    TemperatureDrift drift = of.drift();
    return JsonValue.write(
        json -> {
          json.writeStartObject();
          json.writeStringField("chip", of.chip());
          json.writeStringField("date", of.date());
          write(json, "perC", drift.perC());
          JsonValue.number(json, "errorPerC", drift.errorPerC());
          JsonValue.number(json, "lowC", drift.lowC());
          JsonValue.number(json, "highC", drift.highC());
          json.writeEndObject();
        });
  }

  static ChipDrift drift(JsonValue json) {
    return new ChipDrift(
        json.get("chip").text(),
        new TemperatureDrift(
            triad(json.get("perC")),
            json.get("errorPerC").number(),
            json.get("lowC").number(),
            json.get("highC").number()),
        // Earlier versions did not write it.
        json.find("date").map(JsonValue::text).orElse(""));
  }

  private static void write(JsonGenerator json, String name, Triad triad) throws IOException {
    json.writeArrayFieldStart(name);
    json.writeNumber(triad.x());
    json.writeNumber(triad.y());
    json.writeNumber(triad.z());
    json.writeEndArray();
  }

  private static Triad triad(JsonValue json) {
    List<JsonValue> three = json.list();
    if (three.size() != 3) {
      throw new IllegalArgumentException("found " + three.size() + " numbers; allowed are 3");
    }
    return new Triad(three.get(0).number(), three.get(1).number(), three.get(2).number());
  }
}
