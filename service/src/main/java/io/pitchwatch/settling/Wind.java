package io.pitchwatch.settling;

/** How much the coach rocks beyond the quietest times, which are the sensor's own noise. */
final class Wind {

  private double quietRad = Double.POSITIVE_INFINITY;

  /**
   * Takes how far the coach rocked, one standard deviation.
   *
   * @return what of that is more than noise, radians
   */
  double of(double spreadRad) {
    // Let it rise again by a hundredth each time: noise may grow with the sensor's age or warmth.
    quietRad = Math.min(quietRad * 1.01, spreadRad);
    return Math.sqrt(Math.max(0, spreadRad * spreadRad - 2 * quietRad * quietRad));
  }
}
