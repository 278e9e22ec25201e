package io.pitchwatch.attitude;

/**
 * A proper rotation: takes the components of a vector in one set of axes to those in another.
 * Immutable.
 *
 * <p>Stored as the 3 × 3 direction cosine matrix R, v' = R·v.
 */
public final class Rotation {

  /** Leaves every vector as it is. */
  public static final Rotation IDENTITY = new Rotation(1, 0, 0, 0, 1, 0, 0, 0, 1);

  private static final double ORTHONORMAL_TOLERANCE = 1e-6;

  /** Below this sine of the angle between them two directions do not fix a rotation. */
  private static final double PARALLEL_SINE = 1e-6;

  private final double xx;
  private final double xy;
  private final double xz;
  private final double yx;
  private final double yy;
  private final double yz;
  private final double zx;
  private final double zy;
  private final double zz;

  private Rotation(double... r) {
    xx = r[0];
    xy = r[1];
    xz = r[2];
    yx = r[3];
    yy = r[4];
    yz = r[5];
    zx = r[6];
    zy = r[7];
    zz = r[8];
  }

  /**
   * A rotation given by its matrix, as {@link #rows()} returns it.
   *
   * @param rows nine elements, row by row
   * @throws IllegalArgumentException if the matrix is not orthonormal within 1e-6 or mirrors
   */
  public static Rotation ofRows(double... rows) {
    if (rows.length != 9) {
      throw new IllegalArgumentException("rows has " + rows.length + " elements; it must have 9");
    }
    for (int i = 0; i < 3; i++) {
      for (int j = i; j < 3; j++) {
        double dot = 0;
        for (int k = 0; k < 3; k++) {
          dot += rows[3 * i + k] * rows[3 * j + k];
        }
        if (!(Math.abs(dot - (i == j ? 1 : 0)) <= ORTHONORMAL_TOLERANCE)) {
          throw new IllegalArgumentException(
              "rows " + i + " and " + j + " have the scalar product " + dot + "; not a rotation");
        }
      }
    }
    Rotation r = new Rotation(rows);
    if (r.determinant() < 0) {
      throw new IllegalArgumentException("rows has determinant -1, a mirror; it must be 1");
    }
    return r;
  }

  /**
   * A turn of the axes about up: heading is taken away by the given angle.
   *
   * @param yawRad angle in radians by which vectors turn to the left, seen from above
   */
  public static Rotation aboutUp(double yawRad) {
    double c = Math.cos(yawRad);
    double s = Math.sin(yawRad);
    return new Rotation(c, -s, 0, s, c, 0, 0, 0, 1);
  }

  /**
   * The smallest rotation that takes one direction to another: R = I + [v]× + [v]×²/(1 + c), v the
   * vector and c the scalar product of the two (Rodrigues' formula).
   *
   * @throws IllegalArgumentException if they are opposite within 1e-6 rad: the axis is then open
   */
  public static Rotation between(UpVector from, UpVector to) {
    double c = from.x() * to.x() + from.y() * to.y() + from.z() * to.z();
    if (!(1 + c > PARALLEL_SINE * PARALLEL_SINE / 2)) {
      throw new IllegalArgumentException(
          "from is " + from + " and to is " + to + "; they must not be opposite");
    }
    double vx = from.y() * to.z() - from.z() * to.y();
    double vy = from.z() * to.x() - from.x() * to.z();
    double vz = from.x() * to.y() - from.y() * to.x();
    double h = 1 / (1 + c);
    return new Rotation(
        c + h * vx * vx,
        h * vx * vy - vz,
        h * vx * vz + vy,
        h * vx * vy + vz,
        c + h * vy * vy,
        h * vy * vz - vx,
        h * vx * vz - vy,
        h * vy * vz + vx,
        c + h * vz * vz);
  }

  /**
   * The rotation fixed by two directions known in both sets of axes (TRIAD; H. D. Black, AIAA
   * Journal 2 (1964), from memory). The first pair is matched exactly, the second as far as the
   * angle between the two allows.
   *
   * @param first the first direction in the old axes
   * @param firstTo the first direction in the new axes
   * @param second the second direction in the old axes
   * @param secondTo the second direction in the new axes
   * @throws IllegalArgumentException if either pair is parallel within 1e-6 rad
   */
  public static Rotation triad(
      UpVector first, UpVector firstTo, UpVector second, UpVector secondTo) {
    return triadFrame(firstTo, secondTo).after(triadFrame(first, second).inverse());
  }

  private static Rotation triadFrame(UpVector a, UpVector b) {
    double nx = a.y() * b.z() - a.z() * b.y();
    double ny = a.z() * b.x() - a.x() * b.z();
    double nz = a.x() * b.y() - a.y() * b.x();
    double norm = Math.sqrt(nx * nx + ny * ny + nz * nz);
    if (!(norm > PARALLEL_SINE)) {
      throw new IllegalArgumentException(
          "directions are " + a + " and " + b + "; they must not be parallel");
    }
    nx /= norm;
    ny /= norm;
    nz /= norm;
    return new Rotation(
        a.x(),
        nx,
        a.y() * nz - a.z() * ny,
        a.y(),
        ny,
        a.z() * nx - a.x() * nz,
        a.z(),
        nz,
        a.x() * ny - a.y() * nx);
  }

  /** This rotation after another: v' = this·(first·v). */
  public Rotation after(Rotation first) {
    double[] a = rows();
    double[] b = first.rows();
    double[] product = new double[9];
    for (int i = 0; i < 9; i++) {
      int row = i - i % 3;
      int column = i % 3;
      product[i] = a[row] * b[column] + a[row + 1] * b[column + 3] + a[row + 2] * b[column + 6];
    }
    return new Rotation(product);
  }

  /** The way back. */
  public Rotation inverse() {
    return new Rotation(xx, yx, zx, xy, yy, zy, xz, yz, zz);
  }

  /**
   * Rotates a vector without allocating.
   *
   * @param x first component, any unit; NaN goes through to the result
   * @param y second component, same unit
   * @param z third component, same unit
   * @param out receives the three rotated components
   */
  public void apply(double x, double y, double z, double[] out) {
    out[0] = xx * x + xy * y + xz * z;
    out[1] = yx * x + yy * y + yz * z;
    out[2] = zx * x + zy * y + zz * z;
  }

  /** Rotates a direction. */
  public UpVector apply(UpVector u) {
    return UpVector.of(
        xx * u.x() + xy * u.y() + xz * u.z(),
        yx * u.x() + yy * u.y() + yz * u.z(),
        zx * u.x() + zy * u.y() + zz * u.z());
  }

  /** Angle of the rotation about its axis, radians, 0 to π. */
  public double angleRad() {
    double twiceSine = Math.sqrt(sq(zy - yz) + sq(xz - zx) + sq(yx - xy));
    return Math.atan2(twiceSine, xx + yy + zz - 1);
  }

  /** The nine elements of the matrix, row by row. */
  public double[] rows() {
    return new double[] {xx, xy, xz, yx, yy, yz, zx, zy, zz};
  }

  private double determinant() {
    return xx * (yy * zz - yz * zy) - xy * (yx * zz - yz * zx) + xz * (yx * zy - yy * zx);
  }

  private static double sq(double value) {
    return value * value;
  }
}
