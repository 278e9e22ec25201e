package io.pitchwatch.mqtt.tree;

import io.pitchwatch.attitude.Lean;
import io.pitchwatch.comfort.Verdict;
import io.pitchwatch.floor.FloorReading;
import io.pitchwatch.floor.FloorState;
import io.pitchwatch.settling.GroundReport;
import io.pitchwatch.visit.Advice;
import io.pitchwatch.visit.Health;
import io.pitchwatch.visit.Phase;
import io.pitchwatch.visit.Report;
import io.pitchwatch.visit.Report.FridgeReport;
import io.pitchwatch.visit.Report.SensorReport;
import io.pitchwatch.visit.SensorSight;
import java.util.List;
import java.util.concurrent.TimeUnit;

/**
 * The last guard against old news: whatever stopped, sensor, core or wiring, what rests on samples
 * is not said of a report whose last good sample is too old.
 */
public final class Freshness {

  /** Ten seconds are promised; two of them are for the way to the broker. */
  public static final long LIMIT_NANOS = TimeUnit.SECONDS.toNanos(8);

  private static final Lean NO_LEAN = new Lean(Double.NaN, Double.NaN);

  private Freshness() {}

  /** The report itself while its samples are fresh, else what of it still holds. */
  public static Report of(Report report, long nowNanos) {
    long ageNanos = nowNanos - report.floor().takenAtNanos();
    if (ageNanos <= LIMIT_NANOS) {
      return report;
    }
    String reason = "no good sample for " + TimeUnit.NANOSECONDS.toSeconds(ageNanos) + " s";
    List<SensorReport> sensors =
        report.sensors().stream()
            .map(s -> s.health() == Health.FAILED ? s : failed(s.id(), reason))
            .toList();
    return unknown(report, sensors);
  }

  /** What still holds when nothing is sampled any more. */
  public static Report stopped(Report report) {
    return unknown(report, List.of());
  }

  /** How closely the report's values are watched. */
  public static Pace pace(Report report) {
    FloorState state = report.floor().state();
    boolean live =
        report.phase() == Phase.ARRIVING
            || state == FloorState.MOVING
            || state == FloorState.UNSETTLED;
    return live ? Pace.LIVE : Pace.PARKED;
  }

  private static SensorReport failed(String id, String reason) {
    return new SensorReport(id, Health.FAILED, reason, Double.NaN, Double.NaN, SensorSight.NONE);
  }

  private static Report unknown(Report report, List<SensorReport> sensors) {
    FloorReading floor =
        new FloorReading(
            FloorState.UNKNOWN,
            NO_LEAN,
            NO_LEAN,
            Double.NaN,
            Double.NaN,
            report.floor().takenAtNanos());
    List<FridgeReport> fridges =
        report.fridges().stream()
            .map(f -> new FridgeReport(f.id(), Double.NaN, Double.NaN))
            .toList();
    return new Report(
        report.atNanos(),
        floor,
        Verdict.UNKNOWN,
        fridges,
        sensors,
        report.stay(),
        report.surface(),
        report.phase(),
        report.laid(),
        GroundReport.UNKNOWN,
        List.of(),
        Advice.NONE,
        report.alerts(),
        report.installation().withoutSamples(),
        report.site());
  }
}
