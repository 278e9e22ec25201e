package io.pitchwatch.floor;

import io.pitchwatch.attitude.Lean;
import java.util.function.UnaryOperator;

/**
 * What the filter knows of the floor at one instant.
 *
 * @param state rest or motion
 * @param live the quick estimate, radians; NaN in both angles when unknown
 * @param steady the best estimate since the coach came to rest, radians; NaN when there is none
 * @param error one standard error of each angle of {@code steady} when steady, else of {@code
 *     live}, radians: two of them hold 95 of a hundred errors; NaN when unknown, as in the first
 *     second
 * @param systematicRad what of either averaging cannot remove, and readings of one hour share
 * @param noiseRad spread of single samples as tilt, radians, one standard deviation; NaN if unknown
 * @param takenAtNanos monotonic time of the last good sample
 */
public record FloorReading(
    FloorState state,
    Lean live,
    Lean steady,
    Lean error,
    double systematicRad,
    double noiseRad,
    long takenAtNanos) {

  /** A reading both of whose angles are equally sure, to one standard error, radians. */
  public FloorReading(
      FloorState state,
      Lean live,
      Lean steady,
      double uncertaintyRad,
      double noiseRad,
      long takenAtNanos) {
    this(state, live, steady, new Lean(uncertaintyRad, uncertaintyRad), 0, noiseRad, takenAtNanos);
  }

  /** The larger of the two angles' standard errors, radians; NaN when unknown. */
  public double uncertaintyRad() {
    return Math.max(error.rollRad(), error.pitchRad());
  }

  /** The larger of the two angles' standard errors beside an earlier reading's, radians. */
  public double randomRad() {
    double all = uncertaintyRad();
    return Math.sqrt(Math.max(0, all * all - systematicRad * systematicRad));
  }

  /** The same with something taken from its leans, and so much more error, radians. */
  public FloorReading corrected(UnaryOperator<Lean> by, double errorRad) {
    return new FloorReading(
        state,
        by.apply(live),
        by.apply(steady),
        withMore(error, errorRad),
        Math.hypot(systematicRad, errorRad),
        noiseRad,
        takenAtNanos);
  }

  private static Lean withMore(Lean error, double errorRad) {
    return new Lean(Math.hypot(error.rollRad(), errorRad), Math.hypot(error.pitchRad(), errorRad));
  }

  /**
   * Whether the coach is known to stand. Right after the start it is not, though it is not known to
   * move either: what it leans by then may be made of braking.
   */
  public boolean isAtRest() {
    boolean still = state == FloorState.STEADY || state == FloorState.UNSETTLED;
    return still && steady.isKnown();
  }

  /** The figure to show: the steady estimate when there is one, else the live one. */
  public Lean lean() {
    return state == FloorState.STEADY ? steady : live;
  }
}
