package io.pitchwatch.sim.scenario;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What a quantity measures, and the units it may be written in; the first one named is the base.
 */
final class Dimension {

  static final Dimension LENGTH =
      new Dimension("m", 1, "mm", 1e-3, "cm", 1e-2, "in", 0.0254, "ft", 0.3048);
  static final Dimension MASS = new Dimension("kg", 1, "t", 1000, "lb", 0.45359237);
  static final Dimension ANGLE = new Dimension("rad", 1, "deg", Math.PI / 180);
  static final Dimension TIME =
      new Dimension(
          "s", 1, "ms", 1e-3, "min", 60, "h", 3600, "d", 86400, "days", 86400, "years", 31557600);
  static final Dimension FREQUENCY = new Dimension("Hz", 1);
  static final Dimension ACCELERATION =
      new Dimension("g", 1, "mg", 1e-3, "ug", 1e-6, "m/s2", 1 / 9.80665);
  static final Dimension NOISE = new Dimension("ug/rtHz", 1, "mg/rtHz", 1e3);
  static final Dimension BIAS = new Dimension("mg", 1, "ug", 1e-3, "g", 1e3);
  static final Dimension DRIFT = new Dimension("mg/K", 1, "ug/K", 1e-3);
  static final Dimension CLOCK = new Dimension("ppm", 1, "%", 1e4);
  static final Dimension SPEED = new Dimension("m/s", 1, "km/h", 1 / 3.6, "mph", 0.44704);
  static final Dimension PRESSURE =
      new Dimension(
          "Pa", 1, "kPa", 1e3, "MPa", 1e6, "GPa", 1e9, "psi", 6894.757293168, "psf", 47.88025898);
  static final Dimension WARMTH = new Dimension("K", 1);
  static final Dimension TEMPERATURE = new Dimension("C", 1);

  private final Map<String, Double> units = new LinkedHashMap<>();

  private Dimension(Object... unitsAndFactors) {
    for (int i = 0; i < unitsAndFactors.length; i += 2) {
      units.put((String) unitsAndFactors[i], ((Number) unitsAndFactors[i + 1]).doubleValue());
    }
  }

  /** Units of this dimension and what one of each is in the base unit. */
  Map<String, Double> units() {
    return Map.copyOf(units);
  }

  /** How a quantity is written, for messages. */
  String allowed() {
    return "a number and one of " + String.join(", ", units.keySet()) + ", in quotes";
  }
}
