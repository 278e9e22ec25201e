package io.pitchwatch.mqtt;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import io.pitchwatch.mqtt.link.BrokerAddress;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** A Mosquitto of Debian's, as a process of its own on a free port, to be treated badly. */
public final class Mosquitto implements AutoCloseable {

  private final Path directory;
  private final int port;
  private final List<String> lines;
  private Optional<Process> process = Optional.empty();

  /**
   * One that is not started yet.
   *
   * @param directory for its files, empty
   * @param lines of its configuration, beside the listener
   */
  public Mosquitto(Path directory, String... lines) {
    this.directory = directory;
    this.port = freePort();
    this.lines = List.of(lines);
    boolean present = Files.isExecutable(program("mosquitto"));
    if (System.getenv("PITCHWATCH_REQUIRE_ALL") == null) {
      assumeTrue(present, "skipped: mosquitto is not installed");
    } else if (!present) {
      throw new AssertionError("mosquitto is not installed, and nothing may be skipped");
    }
  }

  /** One that lets everyone in. */
  public static Mosquitto open(Path directory) {
    return new Mosquitto(directory, "allow_anonymous true");
  }

  /** One that asks for credentials; users and passwords alternate. */
  public static Mosquitto guarded(Path directory, String... usersAndPasswords) {
    Mosquitto broker =
        new Mosquitto(
            directory, "allow_anonymous false", "password_file " + directory.resolve("users"));
    for (int i = 0; i < usersAndPasswords.length; i += 2) {
      String create = i == 0 ? "-c" : "-b";
      run(
          program("mosquitto_passwd").toString(),
          "-b",
          create,
          directory.resolve("users").toString(),
          usersAndPasswords[i],
          usersAndPasswords[i + 1]);
    }
    return broker;
  }

  /** Where it listens, or will. */
  public BrokerAddress address() {
    return new BrokerAddress("127.0.0.1", port, false);
  }

  /** Starts it and waits until it accepts connections. */
  public Mosquitto start() {
    try {
      Path config = directory.resolve("mosquitto.conf");
      Files.write(
          config,
          Stream.concat(
                  Stream.of("listener " + port + " 127.0.0.1", "user root", "persistence false"),
                  lines.stream())
              .toList());
      process =
          Optional.of(
              new ProcessBuilder(program("mosquitto").toString(), "-c", config.toString())
                  .redirectErrorStream(true)
                  .redirectOutput(directory.resolve("mosquitto.log").toFile())
                  .start());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    Await.until("mosquitto listens on " + port, this::listens);
    return this;
  }

  private boolean listens() {
    if (!process.orElseThrow().isAlive()) {
      throw new AssertionError("mosquitto ended: see " + directory.resolve("mosquitto.log"));
    }
    try (Socket socket = new Socket()) {
      socket.connect(new InetSocketAddress(InetAddress.getLoopbackAddress(), port), 1000);
      return true;
    } catch (IOException e) {
      return false;
    }
  }

  /** Ends it as a power cut would. */
  public void kill() {
    process.orElseThrow().destroyForcibly();
    awaitEnd();
  }

  /** Asks it to end. */
  public void stop() {
    process.orElseThrow().destroy();
    awaitEnd();
  }

  /** It still holds its sockets and does nothing any more. */
  public void hang() {
    signal("-STOP");
  }

  /** It goes on as if nothing had been. */
  public void goOn() {
    signal("-CONT");
  }

  private void signal(String which) {
    run("kill", which, Long.toString(process.orElseThrow().pid()));
  }

  private void awaitEnd() {
    Process running = process.orElseThrow();
    Await.until("mosquitto ends", Duration.ofSeconds(10), () -> !running.isAlive());
    process = Optional.empty();
  }

  @Override
  public void close() {
    if (process.isPresent()) {
      kill();
    }
  }

  private static Path program(String name) {
    return Stream.of("/usr/sbin", "/usr/bin", "/usr/local/sbin", "/usr/local/bin")
        .map(directory -> Path.of(directory, name))
        .filter(Files::isExecutable)
        .findFirst()
        .orElse(Path.of("/usr/sbin", name));
  }

  private static void run(String... command) {
    try {
      Process run = new ProcessBuilder(command).redirectErrorStream(true).start();
      if (!run.waitFor(10, TimeUnit.SECONDS) || run.exitValue() != 0) {
        String said = new String(run.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        throw new AssertionError(String.join(" ", command) + ": " + said);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      throw new AssertionError(e);
    }
  }

  /** A port that nobody listens on right now. */
  public static int freePort() {
    try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      return socket.getLocalPort();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
