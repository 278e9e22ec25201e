package io.pitchwatch.config;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.pitchwatch.config.PasswordFile.Outcome;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PasswordFileTest {

  @TempDir Path directory;

  @Test
  void theFirstLineIsThePassword() throws IOException {
    Path file = Files.writeString(directory.resolve("p"), "pass phrase\r\nanother\n");
    assertEquals(new Outcome.Password("pass phrase"), PasswordFile.read(file));
    assertFalse(PasswordFile.read(file).toString().contains("phrase"), "a log would tell it");
  }

  @Test
  void anAbsentFileIsMadeForThisUserAloneAndKept() throws IOException {
    Path file = directory.resolve("state/p");
    Outcome.Password made =
        assertInstanceOf(Outcome.Password.class, PasswordFile.readOrCreate(file));
    assertEquals(24, made.secret().length());
    assertEquals("rw-------", PosixFilePermissions.toString(Files.getPosixFilePermissions(file)));
    assertEquals(made, PasswordFile.readOrCreate(file));
    assertEquals(made, PasswordFile.read(file));
  }

  @Test
  void whatIsNoPasswordIsTold() throws IOException {
    assertTrue(why(PasswordFile.read(directory.resolve("none"))).endsWith("no such file."));
    Path empty = Files.writeString(directory.resolve("empty"), "\nx");
    assertTrue(why(PasswordFile.read(empty)).contains("first line must be the password"));
    assertTrue(why(PasswordFile.readOrCreate(empty)).contains("first line"), "not overwritten");
    why(PasswordFile.read(Files.writeString(directory.resolve("long"), "x".repeat(5000))));
    why(PasswordFile.read(directory));
    why(PasswordFile.readOrCreate(Path.of("/proc/none/p")));
  }

  private static String why(Outcome outcome) {
    return assertInstanceOf(Outcome.Unusable.class, outcome).why();
  }
}
