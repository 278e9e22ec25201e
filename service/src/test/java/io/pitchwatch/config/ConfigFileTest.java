package io.pitchwatch.config;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever the file is, there is a config or a list of faults. */
class ConfigFileTest {

  @TempDir Path directory;

  private ConfigOutcome read(Path file) {
    return new ConfigReader(Map.of()).read(file);
  }

  private ConfigOutcome read(byte[] bytes) throws IOException {
    return read(Files.write(directory.resolve("coach.toml"), bytes));
  }

  private static String only(ConfigOutcome outcome) {
    List<ConfigFault> faults = assertInstanceOf(ConfigOutcome.Faulty.class, outcome).faults();
    assertEquals(1, faults.size(), faults::toString);
    return faults.get(0).toString();
  }

  @Test
  void aFileThatIsNotThereIsTold() {
    Path file = directory.resolve("none.toml");
    assertEquals(
        "none.toml: found no file " + file + "; allowed: a TOML file that this user may read",
        only(read(file)));
    assertTrue(only(read(directory.resolve("no/none.toml"))).contains("none.toml, nor its folder"));
  }

  @Test
  void aDirectoryIsTold() {
    assertTrue(only(read(directory)).endsWith("found a directory; allowed: a TOML file"));
    only(read(Path.of("/")));
  }

  @Test
  void aFileThatMayNotBeReadIsTold() throws IOException {
    Path file = Files.writeString(directory.resolve("coach.toml"), Configs.LEAST);
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("---------"));
    assumeFalse(Files.isReadable(file), "skipped: root may read everything");
    assertTrue(only(read(file)).contains("no permission to read " + file));
  }

  @Test
  void aByteOrderMarkAndWindowsLineEndsDoNoHarm() throws IOException {
    String windows = "\uFEFF" + Configs.LEAST.replace("\n", "\r\n");
    assertInstanceOf(ConfigOutcome.Good.class, read(windows.getBytes(StandardCharsets.UTF_8)));
  }

  @Test
  void whatIsNotUtf8IsToldWithItsLine() throws IOException {
    byte[] latin = (Configs.LEAST + "# f\u00fcr").getBytes(StandardCharsets.ISO_8859_1);
    assertEquals(
        "coach.toml:10: found a byte that is not UTF-8; allowed: UTF-8", only(read(latin)));
    byte[] cut = (Configs.LEAST + "# \u20ac").getBytes(StandardCharsets.UTF_8);
    assertTrue(only(read(java.util.Arrays.copyOf(cut, cut.length - 1))).contains(":10: found a"));
    only(read(Configs.LEAST.getBytes(StandardCharsets.UTF_16)));
  }

  @Test
  void aHugeFileIsRefusedUnread() throws IOException {
    String fault = only(read(new byte[10_000_000]));
    assertEquals("coach.toml: found more than 256 KiB; allowed: a file of a few KiB", fault);
    assumeFalse(!Files.exists(Path.of("/dev/zero")), "skipped: no /dev/zero");
    only(read(Path.of("/dev/zero")));
  }

  @Test
  void deepNestingIsToldAndDoesNotExhaustTheStack() throws IOException {
    for (String open : List.of("[", "{a=", "[[[[{a=")) {
      String toml = "x = " + open.repeat(SourceText.MOST_BYTES / open.length() - 10);
      assertInstanceOf(ConfigOutcome.Faulty.class, read(toml.getBytes(StandardCharsets.UTF_8)));
    }
    String dotted = "a" + ".a".repeat(100_000) + " = 1";
    assertInstanceOf(ConfigOutcome.Faulty.class, read(dotted.getBytes(StandardCharsets.UTF_8)));
  }

  @Test
  void manyTablesAreCountedAndNotRead() throws IOException {
    String toml = Configs.LEAST + "[[fridge]]\n".repeat(20_000);
    List<ConfigFault> faults =
        assertInstanceOf(ConfigOutcome.Faulty.class, read(toml.getBytes(StandardCharsets.UTF_8)))
            .faults();
    assertEquals(9, faults.size(), "eight without an id, and one too many");
    assertEquals(
        "coach.toml:18: fridge[9]: found 20000 of them; allowed: tables, [[fridge]], at most 8",
        faults.get(8).toString());
  }
}
