package io.pitchwatch.command;

import io.pitchwatch.config.Config;
import io.pitchwatch.config.ConfigReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.LongConsumer;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** The whole service against the simulated coach on virtual time. */
@Command(
    name = "rehearse",
    mixinStandardHelpOptions = true,
    description = {
      "Plays a scenario to the whole service on virtual time.",
      "It runs as fast as it goes, and prints the timeline of what it would have",
      "published and alerted.",
      "The same scenario gives the same output, byte for byte."
    },
    footer = {
      "",
      "floor/taken-at is left out: every line has its time. Progress and speed go to",
      "standard error.",
      "Exit codes: 0 played to its end, whatever was alerted; 2 no such scenario, or it",
      "has faults."
    })
final class RehearseCommand implements Callable<Integer> {

  private static final double NANOS_PER_SECOND = 1e9;
  private static final long TELL_NANOS = 1_000_000_000L;

  @Spec CommandSpec spec;

  @Option(
      names = "--scenario",
      required = true,
      paramLabel = "FILE",
      description = "A scenario file, or the name of a built-in one (docs/scenarios.md).")
  String scenario;

  @Option(names = "--json", description = "Print one JSON document (docs/schemas/rehearsal.json).")
  boolean json;

  @Option(
      names = "--brief",
      description = "Leave figures out: phases, verdicts, alerts, logs and what happens only.")
  boolean brief;

  @Option(
      names = "--store",
      paramLabel = "DIR",
      description = "Keep the service's store there; it must not exist yet.")
  Optional<Path> store = Optional.empty();

  @Override
  public Integer call() throws IOException {
    PrintWriter err = spec.commandLine().getErr();
    if (store.isPresent() && Files.exists(store.get())) {
      err.println("--store: " + store.get() + " exists; a rehearsal begins with nothing known");
      return ExitCode.NOT_KNOWN;
    }
    try (TemporaryDirectory directory = TemporaryDirectory.make("pitchwatch-rehearse")) {
      Optional<Path> file = Scenarios.find(scenario, directory.path(), err);
      if (file.isEmpty()) {
        return ExitCode.NOT_KNOWN;
      }
      Optional<Config> read =
          ConfigOption.good(new ConfigReader(System.getenv()).readScenario(file.get()), err);
      return read.isPresent()
          ? rehearse(inItsOwnStore(read.get(), directory.path()), file.get())
          : ExitCode.NOT_KNOWN;
    }
  }

  private Config inItsOwnStore(Config config, Path directory) {
    return new Config(
        config.file(),
        config.coach(),
        config.sensors(),
        config.mqtt(),
        config.page(),
        new Config.Store(store.orElse(directory.resolve("store"))));
  }

  private int rehearse(Config config, Path file) {
    PrintWriter err = spec.commandLine().getErr();
    SimulatedCoach.Opening opening = SimulatedCoach.open(file);
    if (opening instanceof SimulatedCoach.Opening.Refused refused) {
      err.println(refused.why());
      return ExitCode.NOT_KNOWN;
    }
    SimulatedCoach coach = ((SimulatedCoach.Opening.Opened) opening).coach();
    PrintWriter out = spec.commandLine().getOut();
    Timeline whole = json ? new TimelineJson(out) : new TimelineText(out);
    double runS = coach.script().runNanos() / NANOS_PER_SECOND;
    long startNanos = System.nanoTime();
    try (Rehearsal rehearsal =
        new Rehearsal(config, coach, brief ? new Brief(whole) : whole, progress(runS, err))) {
      rehearsal.play();
    }
    double tookS = (System.nanoTime() - startNanos) / NANOS_PER_SECOND;
    err.printf(
        Locale.ROOT,
        "%.1f hours in %.1f s: %,.0f times real time%n",
        runS / 3600,
        tookS,
        runS / tookS);
    err.flush();
    return ExitCode.GOOD;
  }

  /** Says once a second how far it is. */
  private static LongConsumer progress(double runS, PrintWriter err) {
    long[] toldNanos = {System.nanoTime()};
    return nanos -> {
      if (System.nanoTime() - toldNanos[0] >= TELL_NANOS) {
        toldNanos[0] = System.nanoTime();
        err.printf(Locale.ROOT, "%s, %.0f %%%n", TimelineText.time(nanos), nanos / runS / 1e7);
        err.flush();
      }
    };
  }
}
