package io.pitchwatch.command;

import io.pitchwatch.config.Config;
import io.pitchwatch.config.ConfigFault;
import io.pitchwatch.config.ConfigOutcome;
import io.pitchwatch.config.ConfigReader;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;

/** The option that names the owner's file, for every command that needs it. */
final class ConfigOption {

  @Option(
      names = "--config",
      required = true,
      paramLabel = "FILE",
      description = "The file that describes the coach (docs/config.md explains every key).")
  Path file;

  /**
   * Reads the file; when it has faults, prints every one of them.
   *
   * @return empty when it had faults
   */
  Optional<Config> read(PrintWriter err) {
    return read(file, err);
  }

  /** Reads a file; when it has faults, prints every one of them. */
  static Optional<Config> read(Path file, PrintWriter err) {
    return good(new ConfigReader(System.getenv()).read(file), err);
  }

  /** The config of an outcome; when it has faults, prints every one of them. */
  static Optional<Config> good(ConfigOutcome outcome, PrintWriter err) {
    if (outcome instanceof ConfigOutcome.Good good) {
      return Optional.of(good.config());
    }
    List<ConfigFault> faults = ((ConfigOutcome.Faulty) outcome).faults();
    faults.forEach(err::println);
    err.println(
        faults.size() == 1
            ? "1 fault; nothing was done."
            : faults.size() + " faults; nothing was done.");
    return Optional.empty();
  }
}
