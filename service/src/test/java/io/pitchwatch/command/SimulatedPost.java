package io.pitchwatch.command;

import io.pitchwatch.attitude.Axis;
import io.pitchwatch.attitude.Mounting;
import io.pitchwatch.bus.Pi4jBus;
import io.pitchwatch.floor.FloorReading;
import io.pitchwatch.sensing.Chip;
import io.pitchwatch.visit.Report.SensorReport;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.BiConsumer;
import java.util.function.LongConsumer;

/** The whole way from a simulated chip's registers to the floor's lean, on virtual time. */
final class SimulatedPost implements AutoCloseable {

  /** The chip as the simulator mounts it: flat, x forward. */
  static final Mounting FLAT = Mounting.ofXz(Axis.FORWARD, Axis.UP);

  private static final long STEP_NANOS = 100_000_000L;

  private final Pi4jBus buses;
  private final LongConsumer clock;
  private final SensorPost post;
  private long nowNanos;

  private SimulatedPost(Path scenario, Mounting mounting) {
    buses = BusChoice.simulated(scenario.toString()).open();
    clock = buses.face(LongConsumer.class).orElseThrow();
    post = new SensorPost("1", Chip.ADXL345.driver(buses.at(1, 0x53)), mounting);
    clock.accept(0);
  }

  static SimulatedPost of(String scenario, Path directory, Mounting mounting) throws IOException {
    Path file = Files.createTempFile(directory, "scenario", ".toml");
    Files.writeString(file, scenario);
    return new SimulatedPost(file, mounting);
  }

  SensorPost post() {
    return post;
  }

  double seconds() {
    return nowNanos / 1e9;
  }

  FloorReading reading() {
    return post.reading(nowNanos);
  }

  SensorReport report() {
    return post.report(nowNanos);
  }

  /** Goes on to an instant of scenario time, showing what is known every tenth of a second. */
  void until(double endS, BiConsumer<Double, FloorReading> look) {
    while (nowNanos < endS * 1e9) {
      nowNanos += STEP_NANOS;
      clock.accept(nowNanos);
      post.poll(nowNanos);
      look.accept(seconds(), reading());
    }
  }

  void until(double endS) {
    until(endS, (s, reading) -> {});
  }

  @Override
  public void close() {
    buses.close();
  }
}
