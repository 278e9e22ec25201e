package io.pitchwatch.mqtt.tree;

import io.pitchwatch.levelling.Headline;
import io.pitchwatch.mqtt.homie.Datatype;
import io.pitchwatch.mqtt.homie.Node;
import io.pitchwatch.mqtt.homie.Property;
import io.pitchwatch.visit.Planned;
import io.pitchwatch.visit.Report;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.LongFunction;
import org.jspecify.annotations.Nullable;

/** The levelling plan: one line to act on, what to do now, and both documents. */
public final class PlanNode implements CoachNode {

  static final Property HEADLINE = Property.plain("headline", "Plan", Datatype.STRING);
  static final Property NEXT = Property.plain("next", "What to do now", Datatype.STRING);
  static final Property DOCUMENT = Property.plain("document", "The whole plan", Datatype.JSON);
  static final Property TURN = Property.plain("turn", "Other headings", Datatype.JSON);

  private final Node node =
      new Node("plan", "Levelling plan", List.of(HEADLINE, NEXT, DOCUMENT, TURN));
  private @Nullable Planned written;
  private String headline = "";
  private String document = "";
  private String turn = "";

  @Override
  public Node node() {
    return node;
  }

  @Override
  public List<Reading> read(Report report, LongFunction<Instant> wall) {
    Readings readings = new Readings(node, report.atNanos());
    Optional<Planned> planned = report.advice().planned();
    if (planned.isEmpty()) {
      return readings
          .put(HEADLINE, Value.UNKNOWN)
          .put(NEXT, next(report))
          .put(DOCUMENT, Value.UNKNOWN)
          .put(TURN, Value.UNKNOWN)
          .list();
    }
    write(planned.get());
    return readings
        .put(HEADLINE, Value.of(headline))
        .put(NEXT, next(report))
        .put(DOCUMENT, Value.of(document))
        .put(TURN, Value.of(turn))
        .list();
  }

  private static Value next(Report report) {
    String next = report.advice().next();
    return next.isEmpty() ? Value.UNKNOWN : Value.of(next);
  }

  /** Written once for each plan, not once for each report. */
  @SuppressWarnings("ReferenceEquality") // Comparing all headings five times a second is a waste.
  private void write(Planned planned) {
    if (planned != written) {
      written = planned;
      headline = Headline.of(planned.plan());
      document = PlanDocument.of(planned.plan());
      turn = TurnDocument.of(planned.headings());
    }
  }

  @Override
  public Optional<Guard> guard(Property property) {
    return Optional.of(FloorNode.KNOWN);
  }
}
