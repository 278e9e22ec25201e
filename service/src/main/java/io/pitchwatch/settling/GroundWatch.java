package io.pitchwatch.settling;

import io.pitchwatch.attitude.Lean;
import io.pitchwatch.attitude.TemperatureDrift;
import io.pitchwatch.settling.GroundEvent.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Watches the ground under a parked coach, minute by minute.
 *
 * <p>Minutes pass through a window that looks for changes which come at once, are gathered in
 * blocks of ten, and go to one watch for each angle. What it is all made of, and the figures it
 * reaches, stand in docs/physics.md, section 6, and docs/figures/settling.md.
 *
 * <p>It sees what one sensor sees, drift with temperature included, and learns that drift with its
 * error while it watches.
 *
 * <p>It answers from the first hour on and goes on for months in bounded memory. After a restart it
 * knows again what it knew when the stored minutes of the last days are passed to {@link #accept}
 * once more. Deterministic; not thread-safe.
 */
public final class GroundWatch {

  /** The name of the limit that the stay's tolerance makes. */
  public static final String TOLERANCE = "tolerance";

  /** A change across motion that is smaller than this was no re-blocking, radians. */
  private static final double LEAST_MOVED_RAD = Math.toRadians(0.03);

  /** A change across motion from this on makes the coach stand anew, radians. */
  private static final double ANEW_RAD = Math.toRadians(0.2);

  /** How well the size of an event is known, radians. */
  private static final double EVENT_ERROR_RAD = Math.toRadians(0.015);

  private final List<LeanLimit> fridges;
  private final List<LeanLimit> limits;
  private final AxisWatch roll;
  private final AxisWatch pitch;
  private final Forecast forecast;
  private final StepWindow window = new StepWindow();
  private final Block block = new Block();
  private double rollBeforeRad = Double.NaN;
  private double pitchBeforeRad = Double.NaN;
  private final Wind wind = new Wind();
  private final Warmth warmth = new Warmth();
  private boolean afterMotion;
  private long lastNanos = Long.MIN_VALUE;
  private GroundReport report = GroundReport.UNKNOWN;
  private Optional<GroundEvent> lastEvent = Optional.empty();

  /**
   * A watch that knows nothing yet.
   *
   * @param model what to expect of coach and sensor
   * @param fridges the limits of lean of every fridge, along the coach's axes
   * @param toleranceRad the stay's tolerance, radians
   */
  public GroundWatch(GroundModel model, List<LeanLimit> fridges, double toleranceRad) {
    this.fridges = List.copyOf(fridges);
    this.limits = new ArrayList<>(fridges);
    this.limits.add(new LeanLimit(TOLERANCE, toleranceRad, toleranceRad));
    this.roll = new AxisWatch(model);
    this.pitch = new AxisWatch(model);
    this.forecast = new Forecast(model);
  }

  /** Takes in that another kind of stay has another tolerance, radians. */
  public void tolerance(double toleranceRad) {
    limits.set(limits.size() - 1, new LeanLimit(TOLERANCE, toleranceRad, toleranceRad));
  }

  /** Takes in how the sensor drifts with temperature, along the floor's axes. */
  public void know(TemperatureDrift drift) {
    roll.know(drift.rollPerC(), drift.errorPerC());
    pitch.know(drift.pitchPerC(), drift.errorPerC());
    warmth.seen(drift.lowC(), drift.highC());
  }

  /**
   * How the sensor drifts with temperature by all that was seen so far, along the floor's axes. It
   * is learnt beside the ground's own course, so that neither is taken for the other.
   */
  public TemperatureDrift drift() {
    return TemperatureDrift.ofFloor(
        roll.coefficientRadPerC(),
        pitch.coefficientRadPerC(),
        Math.max(roll.coefficientErrorRadPerC(), pitch.coefficientErrorRadPerC()),
        warmth.lowC(),
        warmth.highC());
  }

  /** Takes in how much of the minutes' lean is drift: limits are not for that, radians. */
  public void drifted(Lean by) {
    roll.drifted(by.rollRad());
    pitch.drifted(by.pitchRad());
  }

  /** Takes in that the coach stands somewhere else; what was learnt of the sensor stays. */
  public void restart() {
    while (window.count() > 0) {
      window.removeOldest();
    }
    block.clear();
    roll.restart();
    pitch.restart();
    rollBeforeRad = Double.NaN;
    pitchBeforeRad = Double.NaN;
    afterMotion = false;
    lastEvent = Optional.empty();
    report = GroundReport.UNKNOWN;
  }

  /**
   * Takes a minute.
   *
   * @param minute later than the one before; gaps may be of any length
   * @return what is known now; the same object until something is
   * @throws IllegalArgumentException if the minute is not later than the one before
   */
  public GroundReport accept(MinuteValue minute) {
    if (minute.atNanos() <= lastNanos) {
      throw new IllegalArgumentException(
          "minute is at " + minute.atNanos() + " ns; it must be later than " + lastNanos);
    }
    lastNanos = minute.atNanos();
    if (minute.moved()) {
      beginMotion();
    }
    if (minute.counts()) {
      if (window.isFull()) {
        gather(window.removeOldest());
      }
      window.add(minute);
      if (afterMotion) {
        endMotion(minute);
      } else if (window.isFull() && window.showsStep()) {
        takeStep();
      }
    }
    return report;
  }

  /** What is known after the last minute. */
  public GroundReport report() {
    return report;
  }

  private void gather(MinuteValue minute) {
    if (block.endsBefore(minute)) {
      closeBlock();
    }
    block.add(minute);
  }

  private void beginMotion() {
    if (!afterMotion && window.count() > 0) {
      rollBeforeRad = window.newestRad(LeanAxis.ROLL, StepWindow.AFTER);
      pitchBeforeRad = window.newestRad(LeanAxis.PITCH, StepWindow.AFTER);
    }
    while (window.count() > 0) {
      gather(window.removeOldest());
    }
    closeBlock();
    afterMotion = true;
  }

  private void endMotion(MinuteValue minute) {
    if (window.count() < StepWindow.AFTER) {
      return;
    }
    afterMotion = false;
    double rollRad = window.newestRad(LeanAxis.ROLL, StepWindow.AFTER) - rollBeforeRad;
    double pitchRad = window.newestRad(LeanAxis.PITCH, StepWindow.AFTER) - pitchBeforeRad;
    double most = Math.max(Math.abs(rollRad), Math.abs(pitchRad));
    if (most > ANEW_RAD) {
      roll.restart();
      pitch.restart();
    } else if (most > LEAST_MOVED_RAD) {
      roll.event(rollRad, EVENT_ERROR_RAD);
      pitch.event(pitchRad, EVENT_ERROR_RAD);
    }
    if (most > LEAST_MOVED_RAD) {
      lastEvent = Optional.of(new GroundEvent(Kind.MOVED, minute.atNanos(), rollRad, pitchRad));
      tell();
    }
  }

  private void takeStep() {
    double rollRad = window.changeRad(LeanAxis.ROLL);
    double pitchRad = window.changeRad(LeanAxis.PITCH);
    long at = window.firstAfter().atNanos();
    for (int i = 0; i < StepWindow.BEFORE; i++) {
      gather(window.removeOldest());
    }
    window.removeOldest();
    closeBlock();
    roll.event(rollRad, EVENT_ERROR_RAD);
    pitch.event(pitchRad, EVENT_ERROR_RAD);
    lastEvent = Optional.of(new GroundEvent(Kind.STEP, at, rollRad, pitchRad));
    tell();
  }

  private void closeBlock() {
    if (block.isEmpty()) {
      return;
    }
    warmth.accept(block.temperatureC());
    double windRad = wind.of(block.spreadRad());
    judge(roll, LeanAxis.ROLL, windRad);
    judge(pitch, LeanAxis.PITCH, windRad);
    block.clear();
    tell();
  }

  private void judge(AxisWatch watch, LeanAxis axis, double windRad) {
    watch.accept(
        block.angleRad(axis), block.varianceRad2(), windRad, warmth.warmerC(), block.meanNanos());
    watch.judge(room(axis, watch.angleRad()), room(axis, -watch.angleRad()));
  }

  /** Distance to the nearest fridge limit in the direction in which the angle is positive. */
  private double room(LeanAxis axis, double angleRad) {
    double room = Double.POSITIVE_INFINITY;
    for (int i = 0; i < fridges.size(); i++) {
      room = Math.min(room, axis.limitRad(fridges.get(i)) - angleRad);
    }
    return room;
  }

  private void tell() {
    boolean settling = roll.isSettling() || pitch.isSettling();
    long since = roll.isSettling() ? roll.sinceNanos() : 0;
    if (pitch.isSettling()) {
      since = roll.isSettling() ? Math.min(since, pitch.sinceNanos()) : pitch.sinceNanos();
    }
    HoursToLimit byRoll = forecast.of(roll, LeanAxis.ROLL, limits);
    HoursToLimit byPitch = forecast.of(pitch, LeanAxis.PITCH, limits);
    boolean rollFirst = byRoll.isForeseen() && !(byPitch.hours() < byRoll.hours());
    report =
        new GroundReport(
            lastNanos,
            settling,
            since,
            roll.trend(),
            pitch.trend(),
            rollFirst ? byRoll : byPitch,
            lastEvent);
  }
}
