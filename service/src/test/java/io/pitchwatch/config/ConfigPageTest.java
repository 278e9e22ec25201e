package io.pitchwatch.config;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** docs/config.md and the reader know the same keys, limits and defaults. */
class ConfigPageTest {

  private static final Path PAGE = Path.of("../docs/config.md");

  /** Every table, as empty as it can be: what is absent shows its default. */
  private static final String EVERY_TABLE =
      """
      coach.id = "x"
      [[axle]]
      [[piece]]
      [[pad]]
      [[fridge]]
      [[door]]
      [sensor.mounting]
      """;

  @TempDir Path directory;

  @Test
  void thePageNamesEveryKeyWithItsLimitsAndDefault() throws IOException {
    Map<String, String> rows = rows();
    Map<String, Reading.Asked> asked = asked();
    assertEquals(asked.keySet(), rows.keySet());
    asked.forEach(
        (key, ask) -> {
          String row = rows.getOrDefault(key, "");
          List<String> cells = List.of(row.split(" *\\| *", -1));
          assertEquals(ask.limits(), cells.get(2), key);
          String told = cells.get(3);
          assertTrue(told.contains(ask.fallback()), () -> key + ": " + ask.fallback());
          assertEquals(ask.fallback().isEmpty(), told.isEmpty(), () -> key + ": " + told);
        });
  }

  @Test
  void theFewLinesThatAreEnoughAreEnough() throws IOException {
    String page = Files.readString(PAGE);
    int start = page.indexOf("```toml\n") + 8;
    new Configs(directory).good(page.substring(start, page.indexOf("```", start)));
  }

  /** The keys that the reader asks for; tables themselves are not keys of the page. */
  private Map<String, Reading.Asked> asked() {
    Reading reading = new Reading("every.toml");
    String jacks = EVERY_TABLE + "[[jack-pair]]\n";
    for (String toml : List.of(jacks, EVERY_TABLE)) {
      Path file = new Configs(directory).write(toml);
      Section root = ConfigReader.parse(file, reading).orElseThrow();
      assertInstanceOf(Config.class, new ConfigReader(Map.of()).config(root, file, false));
    }
    Map<String, Reading.Asked> asked = new TreeMap<>(reading.asked());
    asked.keySet().removeIf(key -> !key.contains("."));
    return asked;
  }

  /** The table rows of the page by key, with the table's name from the heading above. */
  private static Map<String, String> rows() throws IOException {
    Map<String, String> rows = new HashMap<>();
    String table = "";
    for (String line : Files.readAllLines(PAGE)) {
      if (line.startsWith("##")) {
        table = line.replaceAll("[#\\[\\] ]", "");
      } else if (line.startsWith("| `")) {
        rows.put(table + "." + line.substring(3, line.indexOf('`', 3)), line);
      }
    }
    return new TreeMap<>(rows);
  }
}
