package io.pitchwatch.command;

import io.pitchwatch.attitude.Axis;
import io.pitchwatch.attitude.DriftCorrection;
import io.pitchwatch.attitude.Lean;
import io.pitchwatch.attitude.Mounting;
import io.pitchwatch.attitude.PoseGuide;
import io.pitchwatch.attitude.PoseWatch;
import io.pitchwatch.attitude.Rotation;
import io.pitchwatch.attitude.SensorSetup;
import io.pitchwatch.attitude.TemperatureDrift;
import io.pitchwatch.attitude.UpVector;
import io.pitchwatch.coach.Words;
import io.pitchwatch.floor.FloorFilter;
import io.pitchwatch.floor.FloorReading;
import io.pitchwatch.floor.FloorState;
import io.pitchwatch.floor.SeatWatch;
import io.pitchwatch.floor.SensorNoise;
import io.pitchwatch.sensing.AccelerometerDriver;
import io.pitchwatch.sensing.ChipFacts;
import io.pitchwatch.sensing.SampleSink;
import io.pitchwatch.sensing.Sampler;
import io.pitchwatch.sensing.SensorCondition;
import io.pitchwatch.visit.Health;
import io.pitchwatch.visit.Report.SensorReport;
import io.pitchwatch.visit.SensorSight;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** One sensor at its place in the coach: from the chip's samples to the floor's lean. */
final class SensorPost {

  private static final Lean NONE = new Lean(Double.NaN, Double.NaN);

  /** Motion of the board in the hand below this does not count: 0.06 deg. */
  private static final double HELD_STILL_G = 1e-3;

  private final String id;
  private final Mounting mounting;
  private final Sampler sampler;
  private final SensorNoise noise;
  private final FloorFilter filter;
  private final SeatWatch seat = new SeatWatch();
  private final DriftCorrection drift;

  /** Near level a g is a radian. */
  private final double wanderRad;

  private final String chip;
  private final double[] axes = new double[3];
  private SensorSetup setup = SensorSetup.NONE;
  private Rotation chipToFloor;
  private @Nullable PoseGuide guide;
  private long dueNanos;
  private boolean polled;
  private boolean changed = true;

  SensorPost(String id, AccelerometerDriver driver, Mounting mounting) {
    this.id = id;
    this.mounting = mounting;
    this.chipToFloor = mounting.chipToCoach();
    this.noise = noise(driver, mounting);
    this.filter = new FloorFilter(noise);
    this.drift = new DriftCorrection(driver.facts().xyTempcoG());
    this.wanderRad = driver.facts().wanderG();
    this.chip = driver.facts().chip();
    this.sampler = new Sampler(driver, intake());
  }

  /** The floor is nearly square to up, so the axis that points up hardly matters to its lean. */
  private static SensorNoise noise(AccelerometerDriver driver, Mounting mounting) {
    ChipFacts facts = driver.facts();
    boolean zUpright = mounting.z() == Axis.UP || mounting.z() == Axis.DOWN;
    double densityG = zUpright ? facts.xyNoiseG() : Math.max(facts.xyNoiseG(), facts.zNoiseG());
    return new SensorNoise(densityG, 1e9 / driver.periodNanos(), facts.resolutionG());
  }

  private SampleSink intake() {
    return (nanos, x, y, z) -> {
      if (guide != null) {
        guide.accept(nanos, x, y, z);
      }
      setup.calibration().apply(x, y, z, axes);
      chipToFloor.apply(axes[0], axes[1], axes[2], axes);
      filter.accept(nanos, axes[0], axes[1], axes[2]);
    };
  }

  String id() {
    return id;
  }

  /** Does what is due; returns the monotonic time at which to call again. */
  long poll(long nowNanos) {
    if (!polled || nowNanos - dueNanos >= 0) {
      polled = true;
      dueNanos = sampler.poll(nowNanos);
    }
    return dueNanos;
  }

  /** The floor as this sensor reads it; unknown when the sensor cannot be believed at all. */
  FloorReading reading(long nowNanos) {
    return seen(nowNanos).corrected(drift::corrected, drift.errorRad());
  }

  /** The same with its drift with temperature in it, known or not. */
  private FloorReading seen(long nowNanos) {
    FloorReading reading = filter.reading(nowNanos);
    if (guide == null && sampler.condition(nowNanos).health() != Health.FAILED) {
      filter.systematic(Math.hypot(setup.standardErrorRad(reading.lean()), wanderRad));
      seat.accept(reading, filter.magnitudeG());
      return filter.reading(nowNanos);
    }
    return new FloorReading(
        FloorState.UNKNOWN, NONE, NONE, Double.NaN, Double.NaN, reading.takenAtNanos());
  }

  SensorReport report(long nowNanos) {
    SensorCondition condition = sampler.condition(nowNanos);
    drift.temperature(condition.temperatureC(), nowNanos);
    FloorReading seen = seen(nowNanos);
    boolean inHand = guide != null && condition.health() != Health.FAILED;
    return new SensorReport(
        id,
        inHand ? Health.DOUBTFUL : condition.health(),
        inHand ? "it is being calibrated" : condition.reason(),
        condition.temperatureC(),
        filter.reading(nowNanos).noiseRad(),
        new SensorSight(seen, drifted(seen.lean()), drift.inFloor()));
  }

  private Lean drifted(Lean seen) {
    return seen.isKnown() ? seen.minus(drift.corrected(seen)) : Lean.LEVEL;
  }

  /** Takes in how long ago it was zeroed, days; NaN where that is not known. */
  void zeroAge(double days) {
    drift.zeroAge(days);
  }

  /** Whether something speaks for that the sensor was moved since it was set up. */
  boolean movedOnItsSeat() {
    return seat.moved();
  }

  /** How it drifts with temperature, and what is done about that. */
  DriftCorrection drift() {
    return drift;
  }

  /** What chip it is. */
  String chip() {
    return chip;
  }

  /** Whether setup or drift was changed from outside since this was asked last. */
  boolean takeChange() {
    boolean was = changed;
    changed = false;
    return was;
  }

  /** Goes on with a drift that is known, along the chip's axes. */
  void know(TemperatureDrift inChip) {
    drift.know(inChip);
    changed = true;
  }

  /** Forgets what was learnt of its drift with temperature. */
  void forgetDrift() {
    drift.forget();
    changed = true;
  }

  SensorSetup setup() {
    return setup;
  }

  /** Uses what was found out from now on; what was averaged before is forgotten. */
  void use(SensorSetup next) {
    setup = next;
    chipToFloor = next.chipToFloor(mounting);
    drift.use(chipToFloor, next.zero().temperatureC());
    changed = true;
    filter.restart();
    seat.restart();
  }

  /** The chip's thermometer, degrees Celsius; NaN if it has none. */
  double temperatureC(long nowNanos) {
    return sampler.condition(nowNanos).temperatureC();
  }

  /** Why no figure of this sensor can be taken down now, for people; empty when one can. */
  Optional<String> unready(long nowNanos) {
    SensorReport report = report(nowNanos);
    if (report.health() == Health.FAILED || guide != null) {
      return Optional.of("the sensor: " + report.reason());
    }
    FloorState state = reading(nowNanos).state();
    return state == FloorState.STEADY
        ? Optional.empty()
        : Optional.of(
            "the floor is "
                + Words.of(state)
                + "; it must be steady: engine off, nobody walking, for half a minute");
  }

  /** Where up is by the steady figure, in the axes that the declared mounting gives. */
  UpVector upAsMounted(long nowNanos) {
    UpVector up = UpVector.of(seen(nowNanos).steady());
    return setup.mountedToFloor().inverse().apply(up);
  }

  /** The same after the zero, before the heading is put right. */
  UpVector upAsZeroed(long nowNanos) {
    UpVector up = UpVector.of(seen(nowNanos).steady());
    return setup.alignment().rotation().inverse().apply(up);
  }

  /** One standard error of the steady figure itself, radians, without that of what is set up. */
  double randomErrorRad(long nowNanos) {
    FloorReading reading = seen(nowNanos);
    double setUpRad = setup.standardErrorRad(reading.lean());
    double all = reading.uncertaintyRad();
    return Math.sqrt(Math.max(0, all * all - setUpRad * setUpRad));
  }

  /** Shows every sample to a guide through a calibration; until it ends the floor is unknown. */
  PoseGuide calibrate(String date) {
    PoseWatch watch = new PoseWatch(noise.sampleG(), HELD_STILL_G);
    PoseGuide begun = new PoseGuide(watch, setup.calibration(), date);
    guide = begun;
    return begun;
  }

  /** The calibration is over, whatever came of it. */
  void endCalibration() {
    guide = null;
    filter.restart();
    seat.restart();
  }
}
