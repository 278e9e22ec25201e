package io.pitchwatch.floor;

import io.pitchwatch.attitude.Lean;
import java.util.function.UnaryOperator;

/**
 * What the filter knows of the floor at one instant.
 *
 * @param state rest or motion
 * @param live the quick estimate, radians; NaN in both angles when unknown
 * @param steady the best estimate since the coach came to rest, radians; NaN when there is none
 * @param uncertaintyRad one standard error of {@code steady} when steady, else of {@code live},
 *     radians, the larger of the two angles'; NaN when unknown
 * @param noiseRad spread of single samples as tilt, radians, one standard deviation; NaN if unknown
 * @param takenAtNanos monotonic time of the last good sample
 */
public record FloorReading(
    FloorState state,
    Lean live,
    Lean steady,
    double uncertaintyRad,
    double noiseRad,
    long takenAtNanos) {

  /** The same with something taken from its leans, and so much more error, radians. */
  public FloorReading corrected(UnaryOperator<Lean> by, double errorRad) {
    return new FloorReading(
        state,
        by.apply(live),
        by.apply(steady),
        Math.hypot(uncertaintyRad, errorRad),
        noiseRad,
        takenAtNanos);
  }

  /** The figure to show: the steady estimate when there is one, else the live one. */
  public Lean lean() {
    return state == FloorState.STEADY ? steady : live;
  }
}
