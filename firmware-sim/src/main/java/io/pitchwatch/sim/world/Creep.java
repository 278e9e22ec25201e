package io.pitchwatch.sim.world;

/** Soil that goes on settling under load ever more slowly: secondary compression. */
final class Creep {

  private Creep() {}

  /**
   * S = Cα·H·log10(t₂/t₁) (Das, Principles of Foundation Engineering).
   *
   * @param coefficient Cα, strain per decade of time
   * @param depthM H, of the layer that creeps, metres
   * @param fromS t₁, seconds, above 0
   * @param toS t₂, seconds; before t₁ there is none
   * @return metres
   */
  static double settlementM(double coefficient, double depthM, double fromS, double toS) {
    return toS <= fromS ? 0 : coefficient * depthM * Math.log10(toS / fromS);
  }
}
