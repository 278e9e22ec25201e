package io.pitchwatch.sim.world;

/**
 * One axle between body and ground: what its two wheels carry.
 *
 * <p>With e the rise of the body above its rest at a wheel, over the wheel's own height, and s the
 * difference of the two wheels' heights over the body, a wheel carries N = k·(droop − e) ± a·s,
 * where k is the spring at the wheel and a what the axle's roll stiffness has beyond the springs, R
 * = (k/2 + a)·t². Under a wheel the ground gives c metres per newton. A wheel cannot pull: one that
 * would is lifted by its axle and hangs.
 */
final class WheelSpring {

  private final double k;
  private final double a;
  private final double restN;

  /** Load of the left and right wheel, N. */
  final double[] loadN = new double[2];

  /** How fast each load falls as the body rises over each wheel: [wheel][side of the body], N/m. */
  final double[][] rateNPerM = new double[2][2];

  /**
   * An axle.
   *
   * @param axle its figures
   * @param rollNmPerRad its roll stiffness
   */
  WheelSpring(Axle axle, double rollNmPerRad) {
    double track = axle.trackM();
    k = axle.springNPerM();
    a = rollNmPerRad / (track * track) - k / 2;
    restN = axle.loadKg() * Sway.G / 2;
  }

  /**
   * Finds loads and rates.
   *
   * @param left height of what the left wheel stands on, over the body's rest height there, metres
   * @param right the same on the right
   * @param givesLeft how much the ground gives under the left wheel, m/N
   * @param givesRight the same on the right
   */
  void load(double left, double right, double givesLeft, double givesRight) {
    both(left, right, givesLeft, givesRight);
    if (loadN[0] >= 0 && loadN[1] >= 0) {
      return;
    }
    int stands = loadN[0] >= loadN[1] ? 0 : 1;
    single(stands, stands == 0 ? left : right, stands == 0 ? givesLeft : givesRight);
    if (loadN[stands] < 0) {
      clear();
    }
  }

  private void both(double left, double right, double givesLeft, double givesRight) {
    // (1 + K·C)·N = rest + K·z with K = [k + a, −a; −a, k + a] and C the ground's compliance.
    double ka = k + a;
    double m00 = 1 + ka * givesLeft;
    double m01 = -a * givesRight;
    double m10 = -a * givesLeft;
    double m11 = 1 + ka * givesRight;
    double determinant = m00 * m11 - m01 * m10;
    double pushLeft = restN + ka * left - a * right;
    double pushRight = restN - a * left + ka * right;
    loadN[0] = (m11 * pushLeft - m01 * pushRight) / determinant;
    loadN[1] = (m00 * pushRight - m10 * pushLeft) / determinant;
    rateNPerM[0][0] = (m11 * ka + m01 * a) / determinant;
    rateNPerM[0][1] = (-m11 * a - m01 * ka) / determinant;
    rateNPerM[1][0] = (-m00 * a - m10 * ka) / determinant;
    rateNPerM[1][1] = (m00 * ka + m10 * a) / determinant;
  }

  /** The other wheel hangs free of load: its spring and the axle's roll stiffness balance. */
  private void single(int stands, double height, double gives) {
    double ka = k + a;
    double stiff = ka - a * a / ka;
    double free = restN * (1 + a / ka);
    clear();
    loadN[stands] = (free + stiff * height) / (1 + stiff * gives);
    rateNPerM[stands][stands] = stiff / (1 + stiff * gives);
  }

  private void clear() {
    loadN[0] = 0;
    loadN[1] = 0;
    rateNPerM[0][0] = 0;
    rateNPerM[0][1] = 0;
    rateNPerM[1][0] = 0;
    rateNPerM[1][1] = 0;
  }
}
