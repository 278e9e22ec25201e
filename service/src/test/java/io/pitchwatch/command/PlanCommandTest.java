package io.pitchwatch.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** A lean given by hand: what the commands print, and what they say to wrong input. */
class PlanCommandTest {

  @TempDir Path directory;
  private Path config;
  private String out = "";
  private String err = "";

  @BeforeEach
  void describe() throws IOException {
    config = directory.resolve("heron.toml");
    Files.writeString(config, SmallCoach.TOML);
  }

  private int run(String command, String... more) {
    List<String> args = new ArrayList<>(List.of(command, "--config", config.toString()));
    args.addAll(List.of(more));
    StringWriter told = new StringWriter();
    StringWriter said = new StringWriter();
    CommandLine line =
        Pitchwatch.commandLine()
            .setOut(new PrintWriter(told, true))
            .setErr(new PrintWriter(said, true));
    int code = line.execute(args.toArray(String[]::new));
    out = told.toString();
    err = said.toString();
    return code;
  }

  @Test
  void allThatIsWrongWithTheOptionsIsToldAtOnce() {
    int code =
        run("plan", "--roll", "99", "--pitch", "NaN", "--surface", "mud", "--stay", "forever");
    assertEquals(2, code);
    assertEquals(
        List.of(
            "plan: --surface is mud; allowed are concrete, asphalt, gravel, grass, soft",
            "plan: --stay is forever; allowed are overnight, stay, season",
            "plan: --roll is 99.0 deg; allowed are -15 to 15 deg",
            "plan: --pitch is NaN deg; allowed are -15 to 15 deg"),
        err.lines().toList());
    assertEquals("", out);
  }

  @Test
  void anEmptyInventoryIsAnAnswerNotAFault() {
    assertEquals(0, run("plan", "--roll", "2.5", "--pitch", "1"));
    assertTrue(out.startsWith("Nothing on board brings this floor nearer to level"), out);
    assertTrue(out.contains("nothing to lay under tyres is on board"), out);
    assertTrue(out.contains("Chock the wheels"), out);
    assertEquals("", err);
  }

  @Test
  void theSteepestLeansThatAreAllowedAreAnswered() {
    assertEquals(0, run("plan", "--roll", "15", "--pitch", "-15"), err);
    assertEquals(0, run("turn", "--roll", "15", "--pitch", "-15", "--json"), err);
    assertTrue(out.startsWith("{"), out);
  }
}
