package io.pitchwatch.visit;

import io.pitchwatch.attitude.Lean;
import io.pitchwatch.attitude.TemperatureDrift;
import io.pitchwatch.floor.FloorReading;
import io.pitchwatch.floor.FloorState;

/**
 * How one sensor by itself sees the floor.
 *
 * @param seen its reading before drift with temperature is taken from it; unknown when it cannot be
 *     believed
 * @param drifted how much of that lean is drift by what is known of it, radians
 * @param drift what is known, along the floor's axes
 */
public record SensorSight(FloorReading seen, Lean drifted, TemperatureDrift drift) {

  private static final Lean NO_LEAN = new Lean(Double.NaN, Double.NaN);

  /** It sees nothing. */
  public static final SensorSight NONE =
      of(new FloorReading(FloorState.UNKNOWN, NO_LEAN, NO_LEAN, Double.NaN, Double.NaN, 0));

  /** It sees the floor without a drift that is known. */
  public static SensorSight of(FloorReading seen) {
    return new SensorSight(seen, Lean.LEVEL, TemperatureDrift.unknown(0));
  }
}
