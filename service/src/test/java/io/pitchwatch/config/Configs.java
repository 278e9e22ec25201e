package io.pitchwatch.config;

import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/** Configs for the tests, written to a directory and read back. */
final class Configs {

  /** The least that a config may hold; twelve lines. */
  static final String LEAST =
      """
      [coach]
      id = "heron"

      [[axle]]
      id = "rear"
      position = "-5600 mm"
      track = "1830 mm"
      load = "6900 kg"
      footprint = "590 mm"
      """;

  private final Path file;

  Configs(Path directory) {
    this.file = directory.resolve("coach.toml");
  }

  ConfigOutcome outcome(String toml) {
    return outcome(toml, Map.of("HOME", "/home/owner"));
  }

  ConfigOutcome outcome(String toml, Map<String, String> environment) {
    return new ConfigReader(environment).read(write(toml));
  }

  /** The config, which must be good. */
  Config good(String toml) {
    return assertInstanceOf(ConfigOutcome.Good.class, outcome(toml), toml).config();
  }

  /** The faults as text, of which there must be some. */
  List<String> faults(String toml) {
    ConfigOutcome outcome = outcome(toml);
    return assertInstanceOf(ConfigOutcome.Faulty.class, outcome, toml).faults().stream()
        .map(ConfigFault::toString)
        .toList();
  }

  Path write(String toml) {
    try {
      return Files.writeString(file, toml);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  Path file() {
    return file;
  }
}
