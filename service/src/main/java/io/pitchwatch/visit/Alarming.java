package io.pitchwatch.visit;

import io.pitchwatch.alarms.AlarmMemory;
import io.pitchwatch.alarms.AlarmOutcome;
import io.pitchwatch.alarms.AlarmState;
import io.pitchwatch.alarms.AlarmWatch;
import io.pitchwatch.alarms.SensorTrust;
import io.pitchwatch.alarms.Situation;
import io.pitchwatch.alarms.StandingAlarm;
import io.pitchwatch.coach.Coach;
import io.pitchwatch.comfort.FridgeWatch;
import io.pitchwatch.floor.FloorReading;
import io.pitchwatch.settling.GroundReport;
import io.pitchwatch.visit.Report.AlertReport;
import io.pitchwatch.visit.Report.SensorReport;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The alarms of a visit: shows them what is known, and their texts to whoever reads reports. */
final class Alarming {

  private final Coach coach;
  private final AlarmWatch watch;
  private List<StandingAlarm> standing = List.of();
  private List<AlertReport> alerts = List.of();
  private int changes;

  Alarming(Coach coach, List<String> sensorIds) {
    this.coach = coach;
    this.watch = new AlarmWatch(coach, sensorIds);
  }

  /** One round; the same list while nothing changes. */
  List<AlertReport> round(
      FloorReading floor, List<SensorReport> sensors, Known known, long nowNanos) {
    VisitState state = known.state();
    Situation situation =
        new Situation(
            floor.lean(),
            2 * floor.uncertaintyRad(),
            state.phase() == Phase.UNDER_WAY,
            coach.levelling().toleranceRad(state.stay()),
            known.fridges(),
            known.ground(),
            trusts(sensors),
            known.installation().twistRad(),
            known.installation().zeroAgeDays(),
            known.installation().zeroDoubt(),
            state.laid().pieces());
    List<StandingAlarm> now = watch.round(situation, nowNanos);
    if (now != standing) {
      standing = now;
      alerts = alerts(now);
      changes++;
    }
    return alerts;
  }

  /**
   * What a round knows beside its readings.
   *
   * @param state where the visit stands
   * @param fridges in the coach's order
   * @param ground what is known of it
   * @param installation what is known of the sensors as they are built in
   */
  record Known(
      VisitState state,
      List<FridgeWatch> fridges,
      GroundReport ground,
      Installation installation) {}

  /** Grows whenever an alarm changed, so that it is known when to keep them. */
  int changes() {
    return changes;
  }

  AlarmOutcome acknowledge(String id) {
    if (!id.equals("all")) {
      return watch.acknowledge(id);
    }
    for (StandingAlarm alarm : standing) {
      watch.acknowledge(alarm.id());
    }
    return new AlarmOutcome.Done();
  }

  AlarmOutcome shelve(String id, long lastsNanos, long nowNanos) {
    return watch.shelve(id, lastsNanos, nowNanos);
  }

  Map<String, AlarmMemory> remember(long nowNanos) {
    return watch.remember(nowNanos);
  }

  void recall(Map<String, AlarmMemory> memories, long nowNanos) {
    // No clock can tell how long nobody watched: the board may have been without power.
    watch.recall(memories, 0, nowNanos);
  }

  private static List<SensorTrust> trusts(List<SensorReport> sensors) {
    List<SensorTrust> trusts = new ArrayList<>(sensors.size());
    for (SensorReport sensor : sensors) {
      SensorTrust.Trust trust =
          switch (sensor.health()) {
            case GOOD -> SensorTrust.Trust.GOOD;
            case DOUBTFUL -> SensorTrust.Trust.DOUBTFUL;
            case FAILED -> SensorTrust.Trust.LOST;
          };
      trusts.add(new SensorTrust(sensor.id(), trust, sensor.reason()));
    }
    return trusts;
  }

  private static List<AlertReport> alerts(List<StandingAlarm> standing) {
    List<AlertReport> alerts = new ArrayList<>();
    for (StandingAlarm alarm : standing) {
      if (alarm.state() != AlarmState.SHELVED) {
        alerts.add(new AlertReport(alarm.id(), alarm.text(), alarm.sinceNanos()));
      }
    }
    return List.copyOf(alerts);
  }
}
