package io.pitchwatch.mqtt.homie;

import java.util.List;

/**
 * One property of a node (Homie 5.0, "Property Attributes").
 *
 * @param id topic level of the property
 * @param name for people
 * @param datatype how its payload is written
 * @param format what a payload may be; empty where the datatype says all
 * @param unit empty where it has none; the degree sign is U+00B0, on the wire C2 B0
 * @param decimals digits shown after the point, for floats
 * @param settable whether it takes commands
 * @param retained whether its last value stands; false for momentary events
 * @param leisurely whether a new value is worth saying once a minute at most
 */
public record Property(
    String id,
    String name,
    Datatype datatype,
    String format,
    String unit,
    int decimals,
    boolean settable,
    boolean retained,
    boolean leisurely) {

  /** Unit of angles. */
  public static final String DEGREE = "\u00B0";

  /**
   * Checks the id and that an enum has choices.
   *
   * @throws IllegalArgumentException if the id is malformed or an enum has no choices
   */
  public Property {
    Ids.require("property id", id);
    if (datatype == Datatype.ENUM && format.isEmpty()) {
      throw new IllegalArgumentException("enum " + id + " has no choices");
    }
  }

  /** A number shown to so many decimals. */
  public static Property number(String id, String name, String unit, int decimals) {
    return new Property(id, name, Datatype.FLOAT, "", unit, decimals, false, true, false);
  }

  /** One of the given words. */
  public static Property choice(String id, String name, String... words) {
    return new Property(
        id, name, Datatype.ENUM, String.join(",", words), "", 0, false, true, false);
  }

  /** Anything that needs no more than its datatype. */
  public static Property plain(String id, String name, Datatype datatype) {
    return new Property(id, name, datatype, "", "", 0, false, true, false);
  }

  /** The same, with a format. */
  public Property withFormat(String newFormat) {
    return new Property(
        id, name, datatype, newFormat, unit, decimals, settable, retained, leisurely);
  }

  /** The same, taking commands. */
  public Property taking() {
    return new Property(id, name, datatype, format, unit, decimals, true, retained, leisurely);
  }

  /** The same, taking commands that leave no value behind. */
  public Property momentary() {
    return new Property(id, name, datatype, format, unit, decimals, true, false, leisurely);
  }

  /** The same, said once a minute at most: an estimate that is itself restless. */
  public Property unhurried() {
    return new Property(id, name, datatype, format, unit, decimals, settable, retained, true);
  }

  /** The words of an enum, in order; empty for other datatypes. */
  public List<String> choices() {
    return datatype == Datatype.ENUM ? List.of(format.split(",")) : List.of();
  }
}
