package io.pitchwatch.mqtt.tree;

import io.pitchwatch.mqtt.homie.Datatype;
import io.pitchwatch.mqtt.homie.Ids;
import io.pitchwatch.mqtt.homie.Node;
import io.pitchwatch.mqtt.homie.Property;
import io.pitchwatch.visit.Report;
import java.time.Instant;
import java.util.List;
import java.util.function.LongFunction;

/** Commands that leave no value behind: zero, acknowledge, shelve. */
public final class UpkeepNode implements CoachNode {

  static final Property ZERO =
      Property.choice("zero", "Take this floor for level", "now").momentary();
  static final Property ACKNOWLEDGE =
      Property.plain("acknowledge", "Acknowledge an alert", Datatype.STRING).momentary();
  static final Property SHELVE =
      Property.plain("shelve", "Keep an alert quiet for a while", Datatype.JSON).momentary();

  private final Node node = new Node("upkeep", "Upkeep", List.of(ZERO, ACKNOWLEDGE, SHELVE));

  @Override
  public Node node() {
    return node;
  }

  @Override
  public List<Reading> read(Report report, LongFunction<Instant> wall) {
    return List.of();
  }

  @Override
  public Ruling set(Property property, String payload, Commands commands) {
    if (property.equals(ZERO)) {
      return zero(payload, commands);
    }
    return property.equals(ACKNOWLEDGE)
        ? acknowledge(payload, commands)
        : shelve(payload, commands);
  }

  private static Ruling zero(String payload, Commands commands) {
    if (!payload.equals("now")) {
      return new Ruling.Refused("found " + Quoted.of(payload) + "; allowed is now");
    }
    commands.zero();
    return new Ruling.Accepted();
  }

  private static Ruling acknowledge(String payload, Commands commands) {
    if (!Ids.isWellFormed(payload)) {
      return new Ruling.Refused(
          "found " + Quoted.of(payload) + "; allowed is the id of an alert, or all");
    }
    commands.acknowledge(payload);
    return new Ruling.Accepted();
  }

  private static Ruling shelve(String payload, Commands commands) {
    try {
      ShelveDocument shelve = ShelveDocument.parse(payload);
      commands.shelve(shelve.alert(), shelve.minutes());
      return new Ruling.Accepted();
    } catch (MalformedException e) {
      return new Ruling.Refused(e.getMessage());
    }
  }
}
