package io.pitchwatch.config;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Optional;

/** The file's bytes as text. */
final class SourceText {

  /** Far more than any coach needs; a larger file is another file. */
  static final int MOST_BYTES = 256 * 1024;

  private SourceText() {}

  /** The text without its byte order mark; empty with a fault noted when there is none. */
  static Optional<String> read(Path file, Faults faults) {
    byte[] bytes;
    if (Files.isDirectory(file)) {
      faults.add(0, "", "a directory", "a TOML file");
      return Optional.empty();
    }
    try (InputStream in = Files.newInputStream(file)) {
      bytes = in.readNBytes(MOST_BYTES + 1);
    } catch (IOException | SecurityException e) {
      faults.add(0, "", reason(file.toAbsolutePath(), e), "a TOML file that this user may read");
      return Optional.empty();
    }
    if (bytes.length > MOST_BYTES) {
      faults.add(0, "", "more than " + MOST_BYTES / 1024 + " KiB", "a file of a few KiB");
      return Optional.empty();
    }
    return decode(bytes, faults);
  }

  private static String reason(Path file, Exception e) {
    if (e instanceof NoSuchFileException) {
      return missing(file);
    }
    return e instanceof AccessDeniedException
        ? "no permission to read " + file
        : "\"" + e.getMessage() + "\"";
  }

  private static String missing(Path file) {
    Path folder = file.getParent();
    return folder == null || Files.isDirectory(folder)
        ? "no file " + file
        : "no file " + file + ", nor its folder";
  }

  private static Optional<String> decode(byte[] bytes, Faults faults) {
    CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CharBuffer out = CharBuffer.allocate(bytes.length);
    if (decoder.decode(in, out, true).isError()) {
      int line = 1;
      for (int i = 0; i < in.position(); i++) {
        line += bytes[i] == '\n' ? 1 : 0;
      }
      faults.add(line, "", "a byte that is not UTF-8", "UTF-8");
      return Optional.empty();
    }
    String text = out.flip().toString();
    return Optional.of(text.startsWith("\uFEFF") ? text.substring(1) : text);
  }
}
