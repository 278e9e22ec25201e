package io.pitchwatch.sim.world;

/** Settlement of a footing on an elastic half-space, at once. */
final class Elastic {

  private Elastic() {}

  /**
   * s = q·B·(1 − ν²)·I/E.
   *
   * @param pressurePa q, under the footing, Pa
   * @param widthM B, its width, metres
   * @param influence I, from its shape, stiffness and depth
   * @param poisson ν of the soil
   * @param modulusPa E of the soil, Pa
   * @return metres
   */
  static double settlementM(
      double pressurePa, double widthM, double influence, double poisson, double modulusPa) {
    return pressurePa * widthM * (1 - poisson * poisson) * influence / modulusPa;
  }
}
