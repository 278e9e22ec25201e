package io.pitchwatch.attitude;

/**
 * What a chip's samples must be turned into to be true: a = T·K·(raw − b). K holds the scale of
 * each axis, b its bias, and T its misalignment, 1 on the diagonal and 0 above it:
 *
 * <pre>
 *        | 1    0    0 |       | kx 0  0  |
 *   T =  | t21  1    0 |   K = | 0  ky 0  |
 *        | t31  t32  1 |       | 0  0  kz |
 * </pre>
 *
 * <p>So the true x axis lies along the chip's own, and the true y axis in the plane of its x and y:
 * poses held by hand say nothing about a turn of the whole chip, which is for {@link Zero}. Model
 * after D. Tedaldi, A. Pretto, E. Menegatti, ICRA 2014, equations 1 to 4; the lower triangle is the
 * form in which their program prints it.
 *
 * @param scale kx, ky, kz: true g for each raw unit
 * @param misalignment t21, t31, t32, radians near enough, as x, y, z
 * @param bias b, raw units
 * @param quality how good it is
 * @param date a label for people; may be empty
 */
public record Calibration(
    Triad scale, Triad misalignment, Triad bias, CalibrationQuality quality, String date) {

  /** The chip is believed as its data sheet has it. */
  public static final Calibration NONE =
      new Calibration(Triad.ONE, Triad.ZERO, Triad.ZERO, CalibrationQuality.NONE, "");

  /**
   * Checks the numbers.
   *
   * @throws IllegalArgumentException if one is not finite or a scale is not above 0
   */
  public Calibration {
    if (!scale.isFinite() || !misalignment.isFinite() || !bias.isFinite()) {
      throw new IllegalArgumentException(
          "calibration is " + scale + ", " + misalignment + ", " + bias + "; it must be finite");
    }
    if (!(Math.min(scale.x(), Math.min(scale.y(), scale.z())) > 0)) {
      throw new IllegalArgumentException("scale is " + scale + "; it must be above 0");
    }
  }

  /** Whether a chip was ever calibrated. */
  public boolean isNone() {
    return quality.poses() == 0;
  }

  /**
   * The true specific force of a raw sample, without allocating.
   *
   * @param x raw; NaN goes through to the result
   * @param y raw
   * @param z raw
   * @param out receives the three true components, g
   */
  public void apply(double x, double y, double z, double[] out) {
    double ax = scale.x() * (x - bias.x());
    double ay = scale.y() * (y - bias.y());
    double az = scale.z() * (z - bias.z());
    out[0] = ax;
    out[1] = misalignment.x() * ax + ay;
    out[2] = misalignment.y() * ax + misalignment.z() * ay + az;
  }

  /** The true magnitude of a pose, g; 1 when both are right. */
  public double magnitude(Pose pose) {
    double[] a = new double[3];
    apply(pose.x(), pose.y(), pose.z(), a);
    return Math.sqrt(a[0] * a[0] + a[1] * a[1] + a[2] * a[2]);
  }

  /**
   * One standard error of tilt that it leaves near level, radians: what the biases of two axes that
   * lie in the floor are uncertain by.
   */
  public double standardErrorRad() {
    return quality.biasError().largest() * scale.largest();
  }
}
