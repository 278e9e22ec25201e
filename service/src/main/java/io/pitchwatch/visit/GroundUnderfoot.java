package io.pitchwatch.visit;

import io.pitchwatch.coach.Coach;
import io.pitchwatch.comfort.FridgeLimits;
import io.pitchwatch.floor.FloorReading;
import io.pitchwatch.settling.GroundModel;
import io.pitchwatch.settling.GroundReport;
import io.pitchwatch.settling.GroundWatch;
import io.pitchwatch.settling.LeanLimit;
import io.pitchwatch.settling.MinuteAverage;
import io.pitchwatch.settling.MinuteValue;
import java.util.List;
import java.util.Optional;

/** Makes minutes of what the floor does, and watches the ground by them while the coach stands. */
final class GroundUnderfoot {

  private final MinuteAverage minutes = new MinuteAverage();
  private final GroundWatch watch;
  private GroundReport report = GroundReport.UNKNOWN;
  private boolean driven;
  private boolean minuteOver;

  GroundUnderfoot(Coach coach, GroundModel model, double toleranceRad) {
    List<LeanLimit> limits =
        coach.fridges().stream()
            .map(
                fridge ->
                    new LeanLimit(
                        fridge.id(),
                        FridgeLimits.rollLimitRad(fridge),
                        FridgeLimits.pitchLimitRad(fridge)))
            .toList();
    watch = new GroundWatch(model, limits, toleranceRad);
  }

  /** Takes a round's reading; the same report until a minute is over. */
  GroundReport round(FloorReading floor, double temperatureC, boolean underWay, long nowNanos) {
    minuteOver = minutes.accept(floor, temperatureC, nowNanos);
    if (underWay) {
      driven = true;
      report = GroundReport.UNKNOWN;
    } else if (driven) {
      driven = false;
      watch.restart();
    } else if (minuteOver) {
      report = watch.accept(minutes.minute());
    }
    return report;
  }

  /** The minute that ended with the last round; empty if none did. */
  Optional<MinuteValue> minute() {
    return minuteOver ? Optional.of(minutes.minute()) : Optional.empty();
  }

  void tolerance(double toleranceRad) {
    watch.tolerance(toleranceRad);
  }
}
