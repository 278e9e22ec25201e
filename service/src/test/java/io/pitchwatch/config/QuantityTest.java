package io.pitchwatch.config;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuantityTest {

  private static double value(String text, Dimension dimension) {
    return assertInstanceOf(Quantity.Known.class, Quantity.parse(text, dimension), text).value();
  }

  private static String refusal(String text, Dimension dimension) {
    return assertInstanceOf(Quantity.Wrong.class, Quantity.parse(text, dimension), text).why();
  }

  /** Dressed lumber sizes: PS 20, nominal 2x12 is 1-1/2 x 11-1/4 in, 1x8 is 3/4 x 7-1/4 in. */
  @ParameterizedTest
  @CsvSource({
    "38 mm, 38",
    "1-1/2 in, 38.1",
    "1 1/2 in, 38.1",
    "3/4 in, 19.05",
    "11-1/4 in, 285.75",
    "7-1/4 in, 184.15",
    "-1-1/2 in, -38.1",
    "0.25in, 6.35",
    "5.5 cm, 55",
    "1.83 m, 1830",
    "6 ft, 1828.8",
    "+3 mm, 3",
    "\u22125600 mm, -5600",
    "' 12 mm ', 12",
  })
  void lengthsAreExactMillimetres(String text, double mm) {
    assertEquals(mm, value(text, Dimension.LENGTH));
  }

  @ParameterizedTest
  @CsvSource({"3600 kg, 3600", "7.2 t, 7200", "9900 lb, 4490.564463", "1/2 lb, 0.226796185"})
  void massesAreExactKilograms(String text, double kg) {
    assertEquals(kg, value(text, Dimension.MASS));
  }

  @Test
  void anglesAreRadians() {
    assertEquals(Math.toRadians(0.25), value("0.25 deg", Dimension.ANGLE));
    assertEquals(Math.toRadians(0.5), value("1/2 deg", Dimension.ANGLE));
    assertEquals(0.01, value("0.01 rad", Dimension.ANGLE));
    // 100 per cent: as much up as along
    assertEquals(Math.PI / 4, value("100 %", Dimension.ANGLE), 1e-15);
  }

  @ParameterizedTest
  @CsvSource({"30 s, 30", "10 min, 600", "1.5 h, 5400", "3 days, 259200"})
  void timesAreSeconds(String text, double seconds) {
    assertEquals(seconds, value(text, Dimension.TIME));
  }

  @ParameterizedTest
  @CsvSource({"21.5 C, 21.5", "21.5 °C, 21.5", "32 F, 0", "212 °F, 100", "-40 F, -40"})
  void temperaturesAreDegreesCelsius(String text, double celsius) {
    assertEquals(celsius, value(text, Dimension.TEMPERATURE));
  }

  @Test
  void zeroHasNoSign() {
    assertEquals(0, Double.compare(0.0, value("-0 mm", Dimension.LENGTH)));
    assertEquals(0, Double.compare(0.0, value("-0 %", Dimension.ANGLE)));
  }

  @Test
  void aBareNumberIsRefused() {
    assertEquals("a number without its unit", refusal("38", Dimension.LENGTH));
    assertEquals("a number without its unit", refusal("3/4", Dimension.LENGTH));
  }

  @Test
  void aUnitOfAnotherDimensionIsRefused() {
    assertEquals("whose unit is not known", refusal("38 kg", Dimension.LENGTH));
    assertEquals("whose unit is not known", refusal("3 °", Dimension.ANGLE));
    assertEquals("whose unit is not known", refusal("38 MM", Dimension.LENGTH));
  }

  @ParameterizedTest
  @CsvSource({
    "''",
    "mm",
    "NaN mm",
    "inf mm",
    "-inf mm",
    "1e3 mm",
    "'1,5 mm'",
    "1/2/3 in",
    "1.5-1/2 in",
    "--3 mm",
    ".5 mm",
    "5. mm",
    "1- 1/2 in",
    "0x10 mm",
  })
  void whatIsNoNumberIsRefused(String text) {
    String why = refusal(text, Dimension.LENGTH);
    if (!why.equals("whose unit is not known")) {
      assertEquals("which is not a number with a unit", why);
    }
  }

  @Test
  void aFractionOverZeroIsRefused() {
    assertEquals("which divides by zero", refusal("1/0 in", Dimension.LENGTH));
    assertEquals("which divides by zero", refusal("1-1/000 in", Dimension.LENGTH));
  }

  @Test
  void aNovelIsRefused() {
    refusal("9".repeat(100_000) + " mm", Dimension.LENGTH);
    refusal("1 " + "m".repeat(100_000), Dimension.LENGTH);
  }
}
