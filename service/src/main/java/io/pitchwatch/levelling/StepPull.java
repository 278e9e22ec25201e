package io.pitchwatch.levelling;

/**
 * The pull at its axle that lifts a wheel over a step: F/W = √(h·(2R − h))/(R − h), from the
 * moments about the step's edge (Halliday, Resnick, Walker, Fundamentals of Physics, chapter 12).
 */
public final class StepPull {

  /** Radius of a coach's wheel (common practice), millimetres. */
  public static final double USUAL_RADIUS_MM = 480;

  private StepPull() {}

  /**
   * Pull as a share of the wheel's load.
   *
   * @param stepMm height of the step, millimetres
   * @param radiusMm of the wheel, millimetres, more than the step
   * @throws IllegalArgumentException if the step is below 0 or not below the radius
   */
  public static double share(double stepMm, double radiusMm) {
    if (!(stepMm >= 0 && stepMm < radiusMm)) {
      throw new IllegalArgumentException(
          "step is " + stepMm + " mm; it must be 0 or more and below the radius, " + radiusMm);
    }
    return Math.sqrt(stepMm * (2 * radiusMm - stepMm)) / (radiusMm - stepMm);
  }
}
