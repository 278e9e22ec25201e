package io.pitchwatch.config;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * A unit that the file may use. The inch and the pound are exact (international yard and pound
 * agreement of 1959).
 */
enum Unit {
  MILLIMETRE(Dimension.LENGTH, "mm", "1"),
  CENTIMETRE(Dimension.LENGTH, "cm", "10"),
  METRE(Dimension.LENGTH, "m", "1000"),
  INCH(Dimension.LENGTH, "in", "25.4"),
  FOOT(Dimension.LENGTH, "ft", "304.8"),
  KILOGRAM(Dimension.MASS, "kg", "1"),
  TONNE(Dimension.MASS, "t", "1000"),
  POUND(Dimension.MASS, "lb", "0.45359237"),
  DEGREE(Dimension.ANGLE, "deg", "1"),
  RADIAN(Dimension.ANGLE, "rad", "1"),
  /** Rise over run. */
  PER_CENT(Dimension.ANGLE, "%", "0.01"),
  SECOND(Dimension.TIME, "s", "1"),
  MINUTE(Dimension.TIME, "min", "60"),
  HOUR(Dimension.TIME, "h", "3600"),
  DAYS(Dimension.TIME, "days", "86400"),
  CELSIUS(Dimension.TEMPERATURE, "C", "1"),
  FAHRENHEIT(Dimension.TEMPERATURE, "F", "1");

  private static final BigDecimal FREEZING_F = BigDecimal.valueOf(32);

  private final Dimension dimension;
  private final String symbol;
  private final BigDecimal factor;

  Unit(Dimension dimension, String symbol, String factor) {
    this.dimension = dimension;
    this.symbol = symbol;
    this.factor = new BigDecimal(factor);
  }

  Dimension dimension() {
    return dimension;
  }

  /** As it is written. */
  String symbol() {
    return symbol;
  }

  /** From this unit to the dimension's own, exact before it is rounded to a double. */
  double toBase(BigDecimal value) {
    BigDecimal scaled = value.multiply(factor);
    return switch (this) {
      case DEGREE -> Math.toRadians(scaled.doubleValue());
      case PER_CENT -> Math.atan(scaled.doubleValue());
      case FAHRENHEIT ->
          scaled
              .subtract(FREEZING_F)
              .multiply(BigDecimal.valueOf(5))
              .divide(BigDecimal.valueOf(9), MathContext.DECIMAL128)
              .doubleValue();
      default -> scaled.doubleValue();
    };
  }
}
