package io.pitchwatch.command;

import io.pitchwatch.attitude.Axis;
import io.pitchwatch.attitude.Lean;
import io.pitchwatch.attitude.Mounting;
import io.pitchwatch.attitude.Rotation;
import io.pitchwatch.attitude.UpVector;
import io.pitchwatch.attitude.Zero;
import io.pitchwatch.floor.FloorFilter;
import io.pitchwatch.floor.FloorReading;
import io.pitchwatch.floor.FloorState;
import io.pitchwatch.floor.SensorNoise;
import io.pitchwatch.sensing.AccelerometerDriver;
import io.pitchwatch.sensing.ChipFacts;
import io.pitchwatch.sensing.SampleSink;
import io.pitchwatch.sensing.Sampler;
import io.pitchwatch.sensing.SensorCondition;
import io.pitchwatch.visit.Health;
import io.pitchwatch.visit.Report.SensorReport;
import java.util.Locale;

/** One sensor at its place in the coach: from the chip's samples to the floor's lean. */
final class SensorPost {

  private static final Lean NONE = new Lean(Double.NaN, Double.NaN);

  private final String id;
  private final Mounting mounting;
  private final Sampler sampler;
  private final FloorFilter filter;
  private final double[] coachAxes = new double[3];
  private Zero zero = Zero.NONE;
  private Rotation chipToFloor;
  private long dueNanos;
  private boolean polled;

  SensorPost(String id, AccelerometerDriver driver, Mounting mounting) {
    this.id = id;
    this.mounting = mounting;
    this.chipToFloor = mounting.chipToCoach();
    this.filter = new FloorFilter(noise(driver, mounting));
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
      chipToFloor.apply(x, y, z, coachAxes);
      filter.accept(nanos, coachAxes[0], coachAxes[1], coachAxes[2]);
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
    FloorReading reading = filter.reading(nowNanos);
    if (sampler.condition(nowNanos).health() != Health.FAILED) {
      return reading;
    }
    return new FloorReading(
        FloorState.UNKNOWN, NONE, NONE, Double.NaN, Double.NaN, reading.takenAtNanos());
  }

  SensorReport report(long nowNanos) {
    SensorCondition condition = sampler.condition(nowNanos);
    return new SensorReport(
        id,
        condition.health(),
        condition.reason(),
        condition.temperatureC(),
        filter.reading(nowNanos).noiseRad());
  }

  Zero zero() {
    return zero;
  }

  /** Uses a zero from now on; what was averaged with the old one is forgotten. */
  void use(Zero next) {
    zero = next;
    chipToFloor = next.rotation().after(mounting.chipToCoach());
    filter.systematic(next.standardErrorRad());
    filter.restart();
  }

  /**
   * The zero that makes the floor, as it stands now, level.
   *
   * @param date a label for people
   */
  ZeroOutcome zeroNow(long nowNanos, String date) {
    FloorReading reading = reading(nowNanos);
    if (reading.state() != FloorState.STEADY) {
      return new ZeroOutcome.Refused(
          "the floor is "
              + reading.state().name().toLowerCase(Locale.ROOT)
              + "; zero needs it steady: engine off, nobody walking, for half a minute");
    }
    UpVector up = zero.rotation().inverse().apply(UpVector.of(reading.steady()));
    if (!(up.totalRad() <= Zero.LARGEST_RAD)) {
      return new ZeroOutcome.Refused(
          "the sensor's board leans by more than 55 deg from the mounting that the config names;"
              + " another mounting fits better");
    }
    double temperatureC = sampler.condition(nowNanos).temperatureC();
    return new ZeroOutcome.Taken(new Zero(up, reading.uncertaintyRad(), temperatureC, date));
  }
}
