package io.pitchwatch.coach;

import java.util.Optional;

/**
 * An absorption fridge and its limits of lean.
 *
 * @param id the owner's name for it
 * @param sideToSideRad limit side to side, radians
 * @param frontToBackRad limit front to back, radians
 * @param faces the way its door faces, when the limits lie along the appliance's own axes; empty
 *     when they lie along the coach's
 */
public record Fridge(
    String id, double sideToSideRad, double frontToBackRad, Optional<Direction> faces) {

  /** Checks every figure. */
  public Fridge {
    Require.id(id);
    Require.positive("side-to-side", sideToSideRad);
    Require.positive("front-to-back", frontToBackRad);
  }
}
