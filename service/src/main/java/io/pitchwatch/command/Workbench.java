package io.pitchwatch.command;

import io.pitchwatch.bus.Pi4jBus;
import io.pitchwatch.config.Config;
import io.pitchwatch.sensing.AccelerometerDriver;
import io.pitchwatch.sensing.Chip;
import java.util.function.LongPredicate;
import java.util.function.LongUnaryOperator;

/** One sensor of a coach, asked directly while no daemon runs. */
final class Workbench implements AutoCloseable {

  private static final long LONGEST_WAIT_NANOS = 100_000_000L;

  private final Config config;
  private final Config.Sensor sensor;
  private final Pi4jBus buses;
  private final BenchClock clock;

  Workbench(Config config, Config.Sensor sensor, Pi4jBus buses, BenchClock clock) {
    this.config = config;
    this.sensor = sensor;
    this.buses = buses;
    this.clock = clock;
  }

  Config config() {
    return config;
  }

  Config.Sensor sensor() {
    return sensor;
  }

  BenchClock clock() {
    return clock;
  }

  /** A driver for the sensor's chip. */
  AccelerometerDriver driver() {
    return Chip.of(sensor.chip().word()).driver(buses.at(sensor.bus(), sensor.address()));
  }

  /**
   * Polls as often as it is asked to.
   *
   * @param poll takes the time, returns when to call it again
   * @param wanted takes the time before each poll and at least ten times a second: whether to go on
   */
  void run(LongUnaryOperator poll, LongPredicate wanted) throws InterruptedException {
    long nowNanos = clock.nanos();
    long dueNanos = nowNanos;
    while (wanted.test(nowNanos)) {
      if (nowNanos - dueNanos >= 0) {
        dueNanos = poll.applyAsLong(nowNanos);
      }
      // Not at once again: a clock that stands until it is awaited would stand for ever.
      long nextNanos = Math.max(dueNanos, nowNanos + 1);
      clock.await(Math.min(nextNanos, nowNanos + LONGEST_WAIT_NANOS));
      nowNanos = clock.nanos();
    }
  }

  @Override
  public void close() {
    buses.close();
  }
}
