package io.pitchwatch.mqtt.broker;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PasswordFileTest {

  @TempDir Path directory;

  @Test
  void isMadeOnceForItsOwnerOnly() throws Exception {
    PasswordFile file = new PasswordFile(directory.resolve("new/place/mqtt-password"));
    String password = file.readOrCreate();
    assertTrue(password.matches("[a-z2-9]{24}"), "length " + password.length());
    assertEquals(password, file.readOrCreate());
    assertEquals(
        PosixFilePermissions.fromString("rw-------"), Files.getPosixFilePermissions(file.path()));
    assertTrue(file.isPrivate());
    try (Stream<Path> files = Files.list(directory.resolve("new/place"))) {
      assertEquals(List.of(file.path()), files.toList());
    }
  }

  @Test
  void isAnotherOneForEachFile() throws Exception {
    assertNotEquals(
        new PasswordFile(directory.resolve("a")).readOrCreate(),
        new PasswordFile(directory.resolve("b")).readOrCreate());
  }

  @Test
  void noticesThatOthersCanReadIt() throws Exception {
    Path path = Files.writeString(directory.resolve("a"), "secret\n");
    Files.setPosixFilePermissions(path, PosixFilePermissions.fromString("rw-r--r--"));
    assertFalse(new PasswordFile(path).isPrivate());
    assertEquals("secret", new PasswordFile(path).readOrCreate());
  }

  @Test
  void refusesAnEmptyFile() throws Exception {
    Path path = Files.writeString(directory.resolve("a"), "\nsecret");
    assertThrows(IOException.class, () -> new PasswordFile(path).readOrCreate());
  }

  @Test
  void staysOutOfLogs() {
    Account account = new Account("dashboard", "secret", Account.Kind.DASHBOARD);
    assertEquals("dashboard (DASHBOARD)", account.toString());
    assertTrue(account.matches("dashboard", "secret"));
    assertFalse(account.matches("dashboard", "Secret"));
    assertFalse(account.matches("pitchwatch", "secret"));
  }
}
