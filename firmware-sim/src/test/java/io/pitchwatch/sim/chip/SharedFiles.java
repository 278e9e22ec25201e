package io.pitchwatch.sim.chip;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Reference files beside the project; a test that needs one is skipped where it is absent. */
public final class SharedFiles {

  private static final Path ROOT = Path.of("../../shared/refs");

  private SharedFiles() {}

  /** A file by its name under refs. */
  public static Path path(String name) {
    Path path = ROOT.resolve(name);
    assumeTrue(Files.exists(path), path + " is not here; it is only beside the full checkout");
    return path;
  }

  static List<String> lines(String name) {
    try {
      return Files.readAllLines(path(name)).stream().filter(l -> !l.startsWith("#")).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
