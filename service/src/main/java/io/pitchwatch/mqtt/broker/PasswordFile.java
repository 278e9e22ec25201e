package io.pitchwatch.mqtt.broker;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.SecureRandom;
import java.util.EnumSet;
import java.util.Set;

/**
 * A password on the first line of a file that only its owner may read.
 *
 * @param path where it is
 */
public record PasswordFile(Path path) {

  /** No letters or digits that are mistaken for each other when read aloud or from paper. */
  private static final String ALPHABET = "abcdefghjkmnpqrstuvwxyz23456789";

  /** 24 of 31 characters: 118 bits. */
  private static final int LENGTH = 24;

  private static final Set<PosixFilePermission> OTHERS =
      EnumSet.of(
          PosixFilePermission.GROUP_READ,
          PosixFilePermission.GROUP_WRITE,
          PosixFilePermission.OTHERS_READ,
          PosixFilePermission.OTHERS_WRITE);

  /**
   * The password; a new one is made up when there is no file yet.
   *
   * @throws IOException if the file cannot be read or made, or holds no password
   */
  public String readOrCreate() throws IOException {
    if (!Files.exists(path)) {
      create();
    }
    String password = Files.readString(path).lines().findFirst().orElse("");
    if (password.isEmpty()) {
      throw new IOException(path + " holds no password on its first line");
    }
    return password;
  }

  /**
   * Whether nobody but the owner (and root) can read or change it; true where that has no meaning.
   */
  public boolean isPrivate() throws IOException {
    try {
      Set<PosixFilePermission> given = Files.getPosixFilePermissions(path);
      given.retainAll(OTHERS);
      return given.isEmpty();
    } catch (UnsupportedOperationException e) {
      return true;
    }
  }

  private void create() throws IOException {
    Path directory = path.toAbsolutePath().getParent();
    if (directory == null) {
      throw new IOException(path + " is not the name of a file");
    }
    Files.createDirectories(directory);
    // Written beside and moved: a power cut must not leave an empty file behind.
    Path beside =
        Files.createTempFile(
            directory,
            ".password",
            "",
            PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------")));
    Files.write(beside, (random() + "\n").getBytes(StandardCharsets.US_ASCII));
    try {
      Files.move(beside, path, StandardCopyOption.ATOMIC_MOVE);
    } catch (FileAlreadyExistsException e) {
      Files.delete(beside);
    }
  }

  private static String random() {
    SecureRandom random = new SecureRandom();
    StringBuilder password = new StringBuilder(LENGTH);
    for (int i = 0; i < LENGTH; i++) {
      password.append(ALPHABET.charAt(random.nextInt(ALPHABET.length())));
    }
    return password.toString();
  }
}
