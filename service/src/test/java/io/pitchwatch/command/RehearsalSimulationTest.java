package io.pitchwatch.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import io.pitchwatch.mqtt.Schemas;
import io.pitchwatch.store.KeptArchive;
import io.pitchwatch.visit.SiteVisit;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;

/** The command as it is given, the whole service and its store behind it. */
class RehearsalSimulationTest {

  private static final String SITE =
      """
      name = "a trial"
      seed = 9
      coach = "heron.toml"
      [sensor]
      bias = "0 mg"
      [site]
      roll = "2 deg"
      pitch = "-0.3 deg"
      """;

  @TempDir Path directory;

  private record Played(int exit, String out, String err) {

    List<String> lines() {
      return out.lines().toList();
    }

    String firstWith(String words) {
      return lines().stream().filter(line -> line.contains(words)).findFirst().orElse("");
    }

    long count(String words) {
      return lines().stream().filter(line -> line.contains(words)).count();
    }
  }

  private static Played rehearse(String... options) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    CommandLine command =
        Pitchwatch.commandLine().setOut(new PrintWriter(out)).setErr(new PrintWriter(err));
    String[] all = Stream.concat(Stream.of("rehearse"), Stream.of(options)).toArray(String[]::new);
    return new Played(command.execute(all), out.toString(), err.toString());
  }

  private Path scenario(String events) throws IOException {
    if (!Files.exists(directory.resolve("heron.toml"))) {
      Scenarios.unpack("arrival", directory);
    }
    Path file = Files.createTempFile(directory, "trial", ".toml");
    return Files.writeString(file, SITE + events);
  }

  private Played rehearse(Path scenario, String... options) {
    String[] all =
        Stream.concat(Stream.of("--scenario", scenario.toString()), Stream.of(options))
            .toArray(String[]::new);
    return rehearse(all);
  }

  @Test
  void theSameScenarioGivesTheSameOutputByteForByte() throws Exception {
    Path file = scenario("[run]\nminutes = 20\n");
    Played once = rehearse(file);
    Played again = rehearse(file);
    assertEquals(ExitCode.GOOD, once.exit(), once.err());
    assertEquals(once.out(), again.out());
    assertTrue(once.out().contains("visit/phase                parked"), once.out());
  }

  @Test
  void anotherSeedGivesOtherFigures() throws Exception {
    Path file = scenario("[run]\nminutes = 5\n");
    String once = rehearse(file).out();
    Files.writeString(file, Files.readString(file).replace("seed = 9", "seed = 10"));
    assertFalse(once.equals(rehearse(file).out().replace("seed 10", "seed 9")));
  }

  @Test
  void theDocumentKeepsToItsSchema() throws Exception {
    Path file =
        scenario(
            """
            [[event]]
            at = "18 min"
            does = "power-cut"
            lasts = "2 min"
            [run]
            minutes = 22
            """);
    Played played = rehearse(file, "--json");
    assertEquals(List.of(), Schemas.faults("rehearsal", played.out()));
    assertTrue(played.out().contains("\"change\":\"raised\""), "no alert is in it");
    assertTrue(played.out().contains("\"does\":\"power-cut\""), "no power cut is in it");
    assertTrue(played.out().contains("\"restarts\":1"), "no restart is in it");
  }

  @Test
  void anArrivalIsPlannedSoonAfterTheStopAndThePlanStands() throws Exception {
    Path file = Scenarios.unpack("arrival", directory).orElseThrow();
    Files.writeString(
        file, Files.readString(file).replaceAll("hours = [0-9]+\\s*$", "minutes = 2\n"));
    List<String> plans =
        rehearse(file).lines().stream().filter(it -> it.matches(".*plan/headline .*up.*")).toList();
    assertEquals(1, plans.size(), plans::toString);
    // It brakes from 8 to 11 s.
    assertTrue(plans.get(0).matches(" 0d 00:00:1[123]\\..*Right side up.*"), plans::toString);
  }

  @Test
  void theOwnerNamesTheSiteOnceTheCoachIsParked() throws Exception {
    Path file = scenario("name = \"Alder Bend\"\n[run]\nminutes = 12\n");
    Path store = directory.resolve("kept");
    Played played = rehearse(file, "--store", store.toString());
    assertTrue(played.out().contains("its owner calls it Alder Bend"), played.out());
    KeptArchive.Opening.Read read =
        assertInstanceOf(KeptArchive.Opening.Read.class, KeptArchive.read(store));
    assertEquals(
        List.of("Alder Bend"), read.sites().visits().stream().map(SiteVisit::site).toList());
  }

  @Test
  void afterAPowerCutTheServiceGoesOnFromItsStore() throws Exception {
    Path file =
        scenario(
            """
            [[event]]
            at = "20 min"
            does = "power-cut"
            lasts = "2 min"
            [run]
            minutes = 40
            """);
    Played played = rehearse(file);
    assertTrue(played.firstWith("$state                     lost").startsWith(" 0d 00:20:00"));
    assertEquals(2, played.count("$state                     ready"));
    assertEquals(1, played.count("arriving"), "the phase was kept: it does not arrive again");
    assertEquals(1, played.count("visit/phase                parked"));
    assertEquals(1, played.count("ALERT raised $alert/floor"), "a restart repeats no alert");
  }

  @Test
  void whatChangesWhileTheBrokerIsAwayIsSaidWhenItIsBack() throws Exception {
    Path file =
        scenario(
            """
            [[event]]
            at = "9 min"
            does = "broker-down"
            lasts = "3 min"
            [run]
            minutes = 15
            """);
    Played played = rehearse(file);
    List<String> meanwhile =
        played.lines().stream()
            .filter(line -> line.matches(" 0d 00:(09:[0-5]|10:|11:).*"))
            .filter(line -> !line.contains("broker-down"))
            .toList();
    assertEquals(List.of(), meanwhile.stream().filter(it -> it.contains("floor/")).toList());
    assertTrue(played.firstWith("parked").startsWith(" 0d 00:12:00"), played.firstWith("parked"));
  }

  @Test
  void aWallClockThatJumpsByYearsChangesNothing() throws Exception {
    String jump = "[[event]]\nat = \"7 min\"\ndoes = \"clock-jump\"\nby = \"-10 years\"\n";
    String run = "[run]\nminutes = 17\n";
    List<String> without = rehearse(scenario(run)).lines();
    List<String> with = rehearse(scenario(jump + run)).lines();
    assertEquals(without, with.stream().filter(line -> !line.contains("clock-jump")).toList());
    assertEquals(without.size() + 1, with.size());
  }

  @Test
  void whatIsLaidIsToldToTheService() throws Exception {
    Path file =
        scenario(
            """
            [[event]]
            at = "2 min"
            does = "lay"
            axle = "rear"
            side = "right"
            layers = ["block"]
            abreast = 2
            [[event]]
            at = "3 min"
            does = "lay"
            axle = "rear"
            side = "right"
            lift = "0 mm"
            [run]
            minutes = 4
            """);
    Played played = rehearse(file);
    assertTrue(
        played.lines().stream()
            .anyMatch(it -> it.matches(" 0d 00:02:00.*visit/laid .*\"piece\":\"block\".*")),
        played.out());
    assertTrue(
        played.lines().stream()
            .anyMatch(it -> it.matches(" 0d 00:03:00.*laid .*\"wheels\":\\[\\].*")),
        played.out());
  }

  static List<String> builtIn() throws IOException {
    return Scenarios.names();
  }

  @ParameterizedTest
  @MethodSource("builtIn")
  void everyBuiltInScenarioBegins(String name) throws Exception {
    Path file = Scenarios.unpack(name, directory).orElseThrow();
    String text = Files.readString(file);
    Files.writeString(file, text.replaceAll("(days|hours) = [0-9]+\\s*$", "minutes = 14\n"));
    Played played = rehearse(file);
    assertEquals(ExitCode.GOOD, played.exit(), played.err());
    assertTrue(played.out().contains("visit/phase                parked"), played.out());
    assertTrue(played.out().contains("14 minutes"), played.lines().get(0));
  }

  @Test
  void aScenarioThatIsNotThereIsSaidAndWhichThereAre() {
    Played played = rehearse("--scenario", "no-such-night");
    assertEquals(ExitCode.NOT_KNOWN, played.exit());
    assertTrue(played.err().contains("no-such-night"), played.err());
    assertTrue(played.err().contains("level-night"), played.err());
    assertEquals("", played.out());
  }

  @Test
  void allFaultsOfAScenarioAreToldWithTheirLines() throws Exception {
    Path file = scenario("[[event]]\nat = \"1 min\"\ndoes = \"rein\"\n[run]\nmintes = 3\n");
    Played played = rehearse(file);
    assertEquals(ExitCode.NOT_KNOWN, played.exit());
    assertTrue(played.err().contains("rein") && played.err().contains("mintes"), played.err());
    assertEquals("", played.out());
  }

  @Test
  void aStoreThatIsThereAlreadyIsLeftAlone() throws Exception {
    Path file = scenario("[run]\nminutes = 1\n");
    Played played = rehearse(file, "--store", directory.toString());
    assertEquals(ExitCode.NOT_KNOWN, played.exit());
    assertTrue(played.err().contains("exists"), played.err());
  }

  @Test
  void aDayGoesByTwoThousandTimesFaster() {
    assumeTrue(Boolean.getBoolean("pitchwatch.full"), "only with -Dpitchwatch.full=true");
    long startNanos = System.nanoTime();
    Played played = rehearse("--scenario", "level-night", "--brief");
    double tookS = (System.nanoTime() - startNanos) / 1e9;
    System.out.print(played.err());
    assertTrue(14 * 3600 / tookS >= 2000, () -> "14 hours took " + tookS + " s");
  }
}
