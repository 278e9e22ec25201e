package io.pitchwatch.sim.world;

/**
 * The ground: how it lies and how much it gives at once.
 *
 * <p>A stiff footing of area A on an elastic half-space sinks by s = q·√A·(1 − ν²)·I/E with I =
 * 0.82 for a square (elastic theory, any soil mechanics text), so that it acts as a spring of
 * E·√A/((1 − ν²)·I).
 *
 * @param lie lean of its surface under the coach
 * @param modulusPa Young's modulus of what lies under the surface, Pa; infinity for rock
 */
public record Ground(Attitude lie, double modulusPa) {

  private static final double POISSON = 0.3;
  private static final double STIFF_SQUARE = 0.82;

  /** Checks the modulus. */
  public Ground {
    if (!(modulusPa > 0)) {
      throw new IllegalArgumentException("modulusPa is " + modulusPa + "; above 0 is allowed");
    }
  }

  /** Level rock. */
  public static Ground rock() {
    return new Ground(Attitude.LEVEL, Double.POSITIVE_INFINITY);
  }

  /**
   * How much a footing gives, metres per newton.
   *
   * @param areaM2 on which it stands, square metres
   */
  double givesMPerN(double areaM2) {
    double widthM = Math.sqrt(areaM2);
    return Elastic.settlementM(1 / areaM2, widthM, STIFF_SQUARE, POISSON, modulusPa);
  }

  /** Height of the surface at a place, metres. */
  double heightM(double xM, double yM) {
    return yM * Math.tan(lie.rollRad()) - xM * Math.tan(lie.pitchRad());
  }
}
