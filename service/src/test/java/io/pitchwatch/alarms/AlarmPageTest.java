package io.pitchwatch.alarms;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.pitchwatch.mqtt.Heron;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** docs/alarms.md says what the alarms do. */
class AlarmPageTest {

  private static final double NANOS = 1e9;

  @Test
  void theTableHoldsEveryAlarmWithItsFigures() throws IOException {
    List<String> found =
        Files.readAllLines(Path.of("../docs/alarms.md")).stream()
            .filter(line -> line.startsWith("| `"))
            .toList();
    List<String> rules =
        AlarmCatalogue.of(Heron.COACH, List.of("1", "2")).stream()
            .map(source -> row(source.rule()))
            .distinct()
            .toList();
    assertEquals(rules, found);
  }

  private static String row(AlarmRule rule) {
    String id = rule.id().replaceAll("^(fridge|sensor)-[a-z0-9]+", "$1-<id>");
    return String.format(
        Locale.ROOT,
        "| `%s` | %s | %.0f s | %.0f s | %s | %s | %s |",
        id,
        rule.priority().name().toLowerCase(Locale.ROOT),
        rule.onDelayNanos() / NANOS,
        rule.offDelayNanos() / NANOS,
        deadband(rule.deadband()),
        rule.latching() ? "yes" : "no",
        rule.suppressedUnderWay() ? "silent" : "says so");
  }

  private static String deadband(double rad) {
    String deg = String.format(Locale.ROOT, "%.2f", Math.toDegrees(rad)).replaceAll("0+$", "");
    return rad == 0 ? "0" : deg + " deg";
  }
}
