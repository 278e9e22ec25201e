package io.pitchwatch.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.stream.Stream;

/** A directory that is gone with all that is in it once it is closed. */
record TemporaryDirectory(Path path) implements AutoCloseable {

  static TemporaryDirectory make(String prefix) throws IOException {
    return new TemporaryDirectory(Files.createTempDirectory(prefix));
  }

  @Override
  public void close() throws IOException {
    try (Stream<Path> files = Files.walk(path)) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(file);
      }
    }
  }
}
