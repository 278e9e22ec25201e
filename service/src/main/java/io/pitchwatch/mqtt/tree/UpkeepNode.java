package io.pitchwatch.mqtt.tree;

import io.pitchwatch.mqtt.homie.Datatype;
import io.pitchwatch.mqtt.homie.Ids;
import io.pitchwatch.mqtt.homie.Node;
import io.pitchwatch.mqtt.homie.Property;
import io.pitchwatch.visit.Care;
import io.pitchwatch.visit.Report;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.LongFunction;

/** Looking after sensors and alerts: commands that leave no value behind, and the guide. */
public final class UpkeepNode implements CoachNode {

  static final Property ZERO =
      Property.choice("zero", "Take this floor for level", "now").momentary();
  static final Property ACKNOWLEDGE =
      Property.plain("acknowledge", "Acknowledge an alert", Datatype.STRING).momentary();
  static final Property SHELVE =
      Property.plain("shelve", "Keep an alert quiet for a while", Datatype.JSON).momentary();

  static final Property REVERSAL =
      Property.choice("reversal", "Zero by turning the coach round", "first", "second", "cancel")
          .momentary();
  static final Property ALIGN =
      Property.choice(
              "align", "Heading of the sensor's board", "before", "front-up", "rear-up", "cancel")
          .momentary();
  static final Property GUIDE =
      Property.plain("guide", "What to do next with the sensors", Datatype.JSON);

  private final List<String> sensors;
  private final Property undo;
  private final Property calibrate;
  private final Property drift;
  private final Node node;

  /**
   * The node.
   *
   * @param sensors their names, in the order of the config; with more than one, what can be done to
   *     one alone is also said with its name behind a hyphen
   */
  public UpkeepNode(List<String> sensors) {
    this.sensors = sensors.size() > 1 ? List.copyOf(sensors) : List.of();
    undo = named("undo", "Go back to before the last zero, heading or calibration", "now");
    calibrate = named("calibrate", "Calibrate a sensor in the hand", "start", "accept", "cancel");
    drift = named("drift", "What was learnt of drift with temperature", "forget");
    node =
        new Node(
            "upkeep",
            "Upkeep",
            List.of(ZERO, undo, REVERSAL, ALIGN, calibrate, drift, GUIDE, ACKNOWLEDGE, SHELVE));
  }

  /** The first word of the choices may name a sensor. */
  private Property named(String id, String name, String... words) {
    List<String> choices = new ArrayList<>(List.of(words));
    sensors.forEach(sensor -> choices.add(words[0] + "-" + sensor));
    return Property.choice(id, name, choices.toArray(String[]::new)).momentary();
  }

  @Override
  public Node node() {
    return node;
  }

  @Override
  public List<Reading> read(Report report, LongFunction<Instant> wall) {
    return new Readings(node, report.atNanos())
        .put(GUIDE, Value.of(GuideDocument.write(report.installation().guide())))
        .list();
  }

  @Override
  public Ruling set(Property property, String payload, Commands commands) {
    if (property.equals(ZERO)) {
      return zero(payload, commands);
    }
    if (property.equals(ACKNOWLEDGE)) {
      return acknowledge(payload, commands);
    }
    return property.equals(SHELVE) ? shelve(payload, commands) : care(property, payload, commands);
  }

  private static Ruling zero(String payload, Commands commands) {
    if (!payload.equals("now")) {
      return new Ruling.Refused(Quoted.noneOf(ZERO.choices(), payload));
    }
    commands.zero();
    return new Ruling.Accepted();
  }

  private Ruling care(Property property, String payload, Commands commands) {
    if (!property.choices().contains(payload)) {
      return new Ruling.Refused(Quoted.noneOf(property.choices(), payload));
    }
    String first = property.choices().get(0);
    boolean ofOne = named(property) && payload.startsWith(first + "-");
    String word = ofOne ? first : payload;
    String step = property.equals(undo) ? property.id() : property.id() + "_" + word;
    commands.care(
        Care.valueOf(step.replace('-', '_').toUpperCase(Locale.ROOT)),
        ofOne ? Optional.of(payload.substring(first.length() + 1)) : Optional.empty());
    return new Ruling.Accepted();
  }

  private boolean named(Property property) {
    return property.equals(undo) || property.equals(calibrate) || property.equals(drift);
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
