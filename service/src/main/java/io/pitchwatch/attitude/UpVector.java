package io.pitchwatch.attitude;

/**
 * The unit vector that points up, seen from the coach (x forward, y left, z up).
 *
 * <p>At rest an accelerometer measures the specific force f = g·u. Roll φ and pitch θ follow as φ =
 * atan2(u_y, u_z) and θ = atan2(−u_x, √(u_y² + u_z²)): NXP application note AN3461, equations 25
 * and 26.
 *
 * @param x component along the coach, forward
 * @param y component across the coach, to the left
 * @param z component along the floor's normal, up
 */
public record UpVector(double x, double y, double z) {

  /** Up over a level floor. */
  public static final UpVector LEVEL = new UpVector(0, 0, 1);

  /**
   * The direction of a specific force.
   *
   * @param fx component forward, any unit
   * @param fy component to the left, same unit
   * @param fz component up, same unit
   * @throws IllegalArgumentException if the force has no direction: zero, NaN or infinite
   */
  public static UpVector of(double fx, double fy, double fz) {
    double norm = Math.sqrt(fx * fx + fy * fy + fz * fz);
    if (!(norm > 0) || Double.isInfinite(norm)) {
      throw new IllegalArgumentException(
          "force is (" + fx + ", " + fy + ", " + fz + "); it must be finite and not zero");
    }
    return new UpVector(fx / norm, fy / norm, fz / norm);
  }

  /** The up vector of a floor that leans by the given angles (inverse of {@link #lean()}). */
  public static UpVector of(Lean lean) {
    double cosPitch = Math.cos(lean.pitchRad());
    return new UpVector(
        -Math.sin(lean.pitchRad()),
        Math.sin(lean.rollRad()) * cosPitch,
        Math.cos(lean.rollRad()) * cosPitch);
  }

  /** Roll and pitch of the floor. */
  public Lean lean() {
    return new Lean(Math.atan2(y, z), Math.atan2(0.0 - x, Math.hypot(y, z)));
  }

  /** Angle between the floor's normal and the vertical, in radians, 0 to π. */
  public double totalRad() {
    return Math.atan2(Math.hypot(x, y), z);
  }

  /** Angle between this and another, radians, 0 to π; exact for small ones too. */
  public double angleRad(UpVector other) {
    double cx = y * other.z - z * other.y;
    double cy = z * other.x - x * other.z;
    double cz = x * other.y - y * other.x;
    return Math.atan2(
        Math.sqrt(cx * cx + cy * cy + cz * cz), x * other.x + y * other.y + z * other.z);
  }
}
