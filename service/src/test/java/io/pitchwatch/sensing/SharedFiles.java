package io.pitchwatch.sensing;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Reference files beside the project; a test that needs one is skipped where it is absent. */
final class SharedFiles {

  private static final Path ROOT = Path.of("../../shared/refs");

  private SharedFiles() {}

  static Path path(String name) {
    Path path = ROOT.resolve(name);
    assumeTrue(Files.exists(path), path + " is not here; it is only beside the full checkout");
    return path;
  }

  static List<String> lines(String name) {
    try {
      return Files.readAllLines(path(name));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
