package io.pitchwatch.command;

import io.pitchwatch.mqtt.homie.LogLevel;
import io.pitchwatch.store.Kept;
import io.pitchwatch.visit.Phase;
import io.pitchwatch.visit.Report;
import io.pitchwatch.visit.Report.SensorReport;
import io.pitchwatch.visit.Watchkeeper;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** Sends each report where it belongs, and keeps of it what must last. */
final class Outlet implements Consumer<Report> {

  private final Watchkeeper keeper;
  private final Kept kept;
  private final Historian historian;
  private final SiteLog sites;
  private final Chronicle chronicle;
  private final Audience audience;
  private final Map<String, String> troubles = new HashMap<>();
  private @Nullable Phase phase;
  private int alarmChanges;

  Outlet(Watch watch, Chronicle chronicle, Audience audience) {
    this.keeper = watch.keeper();
    this.kept = watch.kept();
    this.historian = watch.historian();
    this.sites = watch.sites();
    this.chronicle = chronicle;
    this.audience = audience;
  }

  @Override
  public void accept(Report report) {
    if (phase != report.phase()) {
      phase = report.phase();
      kept.keepVisit(keeper.state());
    }
    if (alarmChanges != keeper.alarmChanges()) {
      alarmChanges = keeper.alarmChanges();
      kept.keepAlarms(keeper.rememberAlarms(report.atNanos()));
    }
    historian.heard(report);
    sites.hear(report);
    chronicle.take(report, keeper.minute());
    report.sensors().forEach(this::tellHealth);
    audience.hear(report);
  }

  /** What is wrong with a sensor is said once, when it begins, and that it is over. */
  private void tellHealth(SensorReport sensor) {
    String said = troubles.getOrDefault(sensor.id(), "");
    if (!said.equals(sensor.reason())) {
      troubles.put(sensor.id(), sensor.reason());
      boolean well = sensor.reason().isEmpty();
      audience.say(
          well ? LogLevel.INFO : LogLevel.WARN,
          "sensor " + sensor.id() + ": " + (well ? "good again" : sensor.reason()));
    }
  }
}
