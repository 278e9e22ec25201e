package io.pitchwatch.sensing;

import io.pitchwatch.bus.Pi4jBus;
import io.pitchwatch.visit.Health;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.LongConsumer;
import java.util.function.UnaryOperator;

/**
 * A sampler on the simulated bus, reached through Pi4J as on a coach, on virtual time. What it
 * handed on and how its condition went is kept.
 */
final class Bench implements AutoCloseable {

  static final double SECOND = 1e9;

  /** Host's monotonic time when the scenario begins: anything, and negative. */
  static final long HOST_ZERO = -3_000_000_000_000L;

  /**
   * One sample handed on.
   *
   * @param s scenario time at which the chip took it by the sampler's reckoning, seconds
   */
  record Sample(double s, double x, double y, double z) {}

  /**
   * A change of condition.
   *
   * @param s scenario time, seconds
   */
  record Change(double s, Health health, String reason) {}

  final List<Sample> samples = new ArrayList<>();
  final List<Double> saturated = new ArrayList<>();
  final List<Double> gaps = new ArrayList<>();
  final List<Change> changes = new ArrayList<>();
  final Pi4jBus buses;
  final AccelerometerDriver driver;
  final Sampler sampler;

  private final LongConsumer clock;
  private long nowNanos;
  private long dueNanos;

  Bench(Chip chip, AccelerometerSettings settings, String scenario) {
    this(chip, settings, scenario, UnaryOperator.identity());
  }

  /** With something between the driver and the bus, such as a chip less able than the real one. */
  Bench(
      Chip chip,
      AccelerometerSettings settings,
      String scenario,
      UnaryOperator<RegisterBus> between) {
    buses =
        Pi4jBus.open(
            "pitchwatch-sim-i2c", Map.of("pitchwatch.sim.scenario", write(scenario).toString()));
    clock = buses.face(LongConsumer.class).orElseThrow();
    clock.accept(0);
    driver = chip.driver(between.apply(buses.at(1, chip.addresses().get(0))), settings);
    sampler =
        new Sampler(
            driver,
            new SampleSink() {
              @Override
              public void sample(long nanos, double x, double y, double z) {
                samples.add(new Sample(seconds(nanos), x, y, z));
              }

              @Override
              public void saturated(long nanos) {
                saturated.add(seconds(nanos));
              }

              @Override
              public void gap(long nanos) {
                gaps.add(seconds(nanos));
              }
            });
  }

  private static Path write(String scenario) {
    try {
      Path file = Files.createTempFile("pitchwatch-scenario", ".toml");
      file.toFile().deleteOnExit();
      return Files.writeString(file, scenario);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static double seconds(long hostNanos) {
    return (hostNanos - HOST_ZERO) / SECOND;
  }

  /** Runs until a scenario time, polling when the sampler asks for it. */
  Bench runTo(double s) {
    long endNanos = (long) (s * SECOND);
    while (dueNanos <= endNanos) {
      nowNanos = Math.max(nowNanos, dueNanos);
      clock.accept(nowNanos);
      long host = HOST_ZERO + nowNanos;
      long due = sampler.poll(host) - HOST_ZERO;
      if (due < nowNanos) {
        throw new AssertionError("asked to be called back in the past");
      }
      dueNanos = due == nowNanos ? due + 1000 : due;
      noteCondition(host);
    }
    nowNanos = endNanos;
    clock.accept(nowNanos);
    noteCondition(HOST_ZERO + nowNanos);
    return this;
  }

  private void noteCondition(long host) {
    SensorCondition now = sampler.condition(host);
    Change last = changes.isEmpty() ? null : changes.get(changes.size() - 1);
    if (last == null || last.health() != now.health() || !last.reason().equals(now.reason())) {
      changes.add(new Change(seconds(host), now.health(), now.reason()));
    }
  }

  /** The bus stands still for a while, as when the host is busy elsewhere. */
  Bench stallTo(double s) {
    dueNanos = (long) (s * SECOND);
    return this;
  }

  SensorCondition condition() {
    return sampler.condition(HOST_ZERO + nowNanos);
  }

  /** Samples by the reckoning between two scenario times. */
  List<Sample> between(double fromS, double toS) {
    List<Sample> some = new ArrayList<>();
    for (Sample sample : samples) {
      if (sample.s() >= fromS && sample.s() < toS) {
        some.add(sample);
      }
    }
    return some;
  }

  /** The condition that held at a scenario time. */
  Change at(double s) {
    Change held = changes.get(0);
    for (Change change : changes) {
      if (change.s() <= s) {
        held = change;
      }
    }
    return held;
  }

  /** Mean of samples, x, y, z, g. */
  static double[] mean(List<Sample> samples) {
    double[] mean = new double[3];
    for (Sample sample : samples) {
      mean[0] += sample.x() / samples.size();
      mean[1] += sample.y() / samples.size();
      mean[2] += sample.z() / samples.size();
    }
    return mean;
  }

  @Override
  public void close() {
    buses.close();
  }
}
