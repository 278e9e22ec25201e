package io.pitchwatch.command;

import io.pitchwatch.visit.Report;
import io.pitchwatch.visit.Report.SensorReport;
import io.pitchwatch.visit.Watchkeeper;
import java.util.List;
import java.util.function.Consumer;

/**
 * The rounds of the service: fetch what the sensors have, and five times a second say all that is
 * known. It has no thread and no clock, so that the same rounds run live and on virtual time.
 */
final class Rounds {

  /** Five reports a second keep up with a driver who creeps onto blocks. */
  static final long REPORT_NANOS = 200_000_000L;

  private final Sensors sensors;
  private final Watchkeeper keeper;
  private final Consumer<Report> outlet;
  private long reportDueNanos;
  private boolean begun;

  Rounds(Sensors sensors, Watchkeeper keeper, Consumer<Report> outlet) {
    this.sensors = sensors;
    this.keeper = keeper;
    this.outlet = outlet;
  }

  /**
   * Does what is due.
   *
   * @return monotonic time at which to call again
   */
  long step(long nowNanos) {
    if (!begun) {
      begun = true;
      reportDueNanos = nowNanos;
    }
    long dueNanos = sensors.poll(nowNanos) - nowNanos;
    if (nowNanos - reportDueNanos >= 0) {
      outlet.accept(report(nowNanos));
      // After a hold-up the next report comes a whole period later, not a burst of them.
      reportDueNanos = Math.max(reportDueNanos + REPORT_NANOS, nowNanos + REPORT_NANOS / 2);
    }
    return nowNanos + Math.max(0, Math.min(dueNanos, reportDueNanos - nowNanos));
  }

  private Report report(long nowNanos) {
    List<SensorReport> reports = sensors.reports(nowNanos);
    return keeper.round(sensors.floor(nowNanos), reports, sensors.installation(nowNanos), nowNanos);
  }
}
