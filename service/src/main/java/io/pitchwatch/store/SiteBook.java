package io.pitchwatch.store;

import io.pitchwatch.coach.Stay;
import io.pitchwatch.coach.Surface;
import io.pitchwatch.visit.SiteVisit;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The visits to sites, to be remembered when the coach comes again. Not thread-safe. */
public final class SiteBook {

  /** How many visits are kept; the oldest are forgotten. */
  public static final int MOST_VISITS = 1000;

  static final String TOPIC = "site-visit";

  /** As books have called it from the first. */
  private static final String LAID = "plan";

  /** Not in books of before there was one. */
  private static final String PLAN = "headline";

  private final KeptFile file;

  SiteBook(KeptFile file) {
    this.file = file;
  }

  /** The number for a new visit. */
  public long nextNumber() {
    Map.Entry<String, String> last = file.all(TOPIC).lastEntry();
    return last == null ? 1 : Long.parseLong(last.getKey()) + 1;
  }

  /** Keeps a visit in place of what was kept under its number. */
  public Written keep(SiteVisit visit) {
    String name = name(visit.number());
    if (file.all(TOPIC).size() >= MOST_VISITS && !file.all(TOPIC).containsKey(name)) {
      file.unset(TOPIC, file.all(TOPIC).firstKey());
    }
    return file.put(TOPIC, name, text(visit));
  }

  /** Forgets a visit. */
  public Written forget(long number) {
    return file.remove(TOPIC, name(number));
  }

  /** All visits that can be read, in their order. */
  public List<SiteVisit> visits() {
    return file.all(TOPIC).values().stream()
        .map(text -> Kept.decoded(text, SiteBook::visit))
        .flatMap(Optional::stream)
        .toList();
  }

  /** The visits to one site in their order; its name in any case, blanks around it ignored. */
  public List<SiteVisit> visitsTo(String site) {
    return visits().stream().filter(visit -> folded(visit.site()).equals(folded(site))).toList();
  }

  private static String folded(String site) {
    return site.strip().toLowerCase(Locale.ROOT);
  }

  /** Names sort as numbers do. */
  private static String name(long number) {
    return String.format(Locale.ROOT, "%010d", number);
  }

  private static String text(SiteVisit visit) {
    return JsonValue.write(
        json -> {
          json.writeStartObject();
          json.writeNumberField("number", visit.number());
          json.writeStringField("site", visit.site());
          json.writeNumberField("begun", visit.begunWallSeconds());
          json.writeNumberField("ended", visit.endedWallSeconds());
          json.writeStringField("stay", visit.stay().name());
          json.writeStringField("surface", visit.surface().name());
          KeptText.write(json, "found", visit.found());
          KeptText.write(json, "levelled", visit.levelled());
          KeptText.write(json, "settled", visit.settled());
          json.writeStringField(LAID, visit.laid());
          json.writeStringField(PLAN, visit.plan());
          json.writeEndObject();
        });
  }

  private static SiteVisit visit(JsonValue json) {
    return new SiteVisit(
        json.get("number").whole(),
        json.get("site").text(),
        json.get("begun").whole(),
        json.get("ended").whole(),
        json.get("stay").constant(Stay.class),
        json.get("surface").constant(Surface.class),
        KeptText.lean(json.get("found")),
        KeptText.lean(json.get("levelled")),
        KeptText.lean(json.get("settled")),
        json.get(LAID).text(),
        json.find(PLAN).map(JsonValue::text).orElse(""));
  }
}
