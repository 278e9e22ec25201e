package io.pitchwatch.mqtt.tree;

import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The fields of one object in a document, each asked for by name and kind.
 *
 * @param where the object's place, for messages
 * @param values by name
 */
record Fields(String where, Map<String, Object> values) {

  /** Refuses every field but these. */
  Fields only(Set<String> allowed) throws MalformedException {
    for (String name : values.keySet()) {
      if (!allowed.contains(name)) {
        throw new MalformedException(
            where + " has " + Quoted.of(name) + "; allowed are " + String.join(", ", allowed));
      }
    }
    return this;
  }

  String text(String name) throws MalformedException {
    if (values.get(name) instanceof String text) {
      return text;
    }
    throw missing(name, "text");
  }

  double number(String name, double least, double most) throws MalformedException {
    if (values.get(name) instanceof Double number && number >= least && number <= most) {
      return number;
    }
    throw missing(name, "a number from " + plain(least) + " to " + plain(most));
  }

  List<?> list(String name) throws MalformedException {
    if (values.get(name) instanceof List<?> list) {
      return list;
    }
    throw missing(name, "a list");
  }

  boolean has(String name) {
    return values.containsKey(name);
  }

  /** The object that an element of a list should be. */
  static Fields of(String where, Object element) throws MalformedException {
    if (element instanceof Map<?, ?> map) {
      @SuppressWarnings("unchecked") // StrictJson makes no other maps
      Map<String, Object> values = (Map<String, Object>) map;
      return new Fields(where, values);
    }
    throw new MalformedException(where + " must be an object");
  }

  MalformedException missing(String name, String allowed) {
    Object found = values.get(name);
    return new MalformedException(
        where
            + "."
            + name
            + " is "
            + (found == null ? "missing" : Quoted.of(plain(found)))
            + "; it must be "
            + allowed);
  }

  private static String plain(Object found) {
    return found instanceof Double number ? plain(number.doubleValue()) : found.toString();
  }

  private static String plain(double number) {
    return number == Math.rint(number) ? Long.toString((long) number) : Double.toString(number);
  }
}
