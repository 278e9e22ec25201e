package io.pitchwatch.comfort;

import io.pitchwatch.attitude.Lean;
import io.pitchwatch.coach.Fridge;
import io.pitchwatch.floor.FloorState;
import java.util.List;
import java.util.Optional;

/**
 * How a lean compares with what the stay and the fridges ask, from that lean alone: no memory, no
 * hysteresis.
 */
public final class Judgement {

  /** Limits that stand in where no fridge is described: common practice, no source. */
  public static final Fridge COMMON_PRACTICE =
      new Fridge("common-practice", Math.toRadians(3), Math.toRadians(6), Optional.empty());

  private Judgement() {}

  /**
   * The verdict on a lean.
   *
   * <p>A fridge past a limit is {@code OUTSIDE} whatever the tolerance. Else |roll| and |pitch|
   * both within the tolerance are {@code GOOD}, and anything more is {@code NEAR_ENOUGH}; without a
   * fridge, {@link #COMMON_PRACTICE} decides where near enough ends.
   *
   * @param state what the floor does; moving and unknown have no verdict
   * @param lean the floor's lean, radians; NaN in either angle has no verdict
   * @param toleranceRad what the stay allows, radians
   * @param fridges the fridges of the coach; may be empty
   */
  public static Verdict of(FloorState state, Lean lean, double toleranceRad, List<Fridge> fridges) {
    if (state == FloorState.MOVING || state == FloorState.UNKNOWN || !lean.isKnown()) {
      return Verdict.UNKNOWN;
    }
    for (int i = 0; i < fridges.size(); i++) {
      if (FridgeLimits.marginRad(fridges.get(i), lean) < 0) {
        return Verdict.OUTSIDE;
      }
    }
    if (lean.largestRad() <= toleranceRad) {
      return Verdict.GOOD;
    }
    boolean outside = fridges.isEmpty() && FridgeLimits.marginRad(COMMON_PRACTICE, lean) < 0;
    return outside ? Verdict.OUTSIDE : Verdict.NEAR_ENOUGH;
  }
}
