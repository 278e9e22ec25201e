package io.pitchwatch.store;

import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.Properties;

/**
 * The few words that the service must remember through a power cut: zero, stay, surface, what is
 * laid. One small file of names and values, replaced as a whole: after any interruption either the
 * old or the new one is there.
 *
 * <p>A file that cannot be read is set aside under another name, so that nothing in it is lost, and
 * the service goes on without. Not thread-safe.
 */
public final class Keepsakes {

  private static final String NAME = "keepsakes.properties";
  private static final String HEAD = "# Kept by Pitchwatch; change it only while it is stopped.\n";

  /** The last line, so that a file that lost its tail is recognised. */
  private static final String TAIL = "# end\n";

  private final Path file;
  private final Properties words = new Properties();

  private Keepsakes(Path file) {
    this.file = file;
  }

  /**
   * What opening brought.
   *
   * @param keepsakes what was kept; empty when nothing could be read
   * @param trouble one sentence for people, when something was wrong
   */
  public record Opened(Keepsakes keepsakes, Optional<String> trouble) {}

  /**
   * Opens what is kept in a directory, which is made when it is missing.
   *
   * @param directory the store's directory
   */
  public static Opened open(Path directory) {
    Keepsakes keepsakes = new Keepsakes(directory.resolve(NAME));
    try {
      Files.createDirectories(directory);
      if (Files.exists(keepsakes.file) && !keepsakes.read()) {
        return new Opened(keepsakes, Optional.of(keepsakes.setAside()));
      }
      return new Opened(keepsakes, Optional.empty());
    } catch (IOException e) {
      return new Opened(keepsakes, Optional.of("the store " + directory + " cannot be used: " + e));
    }
  }

  /** What is kept under a name. */
  public Optional<String> get(String name) {
    return Optional.ofNullable(words.getProperty(name));
  }

  /**
   * Keeps a word under a name; it is on the disk when this returns.
   *
   * @return one sentence for people when it could not be written; it is then kept only until the
   *     service stops
   */
  public Optional<String> put(String name, String word) {
    if (word.equals(words.getProperty(name))) {
      return Optional.empty();
    }
    words.setProperty(name, word);
    try {
      write();
      return Optional.empty();
    } catch (IOException e) {
      return Optional.of(
          name + " is not kept beyond a restart: " + file + " cannot be written: " + e);
    }
  }

  private boolean read() throws IOException {
    byte[] bytes = Files.readAllBytes(file);
    String text = new String(bytes, StandardCharsets.UTF_8);
    if (!text.endsWith(TAIL)) {
      return false;
    }
    try (Reader reader = new StringReader(text)) {
      words.load(reader);
      return true;
    } catch (IllegalArgumentException e) {
      words.clear();
      return false;
    }
  }

  private String setAside() throws IOException {
    int number = 1;
    Path aside = file.resolveSibling(NAME + ".broken-" + number);
    while (Files.exists(aside)) {
      number++;
      aside = file.resolveSibling(NAME + ".broken-" + number);
    }
    Files.move(file, aside);
    return file
        + " is damaged; it was set aside as "
        + aside.getFileName()
        + ". Zero again, please";
  }

  private void write() throws IOException {
    try (StringWriter text = new StringWriter()) {
      text.write(HEAD);
      try (Writer lines = text) {
        words.store(lines, null);
        lines.write(TAIL);
      }
      replace(text.toString().getBytes(StandardCharsets.UTF_8));
    }
  }

  /** Written beside, forced, moved, and the directory forced: a power cut leaves one of the two. */
  private void replace(byte[] bytes) throws IOException {
    Path beside = file.resolveSibling(NAME + ".new");
    try (FileChannel channel =
        FileChannel.open(
            beside,
            StandardOpenOption.CREATE,
            StandardOpenOption.TRUNCATE_EXISTING,
            StandardOpenOption.WRITE)) {
      ByteBuffer buffer = ByteBuffer.wrap(bytes);
      while (buffer.hasRemaining()) {
        channel.write(buffer);
      }
      channel.force(true);
    }
    Files.move(beside, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    Path directory = file.toAbsolutePath().getParent();
    if (directory != null) {
      try (FileChannel channel = FileChannel.open(directory, StandardOpenOption.READ)) {
        channel.force(true);
      }
    }
  }
}
