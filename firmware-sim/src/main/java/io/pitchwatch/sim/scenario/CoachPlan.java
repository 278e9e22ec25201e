package io.pitchwatch.sim.scenario;

import io.pitchwatch.sim.world.Axle;
import io.pitchwatch.sim.world.Chassis;
import java.util.Map;
import java.util.Optional;

/**
 * A coach as a scenario needs it.
 *
 * @param chassis the mechanism
 * @param footprintM width that a stack must carry at each axle's stations, metres, by axle id
 * @param pieces what goes under tyres, by id
 * @param pads what goes under jacks, by id
 */
record CoachPlan(
    Chassis chassis,
    Map<String, Double> footprintM,
    Map<String, Slab> pieces,
    Map<String, Slab> pads) {

  /** Copies the maps. */
  CoachPlan {
    footprintM = Map.copyOf(footprintM);
    pieces = Map.copyOf(pieces);
    pads = Map.copyOf(pads);
  }

  /** Area on which a tyre stands bare, square metres. */
  double bareM2(String axle) {
    return chassis.axles().stream()
        .filter(each -> each.id().equals(axle))
        .mapToDouble(Axle::contactM2)
        .findFirst()
        .orElseThrow();
  }

  /** Area of a piece, square metres. */
  double pieceM2(String id) {
    return Optional.ofNullable(pieces.get(id)).map(Slab::areaM2).orElseThrow();
  }

  /**
   * A piece or pad.
   *
   * @param thicknessM metres
   * @param areaM2 on which one lies, square metres
   */
  record Slab(double thicknessM, double areaM2) {}
}
