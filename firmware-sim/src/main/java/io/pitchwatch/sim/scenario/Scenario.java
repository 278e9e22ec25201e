package io.pitchwatch.sim.scenario;

import io.pitchwatch.sim.world.CoachWorld;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.tomlj.Toml;
import org.tomlj.TomlParseResult;

/** A coach, its sensors, the ground and what happens, as a scenario file tells it. */
public final class Scenario {

  private final Names names;
  private final long seed;
  private final double runS;
  private final List<SensorSetup> sensors;
  private final Script script;

  /** What people call the scenario, and its site. */
  record Names(String scenario, String site) {}

  Scenario(Names names, long seed, double runS, List<SensorSetup> sensors, Script script) {
    this.names = names;
    this.seed = seed;
    this.runS = runS;
    this.sensors = List.copyOf(sensors);
    this.script = script;
  }

  /**
   * Reads a scenario.
   *
   * @param name path of a file or, where no such file is, the name of a built-in one
   */
  public static ScenarioReading read(String name) {
    Source source = Source.named(name);
    try {
      return parse(source, source.text());
    } catch (IOException e) {
      return new ScenarioReading.Refused(
          List.of(
              new Complaint(
                  name, 0, "", "cannot be read: " + e, "a TOML file or the name of a scenario")));
    }
  }

  /**
   * Reads a scenario from its text; files named in it lie beside a file of the name given.
   *
   * @param name path, for messages and for what lies beside it
   * @param text TOML
   */
  public static ScenarioReading parse(String name, String text) {
    return parse(Source.named(name), text);
  }

  private static ScenarioReading parse(Source source, String text) {
    List<Complaint> complaints = new ArrayList<>();
    TomlParseResult parsed = Toml.parse(text);
    parsed
        .errors()
        .forEach(
            error ->
                complaints.add(
                    new Complaint(
                        source.name(), error.position().line(), "", error.toString(), "TOML")));
    if (!complaints.isEmpty()) {
      return new ScenarioReading.Refused(complaints);
    }
    Scenario scenario = new ScenarioReader(source, complaints).read(parsed);
    if (complaints.isEmpty()) {
      return new ScenarioReading.Understood(scenario);
    }
    return new ScenarioReading.Refused(
        complaints.stream()
            .distinct()
            .sorted(Comparator.comparing(Complaint::file).thenComparingInt(Complaint::line))
            .toList());
  }

  /** What the scenario is called. */
  public String name() {
    return names.scenario();
  }

  /** What its owner calls the site; empty where no name is given. */
  public String siteName() {
    return names.site();
  }

  /** Seed of everything random in it. */
  public long seed() {
    return seed;
  }

  /** How long it runs, seconds. */
  public double runS() {
    return runS;
  }

  /** The coach on its ground. */
  public CoachWorld world() {
    return script.world();
  }

  List<SensorSetup> sensors() {
    return sensors;
  }

  Script script() {
    return script;
  }
}
