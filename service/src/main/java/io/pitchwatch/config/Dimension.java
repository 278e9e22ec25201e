package io.pitchwatch.config;

import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A kind of quantity. */
enum Dimension {
  /** In millimetres. */
  LENGTH("a length"),
  /** In kilograms. */
  MASS("a mass"),
  /** In radians. */
  ANGLE("an angle"),
  /** In seconds. */
  TIME("a time"),
  /** In degrees Celsius. */
  TEMPERATURE("a temperature");

  private final String noun;

  Dimension(String noun) {
    this.noun = noun;
  }

  /** What it is called, with its article. */
  String noun() {
    return noun;
  }

  /** The unit with the given symbol; a temperature may carry a degree sign. */
  Optional<Unit> unit(String symbol) {
    String plain = this == TEMPERATURE && symbol.startsWith("°") ? symbol.substring(1) : symbol;
    return units().filter(unit -> unit.symbol().equals(plain)).findFirst();
  }

  /** The symbols, for people. */
  String symbols() {
    return units().map(Unit::symbol).collect(Collectors.joining(", "));
  }

  private Stream<Unit> units() {
    return Stream.of(Unit.values()).filter(unit -> unit.dimension() == this);
  }
}
