package io.pitchwatch.mqtt.tree;

import io.pitchwatch.mqtt.homie.Node;
import io.pitchwatch.mqtt.homie.Property;
import io.pitchwatch.visit.Report;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.LongFunction;

/** One node of the tree: what it is, what it says of a report, what it takes. */
public interface CoachNode {

  /** Its properties, for the description. */
  Node node();

  /**
   * What each retained property says.
   *
   * @param report all that is known
   * @param wall the wall time of a monotonic instant, for labels
   */
  List<Reading> read(Report report, LongFunction<Instant> wall);

  /**
   * Takes a command.
   *
   * @param property a settable one of this node
   * @param payload well-formed text of bounded length, otherwise unchecked
   * @param commands where to hand it on
   */
  default Ruling set(Property property, String payload, Commands commands) {
    return new Ruling.Refused(property.id() + " takes no commands");
  }

  /**
   * On what the value of a property rests, for those who show it.
   *
   * @param property a retained one of this node
   */
  default Optional<Guard> guard(Property property) {
    return Optional.empty();
  }

  /**
   * The word of a boolean that says that something is wrong.
   *
   * @param property a boolean of this node
   */
  default String wrong(Property property) {
    return "false";
  }

  /** Whether this node tells of the equipment rather than of the coach. */
  default boolean isDiagnostic() {
    return false;
  }
}
