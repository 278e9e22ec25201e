package io.pitchwatch.command;

import static org.junit.jupiter.api.Assertions.fail;

import io.pitchwatch.mqtt.BrokerProcess;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** The whole service in a process of its own, on a simulated coach and another's broker. */
final class DaemonProcess implements AutoCloseable {

  private final Process process;
  private final Path output;

  private DaemonProcess(Process process, Path output) {
    this.process = process;
    this.output = output;
  }

  static DaemonProcess start(Path directory, String scenario, BrokerProcess broker)
      throws IOException {
    Path file = Files.writeString(Files.createTempFile(directory, "scenario", ".toml"), scenario);
    Path output = Files.createTempFile(directory, "daemon", ".log");
    List<String> command =
        List.of(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-Xmx64m",
            "-cp",
            System.getProperty("java.class.path"),
            Pitchwatch.class.getName(),
            "demo",
            "--scenario",
            file.toString(),
            "--broker",
            broker.address().toString(),
            "--user",
            broker.daemon().user(),
            "--password-file",
            broker.daemon().passwordFile().toString());
    Process process =
        new ProcessBuilder(command)
            .redirectErrorStream(true)
            .redirectOutput(output.toFile())
            .start();
    return new DaemonProcess(process, output);
  }

  long pid() {
    return process.pid();
  }

  boolean isAlive() {
    return process.isAlive();
  }

  /** kill −9. */
  void kill() {
    process.destroyForcibly();
  }

  /** SIGTERM, and waits for the end. */
  void stop() throws InterruptedException {
    process.destroy();
    if (!process.waitFor(20, TimeUnit.SECONDS)) {
      fail("the daemon does not end; it said: " + said());
    }
  }

  String said() {
    try {
      return Files.readString(output);
    } catch (IOException e) {
      return "nothing that can be read: " + e;
    }
  }

  @Override
  public void close() {
    process.destroyForcibly();
  }
}
