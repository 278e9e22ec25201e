package io.pitchwatch.sim.world;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Soil laws against worked examples and tables. */
class SoilReferenceTest {

  /**
   * Settlement after Mayne and Poulos as worked in Das, Principles of Foundation Engineering: q 125
   * kPa, Be 2.764 m, IG·IF·IE = 0.6·0.777·0.9235, ν 0.2 (1 − ν² = 0.96), E 12 MPa: 11.9 mm.
   */
  @Test
  void footingOfMayneAndPoulos() {
    double influence = 0.6 * 0.777 * 0.9235;
    double settledM = Elastic.settlementM(125e3, 2.764, influence, 0.2, 12e6);
    assertEquals(11.9e-3, settledM, 0.05e-3);
  }

  /** Terzaghi's average degree of consolidation against Tv: soil mechanics texts, recomputed. */
  @ParameterizedTest
  @CsvSource({
    "0.10, 0.008",
    "0.20, 0.031",
    "0.30, 0.071",
    "0.40, 0.126",
    "0.50, 0.197",
    "0.60, 0.287",
    "0.70, 0.403",
    "0.80, 0.567",
    "0.90, 0.848",
    "0.95, 1.129"
  })
  void degreeOfConsolidation(double degree, double timeFactor) {
    // Printed tables agree to one in the third decimal of Tv.
    assertEquals(degree, Consolidation.degree(timeFactor), slope(timeFactor) * 0.001);
  }

  private static double slope(double timeFactor) {
    double step = 1e-4;
    return (Consolidation.degree(timeFactor + step) - Consolidation.degree(timeFactor)) / step;
  }

  @Test
  void degreeGoesOnSmoothlyFromItsSmallTimeLimit() {
    assertEquals(Consolidation.degree(0.01 - 1e-12), Consolidation.degree(0.01), 1e-9);
    assertEquals(0, Consolidation.degree(0));
    assertEquals(1, Consolidation.degree(10), 1e-9);
  }

  /** S = Cα·H·log10(t₂/t₁) (Das 2002): 0.02 of 0.4 m a decade are 8 mm. */
  @Test
  void creepIsEvenInDecades() {
    assertEquals(8e-3, Creep.settlementM(0.02, 0.4, 3600, 36_000), 1e-12);
    assertEquals(16e-3, Creep.settlementM(0.02, 0.4, 3600, 360_000), 1e-12);
    assertEquals(0, Creep.settlementM(0.02, 0.4, 3600, 100));
  }
}
