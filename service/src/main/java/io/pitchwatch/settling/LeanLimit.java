package io.pitchwatch.settling;

/**
 * A lean that should not be passed.
 *
 * @param name what is at its limit there, for people: "fridge galley"
 * @param rollRad limit of |roll|, radians
 * @param pitchRad limit of |pitch|, radians
 */
public record LeanLimit(String name, double rollRad, double pitchRad) {

  /**
   * Checks the figures.
   *
   * @throws IllegalArgumentException if a limit is not more than 0
   */
  public LeanLimit {
    if (!(rollRad > 0) || !(pitchRad > 0)) {
      throw new IllegalArgumentException(
          "limits of " + name + " are " + rollRad + " and " + pitchRad + "; each must exceed 0");
    }
  }
}
