package io.pitchwatch.command;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One process at a time uses a store and its sensors: two would take each other's samples, and one
 * would overwrite what the other keeps. The claim ends with the process, however that ends.
 */
final class StoreClaim implements AutoCloseable {

  private static final String FILE = "in-use";

  private final @Nullable FileChannel channel;

  private StoreClaim(@Nullable FileChannel channel) {
    this.channel = channel;
  }

  /**
   * Claims a store. Where the disk allows no claim there is none to respect either: the store
   * itself will say what is wrong with the disk.
   *
   * @return empty when another process has it
   */
  static Optional<StoreClaim> take(Path directory) {
    FileChannel opened;
    try {
      Files.createDirectories(directory);
      opened =
          FileChannel.open(
              directory.resolve(FILE), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
    } catch (IOException e) {
      return Optional.of(new StoreClaim(null));
    }
    try {
      if (opened.tryLock() != null) {
        return Optional.of(new StoreClaim(opened));
      }
      opened.close();
      return Optional.empty();
    } catch (OverlappingFileLockException e) {
      close(opened);
      return Optional.empty();
    } catch (IOException e) {
      // A file system without locks.
      return Optional.of(new StoreClaim(opened));
    }
  }

  @Override
  public void close() {
    if (channel != null) {
      close(channel);
    }
  }

  private static void close(FileChannel channel) {
    try {
      channel.close();
    } catch (IOException e) {
      // The claim ends with the process at the latest.
    }
  }
}
