package io.pitchwatch.sim.scenario;

import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every example of docs/scenarios.md is a scenario, and every event has one. */
class ScenarioDocumentationTest {

  private static final Path PAGE = Path.of("../docs/scenarios.md");
  private static final Pattern EXAMPLE = Pattern.compile("```toml\n(.*?)```", Pattern.DOTALL);
  private static final Pattern VERB = Pattern.compile("does = \"([a-z-]+)\"");
  private static final Pattern NAME = Pattern.compile("^\\| `([a-z-]+)` \\|", Pattern.MULTILINE);

  @TempDir private Path folder;

  private static String page() throws IOException {
    return Files.readString(PAGE);
  }

  private List<Scenario> examples() throws IOException {
    try (var heron = Source.class.getResourceAsStream("/pitchwatch-scenarios/heron.toml")) {
      assertTrue(heron != null);
      Files.copy(heron, folder.resolve("heron.toml"));
    }
    Files.writeString(folder.resolve("recording.csv"), "t_s,ax_g,ay_g,az_g\n0,0,0,1\n1,0,0,1\n");
    List<Scenario> read = new ArrayList<>();
    Matcher matcher = EXAMPLE.matcher(page());
    while (matcher.find()) {
      Path file = Files.writeString(folder.resolve("example.toml"), matcher.group(1));
      ScenarioReading reading = Scenario.read(file.toString());
      assertInstanceOf(
          ScenarioReading.Understood.class, reading, matcher.group(1) + "\n" + reading);
      read.add(((ScenarioReading.Understood) reading).scenario());
    }
    return read;
  }

  @Test
  void everyExampleRuns() throws IOException {
    List<Scenario> examples = examples();
    assertTrue(examples.size() > 10);
    for (Scenario scenario : examples) {
      long[] nowNanos = {0};
      Simulation simulation = new Simulation(scenario, () -> nowNanos[0], nanos -> {});
      for (int minute = 0; minute < 240; minute++) {
        nowNanos[0] = minute * 60_000_000_000L;
        simulation.catchUp();
        assertTrue(Math.abs(simulation.truth().rollRad()) < 0.2, scenario.name());
      }
    }
  }

  @Test
  void everyEventHasAnExample() throws IOException {
    TreeSet<String> shown = new TreeSet<>();
    VERB.matcher(page()).results().forEach(match -> shown.add(match.group(1)));
    assertTrue(shown.containsAll(EventReader.VERBS), "shown are " + shown);
  }

  @Test
  void everyBuiltInScenarioNamedReads() throws IOException {
    List<String> names = NAME.matcher(page()).results().map(match -> match.group(1)).toList();
    assertTrue(names.size() >= 6, names + "");
    for (String name : names) {
      assertInstanceOf(ScenarioReading.Understood.class, Scenario.read(name), name);
    }
  }
}
