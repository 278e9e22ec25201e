package io.pitchwatch.settling;

/**
 * When a settling angle reaches a limit, with a 90 % interval.
 *
 * <p>The best estimate follows the law that the blocks speak for. The interval spans both laws
 * unless they speak clearly against one: the soonest end is the linear law at the highest rate, the
 * latest the logarithmic one at the lowest.
 */
final class Forecast {

  /** A law with less than this share of the evidence is left out of the interval. */
  private static final double CLEAR = 0.05;

  /** Of a 90 % interval, in standard errors. */
  private static final double Z = 1.645;

  private final CreepLaw law = new CreepLaw();
  private final GroundModel model;

  Forecast(GroundModel model) {
    this.model = model;
  }

  /**
   * The nearest limit ahead of one angle.
   *
   * @param limits in any order
   * @return {@link HoursToLimit#NONE} when the angle is not settling or nothing is ahead
   */
  HoursToLimit of(AxisWatch watch, LeanAxis axis, Iterable<LeanLimit> limits) {
    double rate = watch.rateRadPerHour();
    if (!watch.isSettling() || rate == 0) {
      return HoursToLimit.NONE;
    }
    double direction = Math.signum(rate);
    double nearest = Double.POSITIVE_INFINITY;
    String name = "";
    for (LeanLimit limit : limits) {
      double distance = axis.limitRad(limit) - direction * watch.angleRad();
      if (distance > 0 && distance < nearest) {
        nearest = distance;
        name = limit.name();
      }
    }
    return nearest == Double.POSITIVE_INFINITY ? HoursToLimit.NONE : of(watch, nearest, name);
  }

  private HoursToLimit of(AxisWatch watch, double distanceRad, String name) {
    double sinceHours =
        Math.max(
            Block.LENGTH_HOURS,
            (watch.lastNanos() - watch.sinceNanos()) / AxisWatch.NANOS_PER_HOUR);
    double share = law.logarithmicShare(watch, model.busyHours());
    double rate = Math.abs(watch.rateRadPerHour());
    double fastest = rate + Z * watch.rateErrorRadPerHour();
    double slowest = rate - Z * watch.rateErrorRadPerHour();
    double hours =
        share > 0.5
            ? CreepLaw.logarithmicHours(distanceRad, rate, sinceHours)
            : CreepLaw.linearHours(distanceRad, rate);
    double soonest =
        share > 1 - CLEAR
            ? CreepLaw.logarithmicHours(distanceRad, fastest, sinceHours)
            : CreepLaw.linearHours(distanceRad, fastest);
    double latest =
        share < CLEAR
            ? CreepLaw.linearHours(distanceRad, slowest)
            : CreepLaw.logarithmicHours(distanceRad, slowest, sinceHours);
    return new HoursToLimit(name, hours, soonest, latest);
  }
}
