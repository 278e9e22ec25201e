package io.pitchwatch.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** What the command says to wrong input: nothing is touched, and the way out is named. */
class RecordCommandTest {

  @TempDir Path directory;
  private Path config;
  private String err = "";

  @BeforeEach
  void describe() throws IOException {
    config = directory.resolve("heron.toml");
    Files.writeString(
        config,
        SmallCoach.TOML
            + """
        [store]
        directory = "store"
        """);
  }

  private int run(String... more) {
    String[] args = new String[more.length + 3];
    args[0] = "record";
    args[1] = "--config";
    args[2] = config.toString();
    System.arraycopy(more, 0, args, 3, more.length);
    StringWriter said = new StringWriter();
    CommandLine line = Pitchwatch.commandLine().setErr(new PrintWriter(said, true));
    int code = line.execute(args);
    err = said.toString();
    return code;
  }

  @Test
  void existingFileIsNotOverwritten() throws IOException {
    Path file = directory.resolve("old.csv");
    Files.writeString(file, "dear to somebody");
    assertEquals(2, run("--for", "1 s", "--out", file.toString()));
    assertEquals("--out is " + file + ", which exists; --force overwrites it\n", err);
    assertEquals("dear to somebody", Files.readString(file));
  }

  @Test
  void timeWithoutUnitIsRefused() {
    assertEquals(2, run("--for", "10", "--out", directory.resolve("a.csv").toString()));
    assertTrue(err.startsWith("--for: found \"10\", a number without its unit; allowed is"), err);
  }

  @Test
  void directoryThatIsMissingIsNamed() {
    Path nowhere = directory.resolve("nowhere");
    assertEquals(2, run("--for", "1 s", "--out", nowhere.resolve("a.csv").toString()));
    assertTrue(err.contains("the directory " + nowhere + " does not exist"), err);
  }

  @Test
  void sensorThatTheConfigDoesNotNameIsRefused() {
    String out = directory.resolve("a.csv").toString();
    assertEquals(2, run("--for", "1 s", "--out", out, "--sensor", "rear"));
    assertTrue(err.startsWith("--sensor is \"rear\"; "), err);
  }

  @Test
  void storeThatTheDaemonHoldsIsLeftAlone() {
    StoreClaim held = StoreClaim.take(directory.resolve("store")).orElseThrow();
    assertEquals(2, run("--for", "1 s", "--out", directory.resolve("a.csv").toString()));
    assertTrue(err.startsWith("The daemon is using this sensor"), err);
    held.close();
    assertTrue(StoreClaim.take(directory.resolve("store")).isPresent(), "free again");
  }
}
