package io.pitchwatch.coach;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AngleTextTest {

  @ParameterizedTest
  @CsvSource({
    "2.1, 1, 2.1 deg",
    "0.25, 2, 0.25 deg",
    "-0.8, 1, -0.8 deg",
    "0.04, 1, 0.0 deg",
    "-0.04, 1, 0.0 deg",
    "1.5, 0, 2 deg",
    "-1.5, 0, -2 deg",
  })
  void degreesAreRoundedAwayFromZero(double deg, int decimals, String text) {
    assertEquals(text, AngleText.of(Math.toRadians(deg), decimals));
  }

  @Test
  void whatIsNotANumberIsUnknown() {
    assertEquals("unknown", AngleText.of(Double.NaN, 1));
    assertEquals("unknown", AngleText.of(Double.POSITIVE_INFINITY, 1));
  }

  @Test
  void aNonsensicalNumberOfDecimalsIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> AngleText.of(0, -1));
    assertThrows(IllegalArgumentException.class, () -> AngleText.of(0, 7));
  }
}
