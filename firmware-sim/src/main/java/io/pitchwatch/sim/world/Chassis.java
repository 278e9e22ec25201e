package io.pitchwatch.sim.world;

import java.util.List;

/**
 * The coach as a mechanism: a stiff body on sprung axles, and jacks.
 *
 * @param axles front to back, one or more, no two at the same place
 * @param jackPairs front to back, perhaps none
 * @param rollArmM how far the body's centre of gravity lies above the axis about which it rolls,
 *     metres: leaning, it leans further by weight times arm over stiffness
 */
public record Chassis(List<Axle> axles, List<JackPair> jackPairs, double rollArmM) {

  /** A usual arm, metres (common practice for a coach on rigid axles). */
  public static final double USUAL_ROLL_ARM_M = 0.5;

  /** Copies the lists; checks that the body stands. */
  public Chassis {
    axles = List.copyOf(axles);
    jackPairs = List.copyOf(jackPairs);
    Check.atLeast("rollArmM", rollArmM, 0);
    if (axles.stream().mapToDouble(Axle::xM).distinct().count() < Math.max(2, axles.size())) {
      throw new IllegalArgumentException(
          "axles are " + axles + "; two or more at different places are allowed");
    }
    if (weightN(axles) * rollArmM >= rollStiffnessNmPerRad(axles)) {
      throw new IllegalArgumentException(
          "rollArmM is " + rollArmM + "; a body so high on springs so soft falls over");
    }
  }

  /** Weight, newtons. */
  public double weightN() {
    return weightN(axles);
  }

  /** Where the centre of gravity lies along the coach, metres. */
  public double centreM() {
    double moment = 0;
    for (Axle axle : axles) {
      moment += axle.loadKg() * Sway.G * axle.xM();
    }
    return moment / weightN();
  }

  /**
   * Roll stiffness of all axles, Nm/rad: that of springs at the wheels, however it is shared out.
   */
  double rollStiffnessNmPerRad() {
    return rollStiffnessNmPerRad(axles);
  }

  /** Roll stiffness of one axle, Nm/rad. */
  double rollStiffnessNmPerRad(Axle axle) {
    double shares = 0;
    for (Axle each : axles) {
      shares += each.stiffnessShare();
    }
    return rollStiffnessNmPerRad() * axle.stiffnessShare() / shares;
  }

  /** Index of an axle. */
  int axle(String id) {
    for (int i = 0; i < axles.size(); i++) {
      if (axles.get(i).id().equals(id)) {
        return i;
      }
    }
    throw new IllegalArgumentException(
        "axle is " + id + "; allowed are " + axles.stream().map(Axle::id).toList());
  }

  /** Index of a jack pair. */
  int jackPair(String id) {
    for (int i = 0; i < jackPairs.size(); i++) {
      if (jackPairs.get(i).id().equals(id)) {
        return i;
      }
    }
    throw new IllegalArgumentException(
        "jack pair is " + id + "; allowed are " + jackPairs.stream().map(JackPair::id).toList());
  }

  private static double weightN(List<Axle> axles) {
    double kilograms = 0;
    for (Axle axle : axles) {
      kilograms += axle.loadKg();
    }
    return kilograms * Sway.G;
  }

  private static double rollStiffnessNmPerRad(List<Axle> axles) {
    double sum = 0;
    for (Axle axle : axles) {
      sum += axle.springNPerM() * axle.trackM() * axle.trackM() / 2;
    }
    return sum;
  }
}
