package io.pitchwatch.sim.scenario;

import java.util.Locale;
import java.util.Map;
import java.util.StringJoiner;

/**
 * Something that happens around the service rather than to the coach: the rehearsal asks for these
 * and brings them about.
 *
 * @param atS when, seconds of scenario time
 * @param does which kind
 * @param parameters of it, numbers in base units
 */
public record Due(double atS, String does, Map<String, String> parameters) {

  /** Copies the map, keeping its order. */
  public Due {
    parameters = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(parameters));
  }

  /** One line: {@code at=90.000 does=broker-down lasts=600.000}. */
  @Override
  public String toString() {
    StringJoiner line = new StringJoiner(" ");
    line.add(String.format(Locale.ROOT, "at=%.3f", atS)).add("does=" + does);
    parameters.forEach((key, value) -> line.add(key + "=" + value));
    return line.toString();
  }
}
