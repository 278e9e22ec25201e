package io.pitchwatch.levelling;

import io.pitchwatch.attitude.Lean;
import io.pitchwatch.coach.Axle;
import io.pitchwatch.coach.Coach;
import io.pitchwatch.coach.JackPair;
import java.util.List;

/**
 * How the body follows its wheels: roll = measured − Σ w_k·atan(h_k/t_k) with w_k the shares of
 * roll stiffness, pitch = measured − atan(difference of the outer axles' mean lifts / wheelbase).
 *
 * <p>With three axles the wheelbase is that of the outer two (ISO 612:1978, 6.4, from first to
 * last).
 */
public final class Stance {

  final int axles;
  final double[] share;
  final double[] trackMm;
  final double[] xMm;
  final double[] droopMm;
  private final double[] kgPerMm;

  /** How the body of a coach follows its wheels. */
  public Stance(Coach coach) {
    List<Axle> all = coach.axles();
    axles = all.size();
    share = new double[axles];
    trackMm = new double[axles];
    xMm = new double[axles];
    droopMm = new double[axles];
    kgPerMm = new double[axles];
    double sum = all.stream().mapToDouble(Axle::stiffness).sum();
    for (int k = 0; k < axles; k++) {
      share[k] = all.get(k).stiffness() / sum;
      trackMm[k] = all.get(k).trackMm();
      xMm[k] = all.get(k).positionMm();
      droopMm[k] = all.get(k).droopMm();
      kgPerMm[k] = all.get(k).unloadsKgPerMm();
    }
  }

  /**
   * How lifts of the wheels turn the body, radians: what is to be taken from a measured lean.
   *
   * @param leftMm lift of the left station of each axle
   * @param rightMm lift of the right one
   */
  public Lean lift(double[] leftMm, double[] rightMm) {
    double roll = 0;
    for (int k = 0; k < axles; k++) {
      roll += share[k] * turnRad(k, leftMm[k], rightMm[k]);
    }
    double front = (leftMm[0] + rightMm[0]) / 2;
    double rear = (leftMm[axles - 1] + rightMm[axles - 1]) / 2;
    return new Lean(roll, pitchTurnRad(front, rear));
  }

  /**
   * Where the body comes to rest on its springs, a straight line along the coach: forces and their
   * moments cancel, which makes it the least-squares line, weighted with the springs' rates.
   *
   * @param heightMm at the coach's origin
   * @param slope towards the front, millimetres per millimetre
   */
  record Rest(double heightMm, double slope) {
    double atMm(double xMm) {
      return heightMm + slope * xMm;
    }
  }

  /**
   * The body over axles that are lifted, so much in the mean of both stations, millimetres. With
   * two axles it follows them; with three their springs share what no straight line goes through.
   */
  Rest rest(double[] meanMm) {
    double rate = 0;
    double middleMm = 0;
    double heightMm = 0;
    for (int k = 0; k < axles; k++) {
      rate += kgPerMm[k];
      middleMm += kgPerMm[k] * xMm[k];
      heightMm += kgPerMm[k] * meanMm[k];
    }
    middleMm /= rate;
    heightMm /= rate;
    double moment = 0;
    double inertia = 0;
    for (int k = 0; k < axles; k++) {
      moment += kgPerMm[k] * (xMm[k] - middleMm) * (meanMm[k] - heightMm);
      inertia += kgPerMm[k] * (xMm[k] - middleMm) * (xMm[k] - middleMm);
    }
    double slope = inertia == 0 ? 0 : moment / inertia;
    return new Rest(heightMm - slope * middleMm, slope);
  }

  /** The body where both stations of one axle alone are lifted, by a millimetre. */
  Rest restOn(int axle) {
    double[] meanMm = new double[axles];
    meanMm[axle] = 1;
    return rest(meanMm);
  }

  /** What each axle's figure counts at a place: linear between two, and beyond them. */
  double[] weights(double xPlaceMm) {
    double[] weights = new double[axles];
    int k = 0;
    while (k < axles - 2 && xPlaceMm < xMm[k + 1]) {
      k++;
    }
    if (axles == 1) {
      weights[0] = 1;
      return weights;
    }
    weights[k + 1] = (xPlaceMm - xMm[k]) / (xMm[k + 1] - xMm[k]);
    weights[k] = 1 - weights[k + 1];
    return weights;
  }

  /** A figure of the axles at a place, linear between them and beyond. */
  double along(double xPlaceMm, double[] figures) {
    double[] weights = weights(xPlaceMm);
    double sum = 0;
    for (int k = 0; k < axles; k++) {
      sum += weights[k] * figures[k];
    }
    return sum;
  }

  /** What a foot rises where the right station at its place stands a millimetre above the left. */
  double reach(JackPair pair) {
    return pair.spacingMm() / (2 * along(pair.positionMm(), trackMm));
  }

  /** By how far an axle turns, right side up, radians. */
  double turnRad(int k, double leftMm, double rightMm) {
    return Math.atan((rightMm - leftMm) / trackMm[k]);
  }

  /** Between the outer axles, millimetres; 0 with a single axle. */
  double wheelbaseMm() {
    return xMm[0] - xMm[axles - 1];
  }

  /** How the wheels turn the body's pitch, radians: positive lifts the front. */
  double pitchTurnRad(double frontMeanMm, double rearMeanMm) {
    return axles == 1 ? 0 : Math.atan((frontMeanMm - rearMeanMm) / wheelbaseMm());
  }
}
