package io.pitchwatch.sim.scenario;

import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Quantities as people write them: "38 mm", "1-1/2 in", "-0.8 deg". */
final class Quantity {

  private static final Pattern FORM =
      Pattern.compile(
          "([+-]?)(?:(\\d+)-)?(?:(\\d+)/(\\d+)|(\\d+(?:\\.\\d+)?(?:[eE][+-]?\\d+)?))\\s*(\\S+)");

  private Quantity() {}

  /**
   * The value in the dimension's base unit.
   *
   * @return empty if the text is not a number and one of the dimension's units
   */
  static OptionalDouble parse(String text, Dimension dimension) {
    Matcher matcher = FORM.matcher(text.strip());
    if (!matcher.matches()) {
      return OptionalDouble.empty();
    }
    Double factor = dimension.units().get(matcher.group(6));
    if (factor == null) {
      return OptionalDouble.empty();
    }
    double whole = matcher.group(2) == null ? 0 : Double.parseDouble(matcher.group(2));
    double part;
    if (matcher.group(3) != null) {
      part = Double.parseDouble(matcher.group(3)) / Double.parseDouble(matcher.group(4));
    } else if (matcher.group(2) != null) {
      return OptionalDouble.empty();
    } else {
      part = Double.parseDouble(matcher.group(5));
    }
    double value = (whole + part) * factor;
    if (!Double.isFinite(value)) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(matcher.group(1).equals("-") ? -value : value);
  }
}
