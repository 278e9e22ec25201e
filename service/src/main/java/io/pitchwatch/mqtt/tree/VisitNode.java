package io.pitchwatch.mqtt.tree;

import io.pitchwatch.coach.Coach;
import io.pitchwatch.coach.Stay;
import io.pitchwatch.coach.Surface;
import io.pitchwatch.coach.Words;
import io.pitchwatch.mqtt.homie.Datatype;
import io.pitchwatch.mqtt.homie.Node;
import io.pitchwatch.mqtt.homie.Property;
import io.pitchwatch.visit.Laid;
import io.pitchwatch.visit.Phase;
import io.pitchwatch.visit.Report;
import io.pitchwatch.visit.SiteReport;
import io.pitchwatch.visit.SiteVisit;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.LongFunction;

/** The stay at this site: what kind, on what ground, on which pieces, and how far along. */
public final class VisitNode implements CoachNode {

  static final Property STAY =
      Property.choice("stay", "Kind of stay", Words.of(Stay.values())).taking();
  static final Property SURFACE =
      Property.choice("surface", "Ground", Words.of(Surface.values())).taking();
  static final Property LAID =
      Property.plain("laid", "What lies under the tyres", Datatype.JSON).taking();
  static final Property SITE =
      Property.plain("site", "The owner's name for this site", Datatype.STRING).taking();
  static final Property BOOK =
      Property.plain("book", "What is remembered of this site", Datatype.JSON);
  static final Property PHASE = Property.choice("phase", "Phase", Words.of(Phase.values()));
  static final Property MARK = Property.choice("mark", "Remember this spot", "now").momentary();

  private final Node node =
      new Node("visit", "Visit", List.of(STAY, SURFACE, LAID, SITE, BOOK, PHASE, MARK));
  private final Coach coach;
  private SiteReport bookOf = SiteReport.UNNAMED;
  private Value book = Value.UNKNOWN;
  private Laid laid = Laid.NOTHING;
  private String laidPayload = LaidDocument.write(Laid.NOTHING);

  /**
   * The node of the stay.
   *
   * @param coach the coach whose axles and pieces are meant
   */
  public VisitNode(Coach coach) {
    this.coach = coach;
  }

  @Override
  public Node node() {
    return node;
  }

  @Override
  public List<Reading> read(Report report, LongFunction<Instant> wall) {
    if (!report.laid().equals(laid)) {
      keep(report.laid(), LaidDocument.write(report.laid()));
    }
    return new Readings(node, report.atNanos())
        .put(STAY, Value.of(report.stay()))
        .put(SURFACE, Value.of(report.surface()))
        .put(LAID, Value.of(laidPayload))
        .put(SITE, name(report.site()))
        .put(BOOK, book(report.site()))
        .put(PHASE, Value.of(report.phase()))
        .list();
  }

  @Override
  public Ruling set(Property property, String payload, Commands commands) {
    if (property.equals(STAY)) {
      return choose(property, payload, Words.find(Stay.values(), payload), commands::stay);
    }
    if (property.equals(SURFACE)) {
      return choose(property, payload, Words.find(Surface.values(), payload), commands::surface);
    }
    if (property.equals(MARK)) {
      Optional<String> now = Optional.of(payload).filter("now"::equals);
      return choose(property, payload, now, word -> commands.mark());
    }
    return property.equals(SITE) ? name(payload, commands) : lay(payload, commands);
  }

  /** A site without a name has no value; the convention has no other word for an empty text. */
  private static Value name(SiteReport site) {
    return site.name().isEmpty() ? Value.UNKNOWN : Value.of(site.name());
  }

  private Value book(SiteReport site) {
    if (!site.equals(bookOf)) {
      bookOf = site;
      book = site.name().isEmpty() ? Value.UNKNOWN : Value.of(SiteDocument.write(site));
    }
    return book;
  }

  private static Ruling name(String payload, Commands commands) {
    // Homie 5.0, "Payload": a NUL stands for an empty text.
    String site = payload.equals("\u0000") ? "" : payload.strip();
    boolean control = site.chars().anyMatch(Character::isISOControl);
    if (control || site.length() > SiteVisit.LONGEST_SITE) {
      return new Ruling.Refused(
          "found "
              + Quoted.of(payload)
              + "; allowed is a name of up to "
              + SiteVisit.LONGEST_SITE
              + " characters on one line, or nothing");
    }
    commands.site(site);
    return new Ruling.Accepted();
  }

  private static <T> Ruling choose(
      Property property, String payload, Optional<T> chosen, Consumer<T> command) {
    if (chosen.isEmpty()) {
      return new Ruling.Refused(Quoted.noneOf(property.choices(), payload));
    }
    command.accept(chosen.get());
    return new Ruling.Accepted();
  }

  private Ruling lay(String payload, Commands commands) {
    try {
      Laid parsed = LaidDocument.parse(payload, coach);
      commands.laid(parsed);
      keep(parsed, payload);
      return new Ruling.Accepted();
    } catch (MalformedException e) {
      return new Ruling.Refused(e.getMessage());
    }
  }

  /** The accepted payload stands byte for byte for as long as the report says the same. */
  private void keep(Laid newLaid, String payload) {
    laid = newLaid;
    laidPayload = payload;
  }
}
