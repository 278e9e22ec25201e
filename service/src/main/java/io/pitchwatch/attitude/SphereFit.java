package io.pitchwatch.attitude;

import java.util.List;
import java.util.Optional;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * The sphere nearest to some poses: x² + y² + z² = 2c·(x, y, z) + r² − |c|², linear in c and in the
 * last term. Where to begin, and what to measure in.
 *
 * @param centre raw units
 * @param radius raw units, above 0
 */
record SphereFit(Triad centre, double radius) {

  static Optional<SphereFit> of(List<Pose> poses) {
    RealMatrix rows = MatrixUtils.createRealMatrix(poses.size(), 4);
    double[] squares = new double[poses.size()];
    // Raw counts may lie far from their zero: first to their mean, lest digits are lost.
    Triad mean = mean(poses);
    for (int i = 0; i < poses.size(); i++) {
      double[] p = from(mean, poses.get(i));
      rows.setRow(i, new double[] {2 * p[0], 2 * p[1], 2 * p[2], 1});
      squares[i] = p[0] * p[0] + p[1] * p[1] + p[2] * p[2];
    }
    try {
      RealVector c =
          new QRDecomposition(rows).getSolver().solve(MatrixUtils.createRealVector(squares));
      double x = c.getEntry(0);
      double y = c.getEntry(1);
      double z = c.getEntry(2);
      double radius = Math.sqrt(c.getEntry(3) + x * x + y * y + z * z);
      Triad centre = new Triad(mean.x() + x, mean.y() + y, mean.z() + z);
      return radius > 0 && Double.isFinite(radius)
          ? Optional.of(new SphereFit(centre, radius))
          : Optional.empty();
    } catch (MathRuntimeException e) {
      // All in one plane, or all the same.
      return Optional.empty();
    }
  }

  private static Triad mean(List<Pose> poses) {
    double x = 0;
    double y = 0;
    double z = 0;
    for (Pose pose : poses) {
      x += pose.x() / poses.size();
      y += pose.y() / poses.size();
      z += pose.z() / poses.size();
    }
    return new Triad(x, y, z);
  }

  private static double[] from(Triad origin, Pose pose) {
    return new double[] {pose.x() - origin.x(), pose.y() - origin.y(), pose.z() - origin.z()};
  }

  /** A pose with this sphere as the unit sphere about the origin. */
  double[] unit(Pose pose) {
    double[] p = from(centre, pose);
    return new double[] {p[0] / radius, p[1] / radius, p[2] / radius};
  }
}
