package io.pitchwatch.mqtt.tree;

import com.fasterxml.jackson.core.JsonGenerator;
import io.pitchwatch.attitude.Lean;
import io.pitchwatch.coach.Words;
import io.pitchwatch.visit.SiteReport;
import io.pitchwatch.visit.SiteVisit;
import java.io.IOException;
import java.time.Instant;
import java.util.List;

/** What is remembered of a site as a document (docs/schemas/book.json). */
public final class SiteDocument {

  /** Earlier visits in one document; more would tell nobody more. */
  static final int MOST_VISITS = 10;

  private static final int DECIMALS = 2;

  private SiteDocument() {}

  /** The document of the site where the coach stands. */
  static String write(SiteReport site) {
    int most = Math.min(MOST_VISITS, site.before().size());
    return write(site.name(), site.before().subList(0, most));
  }

  /**
   * The document of a site.
   *
   * @param name the owner's
   * @param visits the latest first
   */
  public static String write(String name, List<SiteVisit> visits) {
    return Json.object(
        json -> {
          json.writeStringField("site", name);
          Json.array(json, "visits", visits, SiteDocument::write);
        });
  }

  private static void write(JsonGenerator json, SiteVisit visit) throws IOException {
    json.writeStringField("begun", Instant.ofEpochSecond(visit.begunWallSeconds()).toString());
    json.writeFieldName("ended");
    if (visit.endedWallSeconds() == 0) {
      json.writeNull();
    } else {
      json.writeString(Instant.ofEpochSecond(visit.endedWallSeconds()).toString());
    }
    json.writeStringField("stay", Words.of(visit.stay()));
    json.writeStringField("surface", Words.of(visit.surface()));
    write(json, "found", visit.found());
    write(json, "levelled", visit.levelled());
    write(json, "settled", visit.settled());
    json.writeStringField("laid", visit.laid());
    json.writeStringField("plan", visit.plan());
  }

  private static void write(JsonGenerator json, String name, Lean lean) throws IOException {
    json.writeFieldName(name);
    if (!lean.isKnown()) {
      json.writeNull();
      return;
    }
    json.writeStartObject();
    json.writeNumberField("rollDeg", Decimals.rounded(lean.rollDeg(), DECIMALS));
    json.writeNumberField("pitchDeg", Decimals.rounded(lean.pitchDeg(), DECIMALS));
    json.writeEndObject();
  }
}
