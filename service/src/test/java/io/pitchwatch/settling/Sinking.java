package io.pitchwatch.settling;

/**
 * A wheel that sinks.
 *
 * @param startMinute when it begins
 * @param degPerHour rate at the beginning, of both angles together
 * @param direction angle between pure roll to the right and the direction of sinking, radians
 * @param slowsHours time in which the rate halves, as 1/t, where it follows the logarithm of time;
 *     infinite for a steady rate
 */
record Sinking(long startMinute, double degPerHour, double direction, double slowsHours) {

  static final Sinking NONE = new Sinking(Long.MAX_VALUE, 0, 0, Double.POSITIVE_INFINITY);

  double sunkDeg(double minute) {
    double hours = Math.max(0, (minute - startMinute) / 60);
    return Double.isInfinite(slowsHours)
        ? degPerHour * hours
        : degPerHour * slowsHours * Math.log1p(hours / slowsHours);
  }

  double rollDeg(double minute) {
    return sunkDeg(minute) * Math.cos(direction);
  }

  double pitchDeg(double minute) {
    return sunkDeg(minute) * Math.sin(direction);
  }
}
