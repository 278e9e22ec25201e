package io.pitchwatch.attitude;

import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;

/**
 * How well some poses span the sphere.
 *
 * <p>|a| − 1 answers to the nine unknowns as (u, u², products of two), u the pose's direction. The
 * smallest eigenvalue λ of that information, summed over the poses, says how well the unknown that
 * is seen worst is seen: its standard error is that of a pose times 1/√λ. Twelve poses spread
 * evenly have 0.8; the open multi-pose recording's 38, most of them on five faces of a cube, 0.055.
 *
 * @param leastInformation the smallest eigenvalue
 * @param missing the way farthest from every pose
 * @param gapRad by how much, radians
 */
record PoseSpan(double leastInformation, Facing missing, double gapRad) {

  /** No unknown may be worse by more than 5 times than a pose: of 1 mg it then makes 0.3 deg. */
  private static final double ENOUGH = 1.0 / 25;

  /** Beyond this no pose is near one of the 26 ways: a hole in the sphere. */
  static final double LARGEST_GAP_RAD = Math.toRadians(65);

  static PoseSpan of(double[][] points) {
    RealMatrix rows = MatrixUtils.createRealMatrix(points.length, 9);
    UpVector[] ups = new UpVector[points.length];
    for (int i = 0; i < points.length; i++) {
      UpVector u = UpVector.of(points[i][0], points[i][1], points[i][2]);
      ups[i] = u;
      rows.setRow(
          i,
          new double[] {
            u.x(),
            u.y(),
            u.z(),
            u.x() * u.x(),
            u.y() * u.y(),
            u.z() * u.z(),
            u.x() * u.y(),
            u.x() * u.z(),
            u.y() * u.z()
          });
    }
    RealMatrix information = rows.transposeMultiply(rows);
    double[] eigenvalues = new EigenDecompositionSymmetric(information).getEigenvalues();
    double least = Double.POSITIVE_INFINITY;
    for (double value : eigenvalues) {
      least = Math.min(least, value);
    }
    Facing missing = missing(ups);
    return new PoseSpan(least, missing, gapRad(missing, ups));
  }

  /** The way farthest from every pose: of ways as far, a face rather than an edge or a corner. */
  static Facing missing(UpVector... ups) {
    Facing missing = Facing.ALL.get(0);
    double most = -1;
    for (Facing facing : Facing.ALL) {
      double gap = gapRad(facing, ups);
      if (gap > most + 1e-9) {
        most = gap;
        missing = facing;
      }
    }
    return missing;
  }

  /** Angle from a way to the pose nearest to it, radians; π without any pose. */
  static double gapRad(Facing facing, UpVector... ups) {
    double least = Math.PI;
    for (UpVector up : ups) {
      least = Math.min(least, facing.angleRad(up));
    }
    return least;
  }

  boolean enough() {
    return leastInformation >= ENOUGH && gapRad <= LARGEST_GAP_RAD;
  }
}
