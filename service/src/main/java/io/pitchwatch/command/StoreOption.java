package io.pitchwatch.command;

import io.pitchwatch.config.Config;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;

/** The options that name a service's store, for every command that only reads it. */
final class StoreOption {

  @Option(
      names = "--config",
      paramLabel = "FILE",
      description = "The coach's config, which says where the store is.")
  Optional<Path> config = Optional.empty();

  @Option(names = "--store", paramLabel = "DIR", description = "The store's directory.")
  Optional<Path> store = Optional.empty();

  /**
   * A store.
   *
   * @param directory where it is
   * @param config of its coach; empty if the directory itself was named
   */
  record Place(Path directory, Optional<Config> config) {}

  /**
   * Where the store is.
   *
   * @param command name of the command, for what is said
   * @return empty, and what is wrong is printed, if that cannot be told
   */
  Optional<Place> place(String command, PrintWriter err) {
    if (config.isPresent() == store.isPresent()) {
      err.println(command + ": name the store, by --config FILE or by --store DIR");
      return Optional.empty();
    }
    return config.isPresent()
        ? ConfigOption.read(config.get(), err)
            .map(read -> new Place(read.store().directory(), Optional.of(read)))
        : Optional.of(new Place(store.orElseThrow(), Optional.empty()));
  }
}
