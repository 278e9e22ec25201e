package io.pitchwatch.attitude;

/**
 * How far the board's heading is off the coach's, found from one change of lean that is purely
 * front to back (the front jacks going up). A zero leaves this open, and it turns part of a pitch
 * into false roll: 5 deg of it makes 0.26 deg of roll out of 3 deg of pitch.
 */
public sealed interface Alignment {

  /**
   * The largest standard error of the yaw that is accepted, radians (1 deg): what remains then
   * makes less than 0.06 deg of false roll out of 3 deg of pitch.
   */
  double LARGEST_ERROR_RAD = Math.toRadians(1);

  /**
   * The yaw was found.
   *
   * @param yawRad angle, radians, by which the board's forward is turned to the left of the coach's
   * @param standardErrorRad one standard error of it, radians
   * @param date a label for people; may be empty
   */
  record Found(double yawRad, double standardErrorRad, String date) implements Alignment {

    /** A board taken as it is declared. */
    public static final Found NONE = new Found(0, 0);

    /** Without a date. */
    public Found(double yawRad, double standardErrorRad) {
      this(yawRad, standardErrorRad, "");
    }

    /** The same with a date. */
    public Found dated(String when) {
      return new Found(yawRad, standardErrorRad, when);
    }

    /** Takes components in the zeroed axes to components in the coach's. */
    public Rotation rotation() {
      return Rotation.aboutUp(yawRad);
    }
  }

  /**
   * The lean changed too little to tell.
   *
   * @param changeRad by how much it changed, radians
   * @param neededRad by how much it must change, radians, with readings as good as these
   */
  record TooSmall(double changeRad, double neededRad) implements Alignment {}

  /**
   * The change went the other way than said by more than a right angle: the declared mounting, or
   * which end went up, is wrong.
   *
   * @param yawRad the yaw that would explain it, radians, more than π/2 either way
   */
  record WrongWay(double yawRad) implements Alignment {}

  /**
   * Finds the yaw. A turn of the coach about its y axis leaves u_y as it is; so in axes turned by
   * the yaw the change of u has the direction (cos ψ, −sin ψ), and ψ = −atan2(Δy, Δx) when the
   * front goes up.
   *
   * @param before the up vector before, in the zeroed axes
   * @param after the up vector after the front went up, nothing else moved
   * @param readingErrorRad one standard error of each reading, radians
   */
  static Alignment frontRaised(UpVector before, UpVector after, double readingErrorRad) {
    double dx = after.x() - before.x();
    double dy = after.y() - before.y();
    double change = Math.hypot(dx, dy);
    double needed = readingErrorRad * Math.sqrt(2) / LARGEST_ERROR_RAD;
    if (!(change >= needed) || change == 0) {
      return new TooSmall(change, needed);
    }
    double yaw = -Math.atan2(dy, dx);
    if (Math.abs(yaw) > Math.PI / 2) {
      return new WrongWay(yaw);
    }
    return new Found(yaw, readingErrorRad * Math.sqrt(2) / change);
  }

  /**
   * As {@link #frontRaised}, the rear going up instead.
   *
   * @param before the up vector before, in the zeroed axes
   * @param after the up vector after the rear went up, nothing else moved
   * @param readingErrorRad one standard error of each reading, radians
   */
  static Alignment rearRaised(UpVector before, UpVector after, double readingErrorRad) {
    return frontRaised(/* before= */ after, /* after= */ before, readingErrorRad);
  }
}
