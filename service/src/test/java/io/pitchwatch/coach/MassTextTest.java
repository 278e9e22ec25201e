package io.pitchwatch.coach;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class MassTextTest {

  @Test
  void massesAreWholeKilogramsOrPounds() {
    assertEquals("3600 kg", MassText.of(3600.4, Units.METRIC));
    // 3600 / 0.45359237 = 7936.64 lb
    assertEquals("7937 lb", MassText.of(3600, Units.IMPERIAL));
  }

  @Test
  void aPieceWithoutRatingHasNoLimit() {
    assertEquals("no limit", MassText.of(Double.POSITIVE_INFINITY, Units.METRIC));
    assertEquals("unknown", MassText.of(Double.NaN, Units.METRIC));
  }
}
