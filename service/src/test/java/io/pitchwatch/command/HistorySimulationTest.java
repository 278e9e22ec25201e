package io.pitchwatch.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.pitchwatch.mqtt.Schemas;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** What the whole service writes down of three rehearsed hours, as the command shows it. */
class HistorySimulationTest {

  private static final String NIGHT =
      """
      name = "a cut and a jump"
      seed = 5
      coach = "heron.toml"
      [sensor]
      bias = "0 mg"
      [site]
      roll = "1 deg"
      [[event]]
      at = "70 min"
      does = "power-cut"
      lasts = "20 min"
      [[event]]
      at = "100 min"
      does = "clock-jump"
      by = "10 years"
      [run]
      hours = 3
      """;

  private static final String BEFORE = "2026-01-01T00:00:00Z";
  private static final String[] ALL = {"--step", "minute", "--from", BEFORE};

  @TempDir static Path directory;
  private static boolean rehearsed;

  private record Played(int exit, String out, String err) {}

  private static Played run(String... arguments) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int exit =
        Pitchwatch.commandLine()
            .setOut(new PrintWriter(out))
            .setErr(new PrintWriter(err))
            .execute(arguments);
    return new Played(exit, out.toString(), err.toString());
  }

  private static String store() {
    return directory.resolve("store").toString();
  }

  @BeforeEach
  void rehearseOnce() throws Exception {
    if (!rehearsed) {
      Scenarios.unpack("arrival", directory);
      Path file = Files.writeString(directory.resolve("night.toml"), NIGHT);
      Played played = run("rehearse", "--brief", "--scenario", file.toString(), "--store", store());
      assertEquals(ExitCode.GOOD, played.exit(), played.err());
      rehearsed = true;
    }
  }

  private static JsonNode document(String... more) throws Exception {
    List<String> arguments = new ArrayList<>(List.of("history", "--json", "--store", store()));
    arguments.addAll(List.of(more));
    Played played = run(arguments.toArray(String[]::new));
    assertEquals(ExitCode.GOOD, played.exit(), played.err());
    assertEquals(List.of(), Schemas.faults("history", played.out()));
    return new ObjectMapper().readTree(played.out());
  }

  @Test
  void noMinuteIsLostButThoseThatWaitedWhenThePowerWent() throws Exception {
    JsonNode rows = document(ALL).get("rows");
    long minutes = 0;
    long gaps = 0;
    for (JsonNode row : rows) {
      minutes += row.get(10).isNull() ? 0 : 1;
      gaps += row.get(10).isNull() ? 1 : 0;
    }
    // 70 minutes of which 6 at most wait, then 90, the last of which is not over.
    assertTrue(minutes >= 64 + 89 && minutes <= 70 + 90, minutes + " minutes");
    assertEquals(1, gaps, "the power cut shows as one row of nulls");
  }

  @Test
  void aClockThatJumpsInARunIsSetRightForAllOfIt() throws Exception {
    JsonNode rows = document("--step", "minute", "--from", "2036-01-01T00:00:00Z").get("rows");
    assertTrue(rows.size() >= 89, rows.size() + " rows");
    for (int i = 1; i < rows.size(); i++) {
      assertEquals(60, rows.get(i).get(0).asLong() - rows.get(i - 1).get(0).asLong());
    }
  }

  @Test
  void theLeanOfEachMinuteIsThatOfTheFloor() throws Exception {
    for (JsonNode row : document().get("rows")) {
      if (!row.get(1).isNull() && row.get(12).asString().contains("alert")) {
        assertEquals(1.0, row.get(1).asDouble(), 0.1);
        assertEquals(0.0, row.get(4).asDouble(), 0.1);
      }
    }
  }

  @Test
  void alertsAreMarkedOnceThoughTheServiceBeganAnew() throws Exception {
    List<String> events = new ArrayList<>();
    document(ALL)
        .get("events")
        .forEach(e -> events.add(e.get("kind").asString() + " " + e.get("name").asString()));
    assertEquals(List.of("raised floor"), events);
  }

  @Test
  void hoursSumTheMinutesUp() throws Exception {
    JsonNode hours = document("--step", "hour", "--from", BEFORE).get("rows");
    JsonNode first = hours.get(0);
    assertEquals(60, first.get(10).asInt());
    assertTrue(first.get(2).asDouble() <= first.get(1).asDouble(), first.toString());
    assertTrue(first.get(1).asDouble() <= first.get(3).asDouble(), first.toString());
  }

  @Test
  void commaSeparatedValuesHaveAHeaderAndAsManyFieldsInEveryRow() {
    List<String> lines = run("history", "--csv", "--store", store()).out().lines().toList();
    assertTrue(lines.get(0).startsWith("time_utc,roll_deg,"), lines.get(0));
    for (String line : lines) {
      assertEquals(13, line.split(",", -1).length, line);
    }
  }

  @Test
  void peopleReadWhichSideIsLow() {
    String out = run("history", "--store", store(), "--step", "minute", "--from", BEFORE).out();
    assertTrue(out.contains("right side low 1.1°"), out);
    assertTrue(out.contains("nothing from here to the next line"), out);
  }

  @Test
  void whereThereIsNoStoreNothingIsMade() {
    Path none = directory.resolve("none");
    Played played = run("history", "--store", none.toString());
    assertEquals(ExitCode.NOT_KNOWN, played.exit());
    assertTrue(played.err().contains("is not there"), played.err());
    assertTrue(Files.notExists(none));
  }

  @Test
  void aFileThatIsNoDatabaseIsSaidToBeNone() throws Exception {
    Path broken = Files.createDirectory(directory.resolve("broken"));
    Files.writeString(
        broken.resolve("history.db"), "no database at all, but long enough\n".repeat(99));
    Played played = run("history", "--store", broken.toString());
    assertEquals(ExitCode.NOT_KNOWN, played.exit());
    assertTrue(played.err().contains("not a database"), played.err());
    assertTrue(Files.exists(broken.resolve("history.db")));
  }
}
