package io.pitchwatch.config;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.Set;

/** The file whose first line is the broker's password. */
public final class PasswordFile {

  private static final int MOST_BYTES = 1024;
  private static final int RANDOM_BYTES = 18;

  private PasswordFile() {}

  /** What came of looking into the file. */
  public sealed interface Outcome {

    /**
     * The password, which its text does not tell.
     *
     * @param secret not empty
     */
    record Password(String secret) implements Outcome {
      @Override
      public String toString() {
        return "Password[secret=…]";
      }
    }

    /**
     * There is none.
     *
     * @param why one sentence for people
     */
    record Unusable(String why) implements Outcome {}
  }

  /** Reads the first line, without its end. */
  public static Outcome read(Path file) {
    try (InputStream in = Files.newInputStream(file)) {
      String text = new String(in.readNBytes(MOST_BYTES + 1), StandardCharsets.UTF_8);
      String line = text.lines().findFirst().orElse("");
      if (line.isEmpty() || line.length() > MOST_BYTES) {
        return new Outcome.Unusable(
            file + ": the first line must be the password, 1 to " + MOST_BYTES + " bytes.");
      }
      return new Outcome.Password(line);
    } catch (NoSuchFileException e) {
      return new Outcome.Unusable(file + ": there is no such file.");
    } catch (IOException e) {
      return new Outcome.Unusable(file + ": it cannot be read (" + e.getMessage() + ").");
    }
  }

  /**
   * Reads the first line; where there is no file yet, makes one that only this user may read, with
   * a password of 144 random bits in it.
   */
  public static Outcome readOrCreate(Path file) {
    try {
      create(file);
    } catch (FileAlreadyExistsException e) {
      return read(file);
    } catch (IOException e) {
      return new Outcome.Unusable(file + ": it cannot be made (" + e.getMessage() + ").");
    }
    return read(file);
  }

  private static void create(Path file) throws IOException {
    if (Files.exists(file)) {
      return;
    }
    Path directory = file.toAbsolutePath().getParent();
    if (directory != null) {
      Files.createDirectories(directory);
    }
    byte[] random = new byte[RANDOM_BYTES];
    new SecureRandom().nextBytes(random);
    String line = Base64.getUrlEncoder().encodeToString(random) + "\n";
    var owner = PosixFilePermissions.fromString("rw-------");
    Set<OpenOption> fresh = Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
    try (var channel =
        Files.newByteChannel(file, fresh, PosixFilePermissions.asFileAttribute(owner))) {
      channel.write(StandardCharsets.US_ASCII.encode(line));
    }
  }
}
