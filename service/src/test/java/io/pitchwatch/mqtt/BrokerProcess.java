package io.pitchwatch.mqtt;

import io.pitchwatch.mqtt.link.BrokerAddress;
import io.pitchwatch.mqtt.link.Credentials;
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
import org.eclipse.paho.mqttv5.common.MqttException;

/** A broker as a process of its own on a free port, to be treated badly. */
public abstract class BrokerProcess implements AutoCloseable {

  private final Path directory;
  private final int port;
  private Optional<Process> process = Optional.empty();

  /**
   * One that is not started yet.
   *
   * @param directory for its files
   */
  protected BrokerProcess(Path directory) {
    this.directory = directory;
    this.port = freePort();
  }

  /** The command that runs it. */
  protected abstract List<String> command() throws IOException;

  /** Who the daemon is to this broker. */
  public abstract Credentials daemon();

  /** The password of the user {@code dashboard}. */
  public abstract String dashboardPassword();

  /** Where its files are. */
  protected Path directory() {
    return directory;
  }

  /** Where it listens, or will. */
  public BrokerAddress address() {
    return new BrokerAddress("127.0.0.1", port, false);
  }

  /** Settings of a link to it; the keep-alive is short, so that tests are. */
  public MqttSettings settings() {
    return MqttSettings.of(address(), 1).with(daemon()).withKeepAlive(Duration.ofSeconds(2));
  }

  /** Someone with a dashboard. */
  public Observer dashboard() throws MqttException {
    return new Observer(address(), "dashboard", dashboardPassword());
  }

  /** Starts it and waits until it accepts connections. */
  public BrokerProcess start() {
    try {
      process =
          Optional.of(
              new ProcessBuilder(command())
                  .redirectErrorStream(true)
                  .redirectOutput(ProcessBuilder.Redirect.appendTo(log().toFile()))
                  .start());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    Await.until("the broker listens on " + port, Duration.ofSeconds(40), this::listens);
    return this;
  }

  /** Whether it was started and not ended since. */
  public boolean isRunning() {
    return process.isPresent();
  }

  /** Takes away all that stands on it. */
  public void wipe() throws MqttException {
    try (Observer cleaner =
        new Observer(address(), daemon().user(), read(daemon().passwordFile()).strip())) {
      cleaner.hear("homie/5/#").hear("homeassistant/#").settle();
      List<String> standing =
          cleaner.all().stream()
              .filter(Observer.Heard::retained)
              .map(Observer.Heard::topic)
              .toList();
      for (String topic : standing) {
        cleaner.publish(topic, new byte[0], 1, true);
      }
    }
  }

  /** What it said. */
  public Path log() {
    return directory.resolve("broker.log");
  }

  private boolean listens() {
    if (!process.orElseThrow().isAlive()) {
      throw new AssertionError("the broker ended: " + read(log()));
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
    run("kill", "-STOP", pid());
  }

  /** It goes on as if nothing had been. */
  public void goOn() {
    run("kill", "-CONT", pid());
  }

  /** Its process id. */
  public String pid() {
    return Long.toString(process.orElseThrow().pid());
  }

  private void awaitEnd() {
    Process running = process.orElseThrow();
    Await.until("the broker ends", () -> !running.isAlive());
    process = Optional.empty();
  }

  @Override
  public void close() {
    if (process.isPresent()) {
      kill();
    }
  }

  static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static void run(String... command) {
    try {
      Process run = new ProcessBuilder(command).redirectErrorStream(true).start();
      if (!run.waitFor(10, TimeUnit.SECONDS) || run.exitValue() != 0) {
        byte[] said = run.getInputStream().readAllBytes();
        throw new AssertionError(
            String.join(" ", command) + ": " + new String(said, StandardCharsets.UTF_8));
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
