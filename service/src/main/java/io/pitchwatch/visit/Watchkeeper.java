package io.pitchwatch.visit;

import io.pitchwatch.alarms.AlarmMemory;
import io.pitchwatch.alarms.AlarmOutcome;
import io.pitchwatch.attitude.Lean;
import io.pitchwatch.coach.Coach;
import io.pitchwatch.comfort.FridgeWatch;
import io.pitchwatch.comfort.Verdict;
import io.pitchwatch.floor.FloorReading;
import io.pitchwatch.levelling.Site;
import io.pitchwatch.settling.GroundModel;
import io.pitchwatch.settling.GroundReport;
import io.pitchwatch.settling.MinuteValue;
import io.pitchwatch.visit.Report.FridgeReport;
import io.pitchwatch.visit.Report.SensorReport;
import io.pitchwatch.visit.VisitEvent.FloorRead;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Keeps watch over one coach: turns what the sensors say and what the owner says into the report of
 * all that is known. Not thread-safe; time is passed in.
 */
public final class Watchkeeper {

  private final Coach coach;
  private final List<FridgeWatch> fridges = new ArrayList<>();
  private final GroundUnderfoot ground;
  private final Doors doors;
  private final SteadyVerdict verdicts;
  private final Alarming alarming;
  private final Advising advising;
  private VisitState state;
  private SiteReport site = SiteReport.UNNAMED;

  /**
   * A watch that goes on from where an earlier one left.
   *
   * @param coach the coach
   * @param sensorIds its sensors, in the order of their reports
   * @param model what to expect of the ground's and the sensor's drift
   * @param state where the visit stands
   */
  public Watchkeeper(Coach coach, List<String> sensorIds, GroundModel model, VisitState state) {
    this.coach = coach;
    this.state = state;
    this.ground = new GroundUnderfoot(coach, model, coach.levelling().toleranceRad(state.stay()));
    this.doors = new Doors(coach);
    this.verdicts = new SteadyVerdict(coach);
    this.advising = new Advising(coach);
    this.alarming = new Alarming(coach, sensorIds);
    coach.fridges().forEach(fridge -> fridges.add(new FridgeWatch(fridge)));
  }

  /** Where the visit stands. */
  public VisitState state() {
    return state;
  }

  /**
   * Takes what happened.
   *
   * @param nowNanos monotonic time, not before that of the call before
   */
  public void on(VisitEvent event, long nowNanos) {
    VisitState before = state;
    state = Visit.on(before, event, nowNanos);
    if (state.stay() != before.stay()) {
      ground.tolerance(coach.levelling().toleranceRad(state.stay()));
    }
  }

  /** The minute that ended with the last round, as its history wants it; empty if none did. */
  public Optional<MinuteValue> minute() {
    return ground.minute();
  }

  /** The site that reports tell of from now on. */
  public void site(SiteReport now) {
    site = now;
  }

  /** Somebody says that they know of an alert; {@code all} for every one that stands. */
  public AlarmOutcome acknowledge(String alertId) {
    return alarming.acknowledge(alertId);
  }

  /**
   * Somebody wants an alert to be quiet for a while.
   *
   * @param lastsNanos for how long; 0 ends it
   * @param nowNanos monotonic time
   */
  public AlarmOutcome shelve(String alertId, long lastsNanos, long nowNanos) {
    return alarming.shelve(alertId, lastsNanos, nowNanos);
  }

  /** The site for which there should be a plan and is none; empty while all is planned. */
  public Optional<Site> toPlan() {
    return advising.toPlan();
  }

  /** A plan is made. */
  public void planned(Planned made) {
    advising.take(made);
  }

  /** Grows whenever an alarm changed, so that it is known when to keep them. */
  public int alarmChanges() {
    return alarming.changes();
  }

  /** What must be kept of the alarms, by their ids. */
  public Map<String, AlarmMemory> rememberAlarms(long nowNanos) {
    return alarming.remember(nowNanos);
  }

  /** Goes on with the alarms of before a restart. */
  public void recallAlarms(Map<String, AlarmMemory> memories, long nowNanos) {
    alarming.recall(memories, nowNanos);
  }

  /**
   * One round: what is known now, of one sensor as it is built in.
   *
   * @param floor the floor as the believed sensor reads it
   * @param sensors one for each sensor
   * @param nowNanos monotonic time, not before that of the round before
   */
  public Report round(FloorReading floor, List<SensorReport> sensors, long nowNanos) {
    return round(floor, sensors, Installation.PLAIN, nowNanos);
  }

  /**
   * One round: what is known now.
   *
   * @param floor the floor as the believed sensor reads it
   * @param sensors one for each sensor, the believed one first
   * @param installation what is known of them as they are built in
   * @param nowNanos monotonic time, not before that of the round before
   */
  public Report round(
      FloorReading floor, List<SensorReport> sensors, Installation installation, long nowNanos) {
    on(new FloorRead(floor.state()), nowNanos);
    Lean lean = floor.lean();
    List<FridgeReport> fridgeReports = new ArrayList<>(fridges.size());
    for (FridgeWatch fridge : fridges) {
      fridge.accept(lean, state.phase() == Phase.UNDER_WAY, nowNanos);
      fridgeReports.add(
          new FridgeReport(fridge.fridge().id(), fridge.marginRad(), fridge.outsideMinutes()));
    }
    Verdict verdict = verdicts.round(floor, state, nowNanos);
    double temperatureC = sensors.isEmpty() ? Double.NaN : sensors.get(0).temperatureC();
    GroundReport underfoot =
        ground.round(floor, temperatureC, state.phase() == Phase.UNDER_WAY, nowNanos);
    Alarming.Known known = new Alarming.Known(state, fridges, underfoot, installation);
    return new Report(
        nowNanos,
        floor,
        verdict,
        fridgeReports,
        sensors,
        state.stay(),
        state.surface(),
        state.phase(),
        state.laid(),
        underfoot,
        doors.round(floor),
        advising.round(floor, state),
        alarming.round(floor, sensors, known, nowNanos),
        installation,
        site);
  }
}
