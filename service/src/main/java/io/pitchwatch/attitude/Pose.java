package io.pitchwatch.attitude;

/**
 * What a chip measured while it was held still one way.
 *
 * @param x mean along its x axis, g or any other unit that all poses share
 * @param y mean along its y axis, same unit
 * @param z mean along its z axis, same unit
 * @param standardError one standard error of each of the three, same unit
 */
public record Pose(double x, double y, double z, double standardError) {

  /**
   * Checks the numbers.
   *
   * @throws IllegalArgumentException if one is not finite or the standard error is negative
   */
  public Pose {
    if (!Double.isFinite(x + y + z) || !(standardError >= 0)) {
      throw new IllegalArgumentException(
          "pose is (" + x + ", " + y + ", " + z + ") ± " + standardError + "; it must be finite");
    }
  }
}
