package io.pitchwatch.levelling;

import io.pitchwatch.attitude.Lean;
import io.pitchwatch.coach.Coach;
import io.pitchwatch.coach.Stay;
import io.pitchwatch.coach.Surface;

/**
 * What a plan is for.
 *
 * @param coach and what it carries
 * @param lean of the floor with the coach on its wheels on the bare ground, radians
 * @param surface what it stands on
 * @param stay how long it is to stand there
 */
public record Site(Coach coach, Lean lean, Surface surface, Stay stay) {

  /**
   * Most lean that is planned for, radians: 15 deg, more than any coach is parked on (our own
   * figure).
   */
  public static final double MOST_RAD = Math.toRadians(15);

  private static final double ROUNDING_RAD = Math.toRadians(1e-9);

  /**
   * Checks the lean.
   *
   * @throws IllegalArgumentException if an angle of it is NaN or above {@link #MOST_RAD} in size
   */
  public Site {
    check("roll", lean.rollDeg());
    check("pitch", lean.pitchDeg());
  }

  private static void check(String name, double deg) {
    if (!isPlannable(Math.toRadians(deg))) {
      throw new IllegalArgumentException(
          name + " is " + deg + " deg; -15 to 15 deg can be planned for");
    }
  }

  /**
   * Whether an angle, radians, is not more than can be planned for; rounding counts for nothing.
   */
  public static boolean isPlannable(double rad) {
    return Math.abs(rad) <= MOST_RAD + ROUNDING_RAD;
  }

  /** The tolerance of the stay, radians. */
  double toleranceRad() {
    return coach.levelling().toleranceRad(stay);
  }

  /** The same site with another coach. */
  Site with(Coach other) {
    return new Site(other, lean, surface, stay);
  }

  /** The same site under another lean. */
  Site with(Lean other) {
    return new Site(coach, other, surface, stay);
  }
}
