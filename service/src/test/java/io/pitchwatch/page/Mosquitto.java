package io.pitchwatch.page;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** A real broker of its own, on loopback: MQTT on one port, MQTT over WebSocket on another. */
final class Mosquitto implements AutoCloseable {

  static final String EXECUTABLE = "/usr/sbin/mosquitto";

  /** The coach's own account. */
  static final String COACH = "pitchwatch";

  /** One that may read and write. */
  static final String DRIVER = "driver";

  /** One that may only read. */
  static final String GUEST = "guest";

  private static final String PASSWORD = "wren-harbour-7";
  private static final int START_SECONDS = 10;

  private final Path directory;
  private final int port;
  private final int webSocketPort;
  private Process process;

  private Mosquitto(Path directory) throws IOException {
    this.directory = directory;
    port = freePort();
    webSocketPort = freePort();
    writeAccounts();
    Files.writeString(
        directory.resolve("mosquitto.conf"),
        String.join(
            "\n",
            "user " + System.getProperty("user.name"),
            "allow_anonymous false",
            // Paho counts what is in flight against the broker's limit, and miscounts.
            "max_inflight_messages 0",
            "password_file " + directory.resolve("accounts"),
            "acl_file " + directory.resolve("rights"),
            "listener " + port + " 127.0.0.1",
            "listener " + webSocketPort + " 127.0.0.1",
            "protocol websockets",
            ""));
    process = launch();
  }

  static Mosquitto start(Path directory) throws IOException {
    return new Mosquitto(directory);
  }

  int port() {
    return port;
  }

  int webSocketPort() {
    return webSocketPort;
  }

  static String password() {
    return PASSWORD;
  }

  /** Kills it as a power cut would: nothing retained survives. */
  void kill() {
    process.destroyForcibly();
    try {
      process.waitFor(START_SECONDS, TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** Starts it again on the same ports. */
  void startAgain() throws IOException {
    process = launch();
  }

  @Override
  public void close() {
    kill();
  }

  private Process launch() throws IOException {
    Process started =
        new ProcessBuilder(EXECUTABLE, "-c", directory.resolve("mosquitto.conf").toString())
            .redirectErrorStream(true)
            .redirectOutput(directory.resolve("log").toFile())
            .start();
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(START_SECONDS);
    while (!listens(port) || !listens(webSocketPort)) {
      if (!started.isAlive() || System.nanoTime() - end > 0) {
        started.destroyForcibly();
        throw new IOException("mosquitto: " + Files.readString(directory.resolve("log")));
      }
      Thread.onSpinWait();
    }
    return started;
  }

  private void writeAccounts() throws IOException {
    Path accounts = Files.createFile(directory.resolve("accounts"));
    for (String user : List.of(COACH, DRIVER, GUEST)) {
      Process hashing =
          new ProcessBuilder("mosquitto_passwd", "-b", accounts.toString(), user, PASSWORD)
              .inheritIO()
              .start();
      try {
        if (hashing.waitFor() != 0) {
          throw new IOException("mosquitto_passwd ended with " + hashing.exitValue());
        }
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        throw new IOException("interrupted while hashing a password", e);
      }
    }
    Files.writeString(
        directory.resolve("rights"),
        String.join(
            "\n",
            "user " + COACH,
            "topic readwrite #",
            "user " + DRIVER,
            "topic readwrite homie/#",
            "user " + GUEST,
            "topic read homie/#",
            ""));
  }

  private static boolean listens(int port) {
    try (Socket socket = new Socket()) {
      socket.connect(new InetSocketAddress(InetAddress.getLoopbackAddress(), port), 200);
      return true;
    } catch (IOException e) {
      return false;
    }
  }

  private static int freePort() {
    try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      return socket.getLocalPort();
    } catch (IOException e) {
      throw new UncheckedIOException("no free port", e);
    }
  }
}
