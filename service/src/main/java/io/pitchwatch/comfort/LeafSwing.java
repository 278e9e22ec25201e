package io.pitchwatch.comfort;

/**
 * A leaf in motion: α̈ = (3g/2w)(k(α) − sign(α̇) sin holds), the uniform leaf of width w having its
 * centre at w/2 and the inertia m w²/3 about its hinge line.
 *
 * <p>Runge–Kutta steps of the fourth order, a thousand to the period of a small free swing. The
 * force jumps only where the leaf turns back, and there it is at rest: the step is cut at that
 * instant, and at frame and stop, by bisection.
 */
final class LeafSwing {

  private static final double STANDARD_GRAVITY = 9.80665;
  private static final int STEPS_PER_PERIOD = 1000;
  private static final int HALVINGS = 60;

  private final DoorDrive drive;
  private final double gain;
  private final double stepSeconds;

  private double openRad;
  private double speedRad;
  private double seconds;

  // What one step of the given length would bring.
  private double nextOpenRad;
  private double nextSpeedRad;

  LeafSwing(DoorDrive drive, double widthMetres, double fromRad) {
    this.drive = drive;
    this.gain = 1.5 * STANDARD_GRAVITY / widthMetres;
    this.stepSeconds = 2 * Math.PI / Math.sqrt(gain * drive.amplitude()) / STEPS_PER_PERIOD;
    this.openRad = fromRad;
  }

  double openRad() {
    return openRad;
  }

  double speedRadPerSecond() {
    return speedRad;
  }

  double seconds() {
    return seconds;
  }

  /** Whether friction holds the leaf where it stands. */
  boolean held() {
    return !(Math.abs(drive.at(openRad)) > drive.hold());
  }

  /**
   * Whether the leaf stands at an end of its swing and gravity does not take it away from there.
   */
  boolean pressed(double swingRad) {
    double drive = this.drive.at(openRad);
    return (openRad <= 0 && drive <= 0) || (openRad >= swingRad && drive >= 0);
  }

  /**
   * Moves from rest until the leaf turns back or reaches an end of the swing.
   *
   * @return false if the time was over first, or the leaf does not move from here
   */
  boolean swingOnce(double swingRad, double untilSeconds) {
    if (held()) {
      return false;
    }
    double sign = Math.signum(drive.at(openRad));
    double end = sign > 0 ? swingRad : 0;
    speedRad = 0;
    while (seconds < untilSeconds) {
      step(stepSeconds, sign);
      if (isOver(sign, end)) {
        cut(sign, end);
        return true;
      }
      take(stepSeconds);
    }
    return false;
  }

  private boolean isOver(double sign, double end) {
    return sign * nextSpeedRad <= 0 || sign * (nextOpenRad - end) >= 0;
  }

  private void cut(double sign, double end) {
    double before = 0;
    double over = stepSeconds;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (before + over) / 2;
      step(middle, sign);
      if (isOver(sign, end)) {
        over = middle;
      } else {
        before = middle;
      }
    }
    step(over, sign);
    boolean reachedEnd = sign * (nextOpenRad - end) >= 0;
    take(over);
    if (reachedEnd) {
      openRad = end;
    } else {
      speedRad = 0;
    }
  }

  private void take(double dt) {
    openRad = nextOpenRad;
    speedRad = nextSpeedRad;
    seconds += dt;
  }

  private double acceleration(double angleRad, double sign) {
    return gain * (drive.at(angleRad) - sign * drive.hold());
  }

  private void step(double dt, double sign) {
    double a1 = acceleration(openRad, sign);
    double v2 = speedRad + dt / 2 * a1;
    double a2 = acceleration(openRad + dt / 2 * speedRad, sign);
    double v3 = speedRad + dt / 2 * a2;
    double a3 = acceleration(openRad + dt / 2 * v2, sign);
    double v4 = speedRad + dt * a3;
    double a4 = acceleration(openRad + dt * v3, sign);
    nextOpenRad = openRad + dt / 6 * (speedRad + 2 * v2 + 2 * v3 + v4);
    nextSpeedRad = speedRad + dt / 6 * (a1 + 2 * a2 + 2 * a3 + a4);
  }
}
