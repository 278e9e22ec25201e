package io.pitchwatch.settling;

/**
 * Which law the sinking follows, linear in time or slowing with its logarithm, and what each
 * foretells.
 *
 * <p>Soil under a new load creeps as s = s₁ + C log t; soil that keeps softening sinks at a steady
 * rate. Both lines are fitted to the blocks since the onset. The share of evidence for the
 * logarithm follows the ratio of their residual sums, (RSS_log/RSS_lin)^(−n/2), n being the number
 * of independent blocks rather than of all: what people do lasts for hours.
 */
final class CreepLaw {

  private final LinearFit linear = new LinearFit();
  private final LinearFit logarithmic = new LinearFit();
  private final AxisBlock past = new AxisBlock();

  /**
   * Evidence that the sinking slows with the logarithm of time.
   *
   * @param watch the angle
   * @param busyHours how long what people do lasts
   * @return 0 to 1; one half when nothing speaks for either
   */
  double logarithmicShare(AxisWatch watch, double busyHours) {
    linear.clear();
    logarithmic.clear();
    for (int i = 0; i < watch.blocks().count(); i++) {
      watch.blocks().get(i, past);
      double hours = (past.nanos - watch.sinceNanos()) / AxisWatch.NANOS_PER_HOUR;
      if (hours > 0) {
        double angle = past.angleRad - past.warmerC * watch.coefficientRadPerC();
        linear.add(hours, angle);
        logarithmic.add(Math.log1p(hours / Block.LENGTH_HOURS), angle);
      }
    }
    double independent = linear.count() * Block.LENGTH_HOURS / (2 * busyHours);
    double ratio = logarithmic.residualSum() / linear.residualSum();
    return linear.count() < 3 ? 0.5 : 1 / (1 + Math.pow(ratio, independent / 2));
  }

  /**
   * Hours until a distance is gone at a steady rate.
   *
   * @param distanceRad how far it is, more than 0
   * @param rateRadPerHour towards it; infinite hours where it is not more than 0
   */
  static double linearHours(double distanceRad, double rateRadPerHour) {
    return rateRadPerHour > 0 ? distanceRad / rateRadPerHour : Double.POSITIVE_INFINITY;
  }

  /**
   * Hours until a distance is gone when the rate falls as 1/t: s = s₁ + C log t has the rate C/t.
   *
   * @param distanceRad how far it is, more than 0
   * @param rateRadPerHour the rate now, towards it
   * @param sinceHours t now, since the onset, more than 0
   */
  static double logarithmicHours(double distanceRad, double rateRadPerHour, double sinceHours) {
    return rateRadPerHour > 0
        ? sinceHours * Math.expm1(distanceRad / (rateRadPerHour * sinceHours))
        : Double.POSITIVE_INFINITY;
  }
}
