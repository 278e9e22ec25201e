package io.pitchwatch.sim.scenario;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Optional;

/**
 * Where a scenario's text comes from: a file, or one of those built in.
 *
 * @param name how messages call it
 * @param file the file; empty if it is built in
 */
record Source(String name, Optional<Path> file) {

  private static final String BUILT_IN = "/pitchwatch-scenarios/";

  /**
   * A scenario by its path or, where no such file is, by the name of a built-in one.
   *
   * @param name "level-night", "my/scenario.toml"
   */
  static Source named(String name) {
    String resource = name.endsWith(".toml") ? name : name + ".toml";
    try {
      Path path = Path.of(name);
      if (!Files.isRegularFile(path) && isBuiltIn(resource)) {
        return new Source(resource, Optional.empty());
      }
      return new Source(name, Optional.of(path));
    } catch (InvalidPathException e) {
      return new Source(resource, Optional.empty());
    }
  }

  /** A file named in this one: beside it, or built in as this one is. */
  Source beside(String other) {
    if (file.isEmpty()) {
      return new Source(other, Optional.empty());
    }
    Path path = file.get().resolveSibling(other);
    return new Source(path.toString(), Optional.of(path));
  }

  /** Its text. */
  String text() throws IOException {
    if (file.isPresent()) {
      return Files.readString(file.get());
    }
    try (InputStream stream = Source.class.getResourceAsStream(BUILT_IN + name)) {
      if (stream == null) {
        throw new NoSuchFileException(name);
      }
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  private static boolean isBuiltIn(String resource) {
    return !resource.contains("/") && Source.class.getResource(BUILT_IN + resource) != null;
  }
}
