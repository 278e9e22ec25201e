package io.pitchwatch.config;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Mutations of the sample bring a config or clear faults, never an exception, and reading the same
 * bytes twice brings the same. 500 of them, or 100,000 with {@code -Dpitchwatch.full=true}; another
 * start with {@code -Dpitchwatch.seed=N}.
 */
class MutatedConfigPropertyTest {

  private static final long SEED = Long.getLong("pitchwatch.seed", 20_260_101L);
  private static final int CASES = Boolean.getBoolean("pitchwatch.full") ? 100_000 : 500;

  /** Pieces of files that meant well, and of files that did not. */
  private static final String[] SHARDS = {
    "\"",
    "'",
    "\"\"\"",
    "[",
    "]",
    "[[",
    "]]",
    "{",
    "}",
    "=",
    ".",
    ",",
    "#",
    "\n",
    "\r",
    "\\",
    "\0",
    "\\u0000",
    "\\uD800",
    "\uFEFF",
    "\u2212",
    "nan",
    "inf",
    "-inf",
    "-0.0",
    "0x53",
    "1e999",
    "9223372036854775808",
    "2026-01-01",
    "12:00:00",
    "true",
    "null",
    "\"NaN mm\"",
    "\"1/0 in\"",
    "\"-0 mm\"",
    "\"1e9 mm\"",
    "\"38\"",
    "38",
    "\"38 mm\"",
    "\"3 deg\"",
    "\"1-1/2 in\"",
    "[]",
    "{}",
    "[coach]\n",
    "[[axle]]\n",
    "[axle]\n",
    "[[sensor]]\n",
    "[mqtt]\n",
    "id = \"rear\"\n",
    "axle = 3\n",
    "coach.id = \"x\"\n",
    "mounting = { x = \"up\", y = \"up\" }\n",
    "url = \"mqtt://[\"\n",
    "🚌",
    "é",
  };

  @TempDir Path directory;

  @Test
  void aMutatedFileIsReadOrRefusedNeverThrown() throws IOException {
    byte[] sample = Files.readAllBytes(Path.of("../docs/examples/heron.toml"));
    Path file = directory.resolve("coach.toml");
    ConfigReader reader = new ConfigReader(Map.of());
    int good = 0;
    for (int i = 0; i < CASES; i++) {
      SplittableRandom random = new SplittableRandom(SEED + i);
      Files.write(file, mutated(sample, random));
      ConfigOutcome outcome = read(reader, file, SEED + i);
      if (i % 50 == 0) {
        assertEquals(outcome, reader.read(file), () -> "seed " + SEED);
      }
      if (outcome instanceof ConfigOutcome.Faulty faulty) {
        assertClear(faulty, SEED + i);
      } else {
        good++;
      }
    }
    // Both ways must be walked, or the mutations are too mild or too wild.
    assertTrue(good > CASES / 50 && good < CASES / 2, good + " good of " + CASES);
  }

  private static ConfigOutcome read(ConfigReader reader, Path file, long seed) {
    try {
      return reader.read(file);
    } catch (RuntimeException | Error e) {
      return fail("seed " + seed + " in " + file, e);
    }
  }

  private static void assertClear(ConfigOutcome.Faulty faulty, long seed) {
    assertFalse(faulty.faults().isEmpty(), () -> "seed " + seed + ": refused without a reason");
    for (ConfigFault fault : faulty.faults()) {
      String text = fault.toString();
      assertTrue(
          text.startsWith("coach.toml")
              && !fault.found().isBlank()
              && !fault.allowed().isBlank()
              && text.length() < 1000
              && text.codePoints().noneMatch(Character::isISOControl),
          () -> "seed " + seed + ": " + text);
    }
  }

  private static byte[] mutated(byte[] sample, SplittableRandom random) {
    String text = new String(sample, StandardCharsets.UTF_8);
    int edits = 1 + random.nextInt(4);
    for (int i = 0; i < edits; i++) {
      text = edited(text, random);
    }
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    if (random.nextInt(8) == 0 && bytes.length > 0) {
      bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
    }
    return bytes;
  }

  private static String edited(String text, SplittableRandom random) {
    int at = random.nextInt(text.length() + 1);
    int to = Math.min(text.length(), at + random.nextInt(random.nextInt(20) == 0 ? 2000 : 12));
    String shard = SHARDS[random.nextInt(SHARDS.length)];
    return switch (random.nextInt(6)) {
      case 0 -> text.substring(0, at) + text.substring(to);
      case 1 -> text.substring(0, at) + shard + text.substring(at);
      case 2 -> text.substring(0, at) + text.substring(at, to).repeat(3) + text.substring(to);
      case 3 -> withoutLine(text, at);
      case 4 -> withValue(text, at, shard);
      default -> withDigit(text, at, random.nextInt(10));
    };
  }

  private static String withoutLine(String text, int at) {
    int start = text.lastIndexOf('\n', at - 1) + 1;
    int end = text.indexOf('\n', at);
    return text.substring(0, start) + (end < 0 ? "" : text.substring(end + 1));
  }

  private static String withValue(String text, int at, String value) {
    int equals = text.indexOf("= ", at);
    int end = text.indexOf('\n', Math.max(equals, 0));
    if (equals < 0 || end < 0) {
      return text + value;
    }
    return text.substring(0, equals + 2) + value + text.substring(end);
  }

  private static String withDigit(String text, int at, int digit) {
    for (int i = at; i < text.length(); i++) {
      if (Character.isDigit(text.charAt(i))) {
        return text.substring(0, i) + digit + text.substring(i + 1);
      }
    }
    return text;
  }
}
