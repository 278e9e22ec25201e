package io.pitchwatch.visit;

import io.pitchwatch.alarms.AlarmMemory;
import io.pitchwatch.alarms.AlarmOutcome;
import io.pitchwatch.attitude.Lean;
import io.pitchwatch.attitude.TemperatureDrift;
import io.pitchwatch.coach.Coach;
import io.pitchwatch.comfort.FridgeWatch;
import io.pitchwatch.comfort.Verdict;
import io.pitchwatch.floor.FloorReading;
import io.pitchwatch.levelling.Site;
import io.pitchwatch.settling.GroundReport;
import io.pitchwatch.settling.MinuteAverage;
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
  private final List<GroundUnderfoot> grounds = new ArrayList<>();
  private final MinuteAverage minutes = new MinuteAverage();
  private final Doors doors;
  private final SteadyVerdict verdicts;
  private final Alarming alarming;
  private final Advising advising;
  private VisitState state;
  private SiteReport site = SiteReport.UNNAMED;
  private boolean minuteOver;

  /**
   * A watch that goes on from where an earlier one left.
   *
   * @param coach the coach
   * @param sensors its sensors, in the order of their reports
   * @param state where the visit stands
   */
  public Watchkeeper(Coach coach, List<FittedSensor> sensors, VisitState state) {
    this.coach = coach;
    this.state = state;
    double toleranceRad = coach.levelling().toleranceRad(state.stay());
    sensors.forEach(it -> grounds.add(new GroundUnderfoot(coach, it.model(), toleranceRad)));
    this.doors = new Doors(coach);
    this.verdicts = new SteadyVerdict(coach);
    this.advising = new Advising(coach);
    this.alarming = new Alarming(coach, sensors.stream().map(FittedSensor::id).toList());
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
      double toleranceRad = coach.levelling().toleranceRad(state.stay());
      grounds.forEach(ground -> ground.tolerance(toleranceRad));
    }
  }

  /** The minute that ended with the last round, as its history wants it; empty if none did. */
  public Optional<MinuteValue> minute() {
    return minuteOver ? Optional.of(minutes.minute()) : Optional.empty();
  }

  /** What was learnt of a sensor's drift with temperature, along the floor's axes. */
  public TemperatureDrift drift(int sensor) {
    return grounds.get(sensor).drift();
  }

  /** Takes in what is known of a sensor's drift with temperature, along the floor's axes. */
  public void know(int sensor, TemperatureDrift drift) {
    grounds.get(sensor).know(drift);
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

  /** A sensor was zeroed or set up anew: leans of before compare with none from now on. */
  public void setUpAnew() {
    advising.forget();
  }

  /** The site for which there should be a plan and is none; empty while all is planned. */
  public Optional<Site> toPlan() {
    return advising.toPlan();
  }

  /** A plan is made. */
  public void planned(Planned made) {
    advising.take(made);
  }

  /** A site that cannot be planned: it is not asked for again, and the driver is told. */
  public void unplannable(Site failed) {
    advising.giveUp(failed);
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
   * @param sensors one for each sensor, in the order of the config
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
    double temperatureC = sensors.get(installation.believed()).temperatureC();
    minuteOver = minutes.accept(floor, temperatureC, nowNanos);
    GroundReport underfoot = underfoot(sensors, installation.believed(), nowNanos);
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

  /**
   * Each sensor has a watch of its own, fed with what it sees at its own temperature, so that
   * another can take over at any time.
   */
  private GroundReport underfoot(List<SensorReport> sensors, int believed, long nowNanos) {
    GroundReport said = GroundReport.UNKNOWN;
    for (int i = 0; i < grounds.size(); i++) {
      GroundReport each =
          grounds.get(i).round(sensors.get(i), state.phase() == Phase.UNDER_WAY, nowNanos);
      said = i == believed ? each : said;
    }
    return said;
  }
}
