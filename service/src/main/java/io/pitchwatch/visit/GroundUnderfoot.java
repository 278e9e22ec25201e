package io.pitchwatch.visit;

import io.pitchwatch.attitude.TemperatureDrift;
import io.pitchwatch.coach.Coach;
import io.pitchwatch.comfort.FridgeLimits;
import io.pitchwatch.settling.GroundModel;
import io.pitchwatch.settling.GroundReport;
import io.pitchwatch.settling.GroundWatch;
import io.pitchwatch.settling.LeanLimit;
import io.pitchwatch.settling.MinuteAverage;
import io.pitchwatch.visit.Report.SensorReport;
import java.util.List;

/** Makes minutes of what one sensor sees, and watches the ground by them while the coach stands. */
final class GroundUnderfoot {

  private final MinuteAverage minutes = new MinuteAverage();
  private final GroundWatch watch;
  private GroundReport report = GroundReport.UNKNOWN;
  private boolean driven;

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

  /** Takes a round's report of the sensor; the same ground report until a minute is over. */
  GroundReport round(SensorReport sensor, boolean underWay, long nowNanos) {
    boolean minuteOver = minutes.accept(sensor.sight().seen(), sensor.temperatureC(), nowNanos);
    if (underWay) {
      driven = true;
      report = GroundReport.UNKNOWN;
    } else if (driven) {
      driven = false;
      watch.restart();
    } else if (minuteOver) {
      watch.drifted(sensor.sight().drifted());
      report = watch.accept(minutes.minute());
    }
    return report;
  }

  /** What the watch has learnt of the sensor's drift, along the floor's axes. */
  TemperatureDrift drift() {
    return watch.drift();
  }

  /** Takes in what is known of the sensor's drift, along the floor's axes. */
  void know(TemperatureDrift drift) {
    watch.know(drift);
  }

  void tolerance(double toleranceRad) {
    watch.tolerance(toleranceRad);
  }
}
