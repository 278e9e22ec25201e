package io.pitchwatch.command;

import io.pitchwatch.bus.Pi4jBus;
import io.pitchwatch.config.Config;
import io.pitchwatch.config.ConfigReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.function.LongConsumer;

/** A workbench on the simulated bus, on virtual time: waiting takes none. */
final class VirtualBench implements AutoCloseable {

  private final Workbench bench;
  private final LongConsumer clock;
  private long nowNanos;

  VirtualBench(Path directory, String chip, String scenario) throws IOException {
    Path config = Files.createTempFile(directory, "heron", ".toml");
    Files.writeString(
        config,
        SmallCoach.TOML
            + """
        [sensor]
        chip = "%s"
        [store]
        directory = "store"
        """
                .formatted(chip));
    Path file = Files.createTempFile(directory, "scenario", ".toml");
    Files.writeString(file, scenario);
    Config read =
        ConfigOption.good(
                new ConfigReader(Map.of()).read(config),
                new PrintWriter(new java.io.StringWriter()))
            .orElseThrow();
    Pi4jBus buses = BusChoice.simulated(file.toString()).open();
    clock = buses.face(LongConsumer.class).orElseThrow();
    clock.accept(0);
    bench = new Workbench(read, read.sensors().get(0), buses, virtual());
  }

  private BenchClock virtual() {
    return new BenchClock() {
      @Override
      public long nanos() {
        return nowNanos;
      }

      @Override
      public void await(long untilNanos) {
        nowNanos = untilNanos;
        clock.accept(nowNanos);
      }
    };
  }

  Workbench bench() {
    return bench;
  }

  @Override
  public void close() {
    bench.close();
  }
}
