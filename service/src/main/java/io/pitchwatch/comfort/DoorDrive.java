package io.pitchwatch.comfort;

import io.pitchwatch.attitude.UpVector;
import io.pitchwatch.coach.Door;

/**
 * What gravity does to a door's leaf, hinged square to the floor.
 *
 * <p>With S and O the unit vectors shut-towards and opens-towards, the leaf's edge stands at e(α) =
 * cos α S + sin α O and moves along e′(α) when opening. Gravity in the floor's plane is −g(u_x,
 * u_y), so the drive towards open, as a share of g, is k(α) = −(u_x, u_y)·e′(α) = a sin α − b cos α
 * with a = (u_x, u_y)·S and b = (u_x, u_y)·O. That is a sine, R sin(α − δ), so its roots and its
 * extremes over the swing are known without sampling. The leaf moves where |k| > sin(holds).
 */
final class DoorDrive {

  private final double a;
  private final double b;
  private final double swingRad;
  private final double hold;

  DoorDrive(Door door, UpVector up) {
    this.a = up.x() * door.shutTowards().x() + up.y() * door.shutTowards().y();
    this.b = up.x() * door.opensTowards().x() + up.y() * door.opensTowards().y();
    this.swingRad = door.swingRad();
    this.hold = Math.sin(door.holdsRad());
  }

  /** Drive towards open at an opening angle in radians, as a share of g. */
  double at(double openRad) {
    return a * Math.sin(openRad) - b * Math.cos(openRad);
  }

  /** The largest drive at any angle: the sine of the tilt in the floor's plane. */
  double amplitude() {
    return Math.hypot(a, b);
  }

  /** The share of g that friction takes: sin(holds). */
  double hold() {
    return hold;
  }

  /** The opening angle of the strongest drive towards shut, over the swing, radians. */
  double hardestShutRad() {
    return extremeRad(-1);
  }

  DoorTendency tendency() {
    boolean opens = at(extremeRad(1)) > hold;
    boolean shuts = at(extremeRad(-1)) < -hold;
    if (opens) {
      return shuts ? DoorTendency.EITHER : DoorTendency.DRIFTS_OPEN;
    }
    return shuts ? DoorTendency.DRIFTS_SHUT : DoorTendency.STAYS;
  }

  /**
   * Where a leaf without friction comes to rest whatever angle it was let go at: the stable angle
   * inside the swing, else shut or the stop. NaN when it depends on where it was let go, when
   * friction holds it everywhere, and when the lean is unknown.
   */
  double restRad() {
    if (Double.isNaN(a + b) || tendency() == DoorTendency.STAYS) {
      return Double.NaN;
    }
    double watershed = angleInSwing(Math.atan2(b, a));
    if (watershed > 0 && watershed < swingRad) {
      return Double.NaN;
    }
    double stable = angleInSwing(Math.atan2(b, a) + Math.PI);
    if (!Double.isNaN(stable)) {
      return stable;
    }
    return at(swingRad / 2) > 0 ? swingRad : 0;
  }

  /** Where the drive, times the sign, is largest over [0, swing]. */
  private double extremeRad(int sign) {
    double inside = angleInSwing(Math.atan2(b, a) + sign * Math.PI / 2);
    if (!Double.isNaN(inside)) {
      return inside;
    }
    return sign * at(0) >= sign * at(swingRad) ? 0 : swingRad;
  }

  /** The first angle at or above 0 that equals the given one modulo 2π; NaN if past the stop. */
  private double angleInSwing(double angleRad) {
    double turn = 2 * Math.PI;
    double wrapped = angleRad - turn * Math.floor(angleRad / turn);
    return wrapped <= swingRad ? wrapped : Double.NaN;
  }
}
