package io.pitchwatch.levelling;

/** How much lean is still of interest during a search; it only comes down. */
final class Bound {

  /** Two leans nearer to each other than this are the same, radians. */
  static final double SAME_RAD = 1e-9;

  private final Stance stance;
  private final Question question;
  private double rad;
  private double liftFromMm;
  private double liftToMm;

  /** At first, as much as is asked for. */
  Bound(Stance stance, Question question) {
    this.stance = stance;
    this.question = question;
    rad = Double.POSITIVE_INFINITY;
    lower(question.mostRad() + SAME_RAD);
  }

  /** No more lean than this is of interest from now on. */
  void lower(double leanRad) {
    rad = Math.min(rad, leanRad);
    double from = question.pitchFromRad();
    double to = question.pitchToRad();
    if (question.pitchCounts()) {
      from = Math.max(from, -mostRad());
      to = Math.min(to, mostRad());
    }
    liftFromMm = liftMm(question.pitchRad() - to);
    liftToMm = liftMm(question.pitchRad() - from);
  }

  /** The bound itself, radians. */
  double rad() {
    return rad;
  }

  /** The bound, and as much as rounding may add to it. */
  double mostRad() {
    return rad + SAME_RAD;
  }

  /** The least by which the front axle's mean lift may exceed the rear's. */
  double liftFromMm() {
    return liftFromMm;
  }

  /** The most by which it may. */
  double liftToMm() {
    return liftToMm;
  }

  private double liftMm(double turnRad) {
    return Math.abs(turnRad) >= Math.PI / 2
        ? Math.copySign(Double.MAX_VALUE, turnRad)
        : stance.wheelbaseMm() * Math.tan(turnRad);
  }
}
