package io.pitchwatch.coach;

import static io.pitchwatch.coach.Units.IMPERIAL;
import static io.pitchwatch.coach.Units.METRIC;
import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LengthTextTest {

  @ParameterizedTest
  @CsvSource({
    "48, 48 mm",
    "47.5, 48 mm",
    "47.49, 47 mm",
    "0, 0 mm",
    "-0.4, 0 mm",
    "-12.2, -12 mm",
  })
  void metricIsWholeMillimetres(double mm, String text) {
    assertEquals(text, LengthText.of(mm, METRIC));
  }

  @ParameterizedTest
  @CsvSource({
    // 1-7/8 in = 30/16 in = 47.625 mm exactly
    "47.625, 1-7/8 in",
    "25.4, 1 in",
    "38.1, 1-1/2 in",
    "19.05, 3/4 in",
    "285.75, 11-1/4 in",
    "1.5875, 1/16 in",
    // half of a sixteenth is 0.79375 mm: below it nothing is left, from it on a sixteenth
    "0.7937, 0 in",
    "0.79375, 1/16 in",
    "25.0, 1 in",
    "-6.35, -1/4 in",
    "-0.1, 0 in",
  })
  void imperialIsTheNearestSixteenthInLowestTerms(double mm, String text) {
    assertEquals(text, LengthText.of(mm, IMPERIAL));
  }

  @Test
  void whatIsNotANumberIsUnknown() {
    assertEquals("unknown", LengthText.of(Double.NaN, METRIC));
    assertEquals("unknown", LengthText.of(Double.NEGATIVE_INFINITY, IMPERIAL));
  }
}
