package io.pitchwatch.command;

import io.pitchwatch.bus.Pi4jBus;
import io.pitchwatch.config.Config;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The options of every command that asks a sensor directly, and how it is reached by them. */
final class BenchOption {

  @Mixin ConfigOption config;

  @Option(
      names = "--sensor",
      paramLabel = "ID",
      description = "Which sensor (default: the first of the config).")
  Optional<String> sensor = Optional.empty();

  @Option(
      names = "--scenario",
      paramLabel = "FILE",
      description = "Try it on the simulated coach of this file instead of the real bus.")
  Optional<Path> scenario = Optional.empty();

  /** What such a command does with its sensor; returns the exit code. */
  @FunctionalInterface
  interface Work {
    int at(Workbench bench) throws InterruptedException;
  }

  /** Does the work, or says why it cannot be done. */
  int with(PrintWriter err, Work work) throws InterruptedException {
    Optional<Config> read = config.read(err);
    if (read.isEmpty()) {
      return ExitCode.NOT_KNOWN;
    }
    Optional<Config.Sensor> chosen = choose(read.get().sensors());
    if (chosen.isEmpty()) {
      String known =
          read.get().sensors().stream().map(Config.Sensor::id).collect(Collectors.joining(", "));
      err.println("--sensor is \"" + sensor.orElse("") + "\"; " + config.file + " has " + known);
      return ExitCode.NOT_KNOWN;
    }
    if (scenario.isPresent() && !Files.isRegularFile(scenario.get())) {
      err.println("--scenario is \"" + scenario.get() + "\"; there is no such file");
      return ExitCode.NOT_KNOWN;
    }
    Optional<StoreClaim> claim = StoreClaim.take(read.get().store().directory());
    if (claim.isEmpty()) {
      err.println(
          "The daemon is using this sensor and "
              + read.get().store().directory()
              + ": stop it first, or do this over MQTT (docs/interface.md, upkeep).");
      return ExitCode.NOT_KNOWN;
    }
    try {
      return at(read.get(), chosen.get(), work, err);
    } finally {
      claim.get().close();
    }
  }

  private Optional<Config.Sensor> choose(List<Config.Sensor> sensors) {
    return sensor.isEmpty()
        ? Optional.of(sensors.get(0))
        : sensors.stream().filter(each -> each.id().equals(sensor.get())).findFirst();
  }

  private int at(Config read, Config.Sensor chosen, Work work, PrintWriter err)
      throws InterruptedException {
    BusChoice choice =
        scenario
            .map(file -> BusChoice.simulated(file.toAbsolutePath().toString()))
            .orElse(BusChoice.KERNEL);
    Pi4jBus buses = choice.open();
    try (Workbench bench = new Workbench(read, chosen, buses, BenchClock.SYSTEM)) {
      Optional<String> refusal = refusal(buses);
      if (refusal.isPresent()) {
        err.println(refusal.get());
        return ExitCode.NOT_KNOWN;
      }
      return work.at(bench);
    }
  }

  /** What the simulated coach finds wrong with its scenario. */
  @SuppressWarnings({"rawtypes", "unchecked"}) // a face is asked for by its class
  private static Optional<String> refusal(Pi4jBus buses) {
    Optional<Function> questions = buses.face(Function.class);
    return questions.map(q -> (String) q.apply("refusal")).filter(text -> !text.isEmpty());
  }
}
