package io.pitchwatch.comfort;

import io.pitchwatch.attitude.Lean;
import io.pitchwatch.attitude.UpVector;
import io.pitchwatch.coach.Direction;
import io.pitchwatch.coach.Fridge;

/**
 * How far a lean is from a fridge's limits.
 *
 * <p>The limits make a box, side to side by front to back. Along the coach the two leans are the
 * floor's roll and pitch. A fridge whose limits lie along its own axes has x' towards its door and
 * y' to its left; its leans are the same two formulas (NXP AN3461, equations 25 and 26) on the up
 * vector seen from those axes, without any small-angle step.
 */
public final class FridgeLimits {

  private FridgeLimits() {}

  /**
   * The least of limit − |lean| over the two axes.
   *
   * @param fridge the fridge and its limits
   * @param lean the floor's lean, radians
   * @return radians, negative outside; NaN when an angle is NaN
   */
  public static double marginRad(Fridge fridge, Lean lean) {
    double cosPitch = Math.cos(lean.pitchRad());
    double x = -Math.sin(lean.pitchRad());
    double y = Math.sin(lean.rollRad()) * cosPitch;
    return margin(fridge, x, y, Math.cos(lean.rollRad()) * cosPitch);
  }

  /**
   * The least of limit − |lean| over the two axes.
   *
   * @param fridge the fridge and its limits
   * @param up where up is, seen from the coach
   * @return radians, negative outside; NaN when a component is NaN
   */
  public static double marginRad(Fridge fridge, UpVector up) {
    return margin(fridge, up.x(), up.y(), up.z());
  }

  /**
   * The limit that the coach's roll runs against: side to side, or front to back where the fridge
   * faces a side wall and its limits lie along its own axes.
   *
   * @return radians, to either side
   */
  public static double rollLimitRad(Fridge fridge) {
    return liesAcross(fridge) ? fridge.frontToBackRad() : fridge.sideToSideRad();
  }

  /**
   * The limit that the coach's pitch runs against, the other one of {@link #rollLimitRad}.
   *
   * @return radians, to either side
   */
  public static double pitchLimitRad(Fridge fridge) {
    return liesAcross(fridge) ? fridge.sideToSideRad() : fridge.frontToBackRad();
  }

  private static boolean liesAcross(Fridge fridge) {
    Direction faces = fridge.faces().orElse(Direction.FRONT);
    return faces == Direction.LEFT || faces == Direction.RIGHT;
  }

  private static double margin(Fridge fridge, double x, double y, double z) {
    // Only sizes matter to a box, so facing left and right are alike, as are front and rear.
    boolean across = liesAcross(fridge);
    double forward = across ? y : x;
    double left = across ? x : y;
    double sideToSide = Math.abs(Math.atan2(left, z));
    double frontToBack = Math.abs(Math.atan2(forward, Math.hypot(left, z)));
    return Math.min(fridge.sideToSideRad() - sideToSide, fridge.frontToBackRad() - frontToBack);
  }
}
