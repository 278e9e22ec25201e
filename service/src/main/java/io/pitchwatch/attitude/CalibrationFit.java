package io.pitchwatch.attitude;

import io.pitchwatch.attitude.CalibrationOutcome.Clustered;
import io.pitchwatch.attitude.CalibrationOutcome.Fitted;
import io.pitchwatch.attitude.CalibrationOutcome.Misfit;
import io.pitchwatch.attitude.CalibrationOutcome.NoFit;
import io.pitchwatch.attitude.CalibrationOutcome.TooFew;
import java.util.List;
import java.util.Optional;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresOptimizer.Optimum;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.MultivariateJacobianFunction;
import org.hipparchus.util.Pair;

/**
 * Finds the {@link Calibration} that makes |a| = 1 g over many still poses, by least squares
 * (Levenberg and Marquardt), in units in which the poses lie on the unit sphere.
 *
 * <p>Standard errors come from what is left over, s² = Σ(|a| − 1)²/(n − 9), or from the poses' own
 * where those are more, and the inverse of JᵀJ.
 */
public final class CalibrationFit {

  /** Nine unknowns, and three poses more to see how well they agree. */
  public static final int FEWEST_POSES = 12;

  private static final int UNKNOWNS = 9;
  private static final int MOST_STEPS = 200;

  /**
   * A pose whose residual is this many times what the others leave room for has moved; more is
   * allowed where few others say so. Our own figures.
   */
  private static final double OUTLYING = 6;

  private static final double OUTLYING_OF_FEW = 40;

  private final List<Pose> poses;
  private final SphereFit sphere;
  private final double[][] points;

  private CalibrationFit(List<Pose> poses, SphereFit sphere) {
    this.poses = poses;
    this.sphere = sphere;
    this.points = poses.stream().map(sphere::unit).toArray(double[][]::new);
  }

  /**
   * Fits.
   *
   * @param poses what the chip measured, each one held still
   * @param before the calibration so far, to compare with; in the same units as the poses
   * @param date a label for people
   */
  public static CalibrationOutcome of(List<Pose> poses, Calibration before, String date) {
    if (poses.size() < FEWEST_POSES) {
      return new TooFew(poses.size(), FEWEST_POSES);
    }
    Optional<SphereFit> sphere = SphereFit.of(poses);
    if (sphere.isEmpty()) {
      return new NoFit();
    }
    CalibrationFit fit = new CalibrationFit(List.copyOf(poses), sphere.get());
    PoseSpan span = PoseSpan.of(fit.points);
    if (!span.enough()) {
      return new Clustered(span.missing(), span.gapRad());
    }
    try {
      return fit.outcome(fit.solve(), before, date);
    } catch (MathRuntimeException e) {
      return new NoFit();
    }
  }

  private Optimum solve() {
    // Unknowns: kx, ky, kz, t21, t31, t32, bx, by, bz.
    return new LevenbergMarquardtOptimizer()
        .optimize(
            new LeastSquaresBuilder()
                .start(new double[] {1, 1, 1, 0, 0, 0, 0, 0, 0})
                .model((MultivariateJacobianFunction) at -> model(at.toArray()))
                .target(new double[points.length])
                .maxEvaluations(MOST_STEPS)
                .maxIterations(MOST_STEPS)
                .build());
  }

  /** |a| − 1 of every pose, and how it changes with the unknowns: a·∂a/|a|. */
  private Pair<RealVector, RealMatrix> model(double[] at) {
    RealVector residuals = MatrixUtils.createRealVector(new double[points.length]);
    RealMatrix slopes = MatrixUtils.createRealMatrix(points.length, UNKNOWNS);
    for (int i = 0; i < points.length; i++) {
      double dx = points[i][0] - at[6];
      double dy = points[i][1] - at[7];
      double dz = points[i][2] - at[8];
      double ax = at[0] * dx;
      double sy = at[1] * dy;
      double ay = at[3] * ax + sy;
      double az = at[4] * ax + at[5] * sy + at[2] * dz;
      double norm = Math.sqrt(ax * ax + ay * ay + az * az);
      residuals.setEntry(i, norm - 1);
      double alongX = (ax + at[3] * ay + at[4] * az) / norm;
      double alongY = (ay + at[5] * az) / norm;
      double alongZ = az / norm;
      slopes.setRow(
          i,
          new double[] {
            alongX * dx,
            alongY * dy,
            alongZ * dz,
            ay * ax / norm,
            az * ax / norm,
            az * sy / norm,
            -alongX * at[0],
            -alongY * at[1],
            -alongZ * at[2]
          });
    }
    return new Pair<>(residuals, slopes);
  }

  private CalibrationOutcome outcome(Optimum found, Calibration before, String date) {
    double[] at = found.getPoint().toArray();
    if (!(Math.min(at[0], Math.min(at[1], at[2])) > 0)) {
      return new NoFit();
    }
    double[] residuals = found.getResiduals().toArray();
    RealMatrix slopes = found.getJacobian();
    RealMatrix inverse =
        new LUDecomposition(slopes.transposeMultiply(slopes)).getSolver().getInverse();
    int worst = outlying(residuals, slopes.multiply(inverse).multiplyTransposed(slopes));
    if (worst >= 0) {
      return new Misfit(worst, Math.abs(residuals[worst]));
    }
    double[] errors = new double[UNKNOWNS];
    double s = spread(residuals);
    for (int i = 0; i < UNKNOWNS; i++) {
      errors[i] = s * Math.sqrt(inverse.getEntry(i, i));
    }
    return new Fitted(calibration(at, errors, before, date));
  }

  private static double squares(double[] residuals) {
    double sum = 0;
    for (double residual : residuals) {
      sum += residual * residual;
    }
    return sum;
  }

  private double spread(double[] residuals) {
    double own = 0;
    for (Pose pose : poses) {
      double error = pose.standardError() / sphere.radius();
      own += error * error / poses.size();
    }
    return Math.sqrt(Math.max(own, squares(residuals) / (residuals.length - UNKNOWNS)));
  }

  /** The pose that all others disown, −1 for none: the largest studentised residual. */
  private int outlying(double[] residuals, RealMatrix hat) {
    int degrees = residuals.length - UNKNOWNS - 1;
    double limit = OUTLYING + OUTLYING_OF_FEW / degrees;
    double all = squares(residuals);
    int worst = -1;
    double most = limit * limit;
    for (int i = 0; i < residuals.length; i++) {
      double room = 1 - hat.getEntry(i, i);
      double own = residuals[i] * residuals[i] / Math.max(room, 1e-9);
      double error = poses.get(i).standardError() / sphere.radius();
      double others = Math.max((all - own) / degrees, error * error) + Double.MIN_NORMAL;
      if (own / others > most) {
        most = own / others;
        worst = i;
      }
    }
    return worst;
  }

  private Calibration calibration(double[] at, double[] errors, Calibration before, String date) {
    double r = sphere.radius();
    Triad c = sphere.centre();
    Triad scale = new Triad(at[0] / r, at[1] / r, at[2] / r);
    Triad misalignment = new Triad(at[3], at[4], at[5]);
    Triad bias = new Triad(c.x() + r * at[6], c.y() + r * at[7], c.z() + r * at[8]);
    Calibration bare = new Calibration(scale, misalignment, bias, CalibrationQuality.NONE, date);
    CalibrationQuality quality =
        new CalibrationQuality(
            new Triad(errors[0] / r, errors[1] / r, errors[2] / r),
            new Triad(errors[3], errors[4], errors[5]),
            new Triad(r * errors[6], r * errors[7], r * errors[8]),
            missG(before),
            missG(bare),
            poses.size());
    return new Calibration(scale, misalignment, bias, quality, date);
  }

  /** Root mean square of |a| − 1 over the poses, g. */
  private double missG(Calibration with) {
    double sum = 0;
    for (Pose pose : poses) {
      double miss = with.magnitude(pose) - 1;
      sum += miss * miss;
    }
    return Math.sqrt(sum / poses.size());
  }
}
