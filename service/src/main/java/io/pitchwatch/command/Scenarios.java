package io.pitchwatch.command;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The scenarios that come with the simulated coach, found on the class path. */
final class Scenarios {

  private static final String FOLDER = "pitchwatch-scenarios";
  private static final String ENDING = ".toml";

  /** The coach that the scenarios share; not a scenario itself. */
  private static final String COACH = "heron";

  private Scenarios() {}

  /** Their names, in order. */
  static List<String> names() throws IOException {
    URL folder = Scenarios.class.getClassLoader().getResource(FOLDER);
    if (folder == null) {
      return List.of();
    }
    try {
      URI uri = folder.toURI();
      if (!"jar".equals(uri.getScheme())) {
        return names(Path.of(uri));
      }
      try (FileSystem jar = FileSystems.newFileSystem(uri, Map.of())) {
        return names(jar.getPath(FOLDER));
      }
    } catch (URISyntaxException e) {
      throw new IOException(folder + " is no address", e);
    }
  }

  private static List<String> names(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .map(file -> String.valueOf(file.getFileName()))
          .filter(name -> name.endsWith(ENDING))
          .map(name -> name.substring(0, name.length() - ENDING.length()))
          .filter(name -> !name.equals(COACH))
          .sorted()
          .toList();
    }
  }

  /**
   * A scenario by its path or, where there is no such file, by the name of a built-in one, which is
   * copied to the directory; says what there is when there is none.
   */
  static Optional<Path> find(String name, Path directory, PrintWriter err) throws IOException {
    Path given = Path.of(name);
    Optional<Path> file =
        Files.isRegularFile(given) ? Optional.of(given.toAbsolutePath()) : unpack(name, directory);
    if (file.isEmpty()) {
      err.println(
          "scenario \""
              + name
              + "\" is no file and not built in; built in are: "
              + String.join(", ", names()));
    }
    return file;
  }

  /**
   * Copies a scenario and its coach to a directory.
   *
   * @return the scenario's file there; empty when there is none of that name
   */
  static Optional<Path> unpack(String name, Path directory) throws IOException {
    if (!names().contains(name)) {
      return Optional.empty();
    }
    copy(COACH, directory);
    return Optional.of(copy(name, directory));
  }

  private static Path copy(String name, Path directory) throws IOException {
    Path file = directory.resolve(name + ENDING);
    String resource = FOLDER + "/" + name + ENDING;
    try (InputStream in = Scenarios.class.getClassLoader().getResourceAsStream(resource)) {
      if (in == null) {
        throw new IOException(resource + " is not on the class path");
      }
      Files.copy(in, file);
    }
    return file;
  }
}
