package io.pitchwatch.config;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A quantity as the file writes it: "38 mm", "1-1/2 in", "0.25 deg". */
sealed interface Quantity {

  /** Sign; then a decimal number, or a fraction with or without a whole number; then the unit. */
  Pattern FORM =
      Pattern.compile(
          "(?<sign>[-+\u2212]?)"
              + "(?:(?:(?<whole>\\d{1,9})[- ])?(?<top>\\d{1,9})/(?<bottom>\\d{1,9})"
              + "|(?<decimal>\\d{1,15}(?:\\.\\d{1,15})?))"
              + " *(?<unit>.*)");

  /**
   * Understood.
   *
   * @param value in the dimension's own unit; never −0, NaN or infinite
   */
  record Known(double value) implements Quantity {}

  /**
   * Not understood.
   *
   * @param why a few words that follow what was found
   */
  record Wrong(String why) implements Quantity {}

  /** Reads a quantity of the given dimension; conversions are exact before rounding to a double. */
  static Quantity parse(String text, Dimension dimension) {
    Matcher form = FORM.matcher(text.strip());
    if (text.length() > 64 || !form.matches()) {
      return new Wrong("which is not a number with a unit");
    }
    String symbol = form.group("unit");
    Optional<Unit> unit = dimension.unit(symbol);
    if (unit.isEmpty()) {
      return new Wrong(symbol.isEmpty() ? "a number without its unit" : "whose unit is not known");
    }
    if (form.group("bottom") != null && new BigDecimal(form.group("bottom")).signum() == 0) {
      return new Wrong("which divides by zero");
    }
    BigDecimal size = number(form);
    BigDecimal signed = form.group("sign").matches("[-\u2212]") ? size.negate() : size;
    return new Known(unit.get().toBase(signed) + 0.0);
  }

  private static BigDecimal number(Matcher form) {
    String decimal = form.group("decimal");
    if (decimal != null) {
      return new BigDecimal(decimal);
    }
    String whole = form.group("whole");
    BigDecimal fraction =
        new BigDecimal(form.group("top"))
            .divide(new BigDecimal(form.group("bottom")), MathContext.DECIMAL128);
    return whole == null ? fraction : fraction.add(new BigDecimal(whole));
  }
}
