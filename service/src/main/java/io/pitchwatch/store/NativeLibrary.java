package io.pitchwatch.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Arrays;
import org.sqlite.util.LibraryLoaderUtil;

/**
 * SQLite's native code, kept in one place. Left to itself the driver unpacks a megabyte into the
 * temporary directory at every start, and leaves it there whenever the process is killed.
 */
final class NativeLibrary {

  private static final String PATH = "org.sqlite.lib.path";
  private static final String NAME = "org.sqlite.lib.name";
  private static final int CHUNK = 8192;

  private NativeLibrary() {}

  /** Has the library used that a store keeps, if it keeps one; a reader leaves none behind. */
  static void useIfIn(Path directory) {
    if (Files.isDirectory(directory)) {
      keepIn(directory);
    }
  }

  /**
   * Has the driver load its library from the directory, where it is put if it is not there or
   * differs. Does nothing if somebody chose a place already; if the directory cannot be written,
   * the driver falls back on the temporary directory.
   */
  static void keepIn(Path directory) {
    if (System.getProperty(PATH) != null) {
      return;
    }
    String name = LibraryLoaderUtil.getNativeLibName();
    String resource = LibraryLoaderUtil.getNativeLibResourcePath() + "/" + name;
    try {
      Path file = directory.resolve(name);
      if (!isSame(file, resource)) {
        unpack(resource, file);
      }
      System.setProperty(PATH, directory.toString());
      System.setProperty(NAME, name);
    } catch (IOException e) {
      // The driver has its own way, which needs no help; only the temporary directory grows.
      System.clearProperty(PATH);
    }
  }

  private static InputStream open(String resource) throws IOException {
    InputStream in = LibraryLoaderUtil.class.getResourceAsStream(resource);
    if (in == null) {
      throw new IOException("no " + resource);
    }
    return in;
  }

  private static boolean isSame(Path file, String resource) throws IOException {
    if (!Files.isRegularFile(file)) {
      return false;
    }
    try (InputStream kept = Files.newInputStream(file);
        InputStream ours = open(resource)) {
      byte[] chunk = ours.readNBytes(CHUNK);
      while (chunk.length > 0) {
        if (!Arrays.equals(chunk, kept.readNBytes(chunk.length))) {
          return false;
        }
        chunk = ours.readNBytes(CHUNK);
      }
      return kept.read() < 0;
    }
  }

  private static void unpack(String resource, Path file) throws IOException {
    Files.createDirectories(file.getParent());
    Path fresh = Files.createTempFile(file.getParent(), "unpacking", ".so");
    try (InputStream in = open(resource)) {
      Files.copy(in, fresh, StandardCopyOption.REPLACE_EXISTING);
      Files.move(fresh, file, StandardCopyOption.ATOMIC_MOVE);
    } finally {
      Files.deleteIfExists(fresh);
    }
  }
}
