package io.pitchwatch.bus;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Tells an installer why a bus of the kernel cannot be opened, and what to do. */
final class LinuxBus {

  private LinuxBus() {}

  /**
   * The likeliest reason.
   *
   * @param bus its number
   * @param e what Pi4J said
   */
  static String diagnose(int bus, Throwable e) {
    Path file = Path.of("/dev/i2c-" + bus);
    if (!Files.exists(file)) {
      return file
          + " does not exist: switch I2C on in the board's settings, load the module i2c-dev, or"
          + " name another bus; here "
          + others();
    }
    if (!Files.isReadable(file) || !Files.isWritable(file)) {
      return file
          + " may not be read and written by "
          + System.getProperty("user.name")
          + ": add that user to the group "
          + group(file);
    }
    if (e instanceof LinkageError || e instanceof IllegalStateException) {
      return "Pi4J has native code for aarch64 and ARMv7 only, or could not unpack it; this is "
          + System.getProperty("os.arch")
          + ": "
          + BusFaults.root(e);
    }
    return "cannot open " + file + ": " + BusFaults.root(e);
  }

  private static String others() {
    List<String> found = new ArrayList<>();
    try (DirectoryStream<Path> files = Files.newDirectoryStream(Path.of("/dev"), "i2c-*")) {
      files.forEach(file -> found.add(file.toString()));
    } catch (IOException e) {
      return "/dev cannot be listed: " + e.getMessage();
    }
    found.sort(null);
    return found.isEmpty() ? "is none" : "are " + String.join(", ", found);
  }

  private static String group(Path file) {
    try {
      return Files.getAttribute(file, "unix:gid").equals(0)
          ? "i2c, and let a udev rule give it the file"
          : String.valueOf(Files.getAttribute(file, "posix:group"));
    } catch (IOException | UnsupportedOperationException e) {
      return "that owns it";
    }
  }
}
