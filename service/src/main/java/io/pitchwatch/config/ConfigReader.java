package io.pitchwatch.config;

import io.pitchwatch.coach.Coach;
import io.pitchwatch.config.Config.Mqtt;
import io.pitchwatch.config.Config.Page;
import io.pitchwatch.config.Config.Sensor;
import io.pitchwatch.config.Config.Store;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tomlj.Toml;
import org.tomlj.TomlParseError;
import org.tomlj.TomlParseOptions;
import org.tomlj.TomlParseResult;
import org.tomlj.TomlPosition;

/**
 * Reads the owner's file. Whatever its bytes are, the outcome is a config or a list of all faults,
 * never an exception.
 */
public final class ConfigReader {

  private static final int DEEPEST = 16;

  private final Map<String, String> environment;

  /**
   * A reader in the given surroundings.
   *
   * @param environment the process's variables: XDG_STATE_HOME and HOME say where the store is by
   *     default
   */
  public ConfigReader(Map<String, String> environment) {
    this.environment = Map.copyOf(environment);
  }

  /** Reads a config. */
  public ConfigOutcome read(Path file) {
    Reading reading = new Reading(String.valueOf(file.getFileName()));
    Optional<Section> root = parse(file, reading);
    if (root.isEmpty()) {
      return new ConfigOutcome.Faulty(reading.faults().list());
    }
    Config config = config(root.get(), file, false);
    root.get().refuseUnknown();
    return outcome(config, reading);
  }

  /**
   * Reads the coach of a scenario: the tables of a config beside the scenario's own, or {@code
   * coach = "path of a config"}, relative to the scenario. Tables that are not a config's are the
   * scenario's business, and so are further keys of [sensor]. Sensors that the scenario names are
   * the ones that its coach carries, whatever its config says.
   */
  public ConfigOutcome readScenario(Path file) {
    Reading reading = new Reading(String.valueOf(file.getFileName()));
    Optional<Section> root = parse(file, reading);
    if (root.isEmpty()) {
      return new ConfigOutcome.Faulty(reading.faults().list());
    }
    if (!root.get().isText("coach")) {
      return outcome(config(root.get(), file, true), reading);
    }
    Optional<String> path = root.get().text("coach", Form.PATH, null);
    if (path.isEmpty() || !reading.faults().none()) {
      return new ConfigOutcome.Faulty(reading.faults().list());
    }
    ConfigOutcome coach = read(directory(file).resolve(path.get()));
    if (!root.get().has("sensor") || !(coach instanceof ConfigOutcome.Good good)) {
      return coach;
    }
    return outcome(good.config().with(SensorReader.read(root.get(), true)), reading);
  }

  /** The tables of a config; what is wrong with them is noted. */
  Config config(Section root, Path file, boolean scenario) {
    ServiceReader service = new ServiceReader(directory(file), environment);
    Coach coach = CoachReader.read(root);
    List<Sensor> sensors = SensorReader.read(root, scenario);
    Store store = service.store(root);
    Mqtt mqtt = service.mqtt(root, store);
    Page page = service.page(root, mqtt);
    return new Config(file, coach, sensors, mqtt, page, store);
  }

  /** The whole file as a table; empty when there is no text to read. */
  static Optional<Section> parse(Path file, Reading reading) {
    Optional<String> text = SourceText.read(file, reading.faults());
    if (text.isEmpty()) {
      return Optional.empty();
    }
    TomlParseResult toml =
        Toml.parse(text.get(), TomlParseOptions.sourceless().withMaxNestingDepth(DEEPEST));
    for (TomlParseError error : toml.errors()) {
      TomlPosition position = error.position();
      reading
          .faults()
          .syntax(position == null ? 0 : position.line(), String.valueOf(error.getMessage()));
    }
    return Optional.of(new Section(toml, "", 0, reading));
  }

  private static Path directory(Path file) {
    Path parent = file.toAbsolutePath().getParent();
    return parent == null ? file.toAbsolutePath() : parent;
  }

  private static ConfigOutcome outcome(Config config, Reading reading) {
    return reading.faults().none()
        ? new ConfigOutcome.Good(config)
        : new ConfigOutcome.Faulty(reading.faults().list());
  }
}
