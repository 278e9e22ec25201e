package io.pitchwatch.attitude;

/**
 * What the sensor sees when the floor is level; plain numbers, so that it can be kept.
 *
 * @param up the up vector measured on a floor that a trusted level calls level, in the coach's axes
 *     as the declared {@link Mounting} gives them
 * @param standardErrorRad one standard error of each of its two angles, radians
 * @param temperatureC the chip's temperature then, degrees Celsius; NaN if the chip has none
 * @param date a label for people, such as an RFC 3339 instant; may be empty
 */
public record Zero(UpVector up, double standardErrorRad, double temperatureC, String date) {

  /**
   * The largest lean a zero may take away, radians. A board askew by more than the diagonal of a
   * cube (54.7 deg) would be nearer to another of the 24 mountings.
   */
  public static final double LARGEST_RAD = Math.toRadians(55);

  /** No zero taken yet: the chip's axes are believed as declared. */
  public static final Zero NONE = new Zero(UpVector.LEVEL, 0, Double.NaN, "");

  /**
   * Checks the zero.
   *
   * @throws IllegalArgumentException if up leans by more than {@link #LARGEST_RAD}, or the standard
   *     error is negative or NaN
   */
  public Zero {
    if (!(up.totalRad() <= LARGEST_RAD)) {
      throw new IllegalArgumentException(
          "up leans by "
              + Math.toDegrees(up.totalRad())
              + " deg from the declared mounting; at most 55 deg: another mounting fits better");
    }
    if (!(standardErrorRad >= 0)) {
      throw new IllegalArgumentException(
          "standardErrorRad is " + standardErrorRad + "; it must be 0 or more");
    }
  }

  /**
   * The zero from a reversal, the surveyor's test of a level: two readings on the same spot, the
   * coach turned end for end between them. Standing on a plane with the floor's normal b, the first
   * reading is u₁ and the second u₂ = 2(b·u₁)b − u₁; their sum lies along b whatever the slope.
   *
   * @param first the first reading, in the coach's axes as the declared mounting gives them
   * @param second the second reading, likewise
   * @param readingErrorRad one standard error of each reading, radians
   * @param temperatureC mean temperature of the chip, degrees Celsius; NaN if it has none
   * @param date a label for people
   * @throws IllegalArgumentException as the constructor does
   */
  public static Zero reversal(
      UpVector first, UpVector second, double readingErrorRad, double temperatureC, String date) {
    UpVector mean =
        UpVector.of(first.x() + second.x(), first.y() + second.y(), first.z() + second.z());
    return new Zero(mean, readingErrorRad / Math.sqrt(2), temperatureC, date);
  }

  /** The smallest rotation that makes the measured up vector (0, 0, 1). */
  public Rotation rotation() {
    return Rotation.between(up, UpVector.LEVEL);
  }
}
