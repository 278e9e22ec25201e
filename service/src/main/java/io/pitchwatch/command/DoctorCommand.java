package io.pitchwatch.command;

import io.pitchwatch.attitude.SensorSetup;
import io.pitchwatch.attitude.TemperatureDrift;
import io.pitchwatch.bus.Pi4jBus;
import io.pitchwatch.config.Config;
import io.pitchwatch.mqtt.link.BrokerAddress;
import io.pitchwatch.sensing.Chip;
import io.pitchwatch.sensing.ChipOutcome;
import io.pitchwatch.sensing.ChipSearch;
import io.pitchwatch.store.Kept;
import io.pitchwatch.store.KeptArchive;
import java.io.IOException;
import java.io.PrintWriter;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Looks at everything the daemon needs, and says what to do about what is missing. */
@Command(
    name = "doctor",
    mixinStandardHelpOptions = true,
    description =
        "Looks at config, bus, chip, drift, broker, page, clock and store; says what to do.",
    footer = {
      "",
      "Makes the store directory if it is missing, and changes nothing else.",
      "Exit codes: 0 all well, 1 a fault was found, 2 wrong config."
    })
final class DoctorCommand implements Callable<Integer> {

  private static final int CONNECT_MILLIS = 3000;
  private static final long NEEDED_BYTES = 50L * 1024 * 1024;

  /** No board's clock is right that says it is earlier than this program. */
  private static final Instant EARLIEST = Instant.parse("2026-01-01T00:00:00Z");

  @Spec CommandSpec spec;
  @Mixin ConfigOption config;

  private boolean allWell = true;

  @Override
  public Integer call() {
    Optional<Config> read = config.read(spec.commandLine().getErr());
    if (read.isEmpty()) {
      return ExitCode.NOT_KNOWN;
    }
    Config good = read.get();
    well("config", config.file + " describes " + good.coach().id());
    java();
    sensors(good, BusChoice.KERNEL);
    drifts(good);
    broker(good);
    page(good.page());
    webSocket(good);
    clock();
    store(good.store().directory());
    return allWell ? ExitCode.GOOD : ExitCode.BAD_NEWS;
  }

  private void java() {
    well("java", Runtime.version() + " on " + System.getProperty("os.arch"));
  }

  private void sensors(Config good, BusChoice choice) {
    try (Pi4jBus buses = choice.open()) {
      for (Config.Sensor sensor : good.sensors()) {
        sensor(buses, sensor);
      }
    }
  }

  private void sensor(Pi4jBus buses, Config.Sensor sensor) {
    Chip chip = Chip.of(sensor.chip().word());
    String place =
        String.format(Locale.ROOT, "bus %d address 0x%02X", sensor.bus(), sensor.address());
    ChipOutcome outcome = chip.driver(buses.at(sensor.bus(), sensor.address())).identify();
    if (outcome.ok()) {
      well("sensor " + sensor.id(), "an " + chip.id() + " answers at " + place);
      return;
    }
    bad("sensor " + sensor.id(), place + ": " + outcome.text());
    for (ChipSearch.Found found : ChipSearch.search(at -> buses.at(sensor.bus(), at))) {
      if (found.address() != sensor.address() && !found.chips().isEmpty()) {
        look(
            String.format(
                Locale.ROOT,
                "but at 0x%02X of that bus there is %s: name it in [sensor]",
                found.address(),
                found.text()));
      }
    }
  }

  private void drifts(Config good) {
    KeptArchive.Opening opening = KeptArchive.read(good.store().directory());
    for (Config.Sensor sensor : good.sensors()) {
      drift(
          sensor,
          opening instanceof KeptArchive.Opening.Read read
              ? Optional.of(read.kept())
              : Optional.empty());
    }
  }

  private void drift(Config.Sensor sensor, Optional<Kept> kept) {
    Chip chip = Chip.of(sensor.chip().word());
    String what = "drift " + sensor.id();
    Optional<TemperatureDrift> learnt =
        kept.flatMap(it -> it.drift(sensor.id(), chip.facts().chip()));
    if (!chip.hasThermometer()) {
      line("note", what, DriftAdvice.unlearnable(chip.facts()));
    } else if (learnt.isEmpty()) {
      line("note", what, DriftAdvice.nothing(chip.facts()));
    } else {
      SensorSetup setup = kept.get().setup(sensor.id());
      well(what, DriftAdvice.learnt(learnt.get().in(setup.chipToFloor(sensor.mounting()))));
      look(DriftAdvice.use(setup, kept.get().driftDate(sensor.id()), Instant.now()));
    }
  }

  private void broker(Config good) {
    Config.Mqtt mqtt = good.mqtt();
    BrokerAddress address = BrokerAddress.parse(mqtt.url().toString());
    if (mqtt.broker() == Config.Broker.OWN) {
      port("broker", address.host(), address.port(), "the built-in broker can listen on ");
      return;
    }
    try (Socket socket = new Socket()) {
      socket.connect(new InetSocketAddress(address.host(), address.port()), CONNECT_MILLIS);
      well("broker", "something listens at " + address);
    } catch (IOException e) {
      bad("broker", address + ": " + e.getMessage() + "; start the broker or mend [mqtt] url");
    }
    mqtt.login().ifPresent(this::password);
  }

  private void password(Config.Login login) {
    if (Files.isReadable(login.passwordFile())) {
      well("password", login.passwordFile() + " is there for user " + login.user());
    } else {
      bad(
          "password",
          login.passwordFile()
              + " cannot be read: write the password of "
              + login.user()
              + " on its first line, and chmod 600 it");
    }
  }

  private void page(Config.Page page) {
    if (!page.enabled()) {
      well("page", "switched off");
      return;
    }
    port("page", page.bind(), page.port(), "can be served at ");
  }

  /** The built-in broker speaks WebSocket by itself; another may do so elsewhere, or not at all. */
  private void webSocket(Config good) {
    if (!good.page().enabled() || good.mqtt().broker() == Config.Broker.OWN) {
      return;
    }
    io.pitchwatch.page.BrokerAddress where = Edges.webSocket(good);
    URI address =
        where instanceof io.pitchwatch.page.BrokerAddress.SameHost same
            ? URI.create("ws://127.0.0.1:" + same.port() + same.path())
            : ((io.pitchwatch.page.BrokerAddress.At) where).uri();
    Optional<String> why = WebSocketProbe.knock(address);
    if (why.isEmpty()) {
      well("websocket", "the page's reader finds the broker at " + address);
    } else {
      bad(
          "websocket",
          address
              + ": "
              + why.get()
              + "; the page reads the broker over WebSocket: give the broker such a listener and"
              + " name it as websocket in [page]");
    }
  }

  private void port(String what, String host, int port, String sentence) {
    try (ServerSocket socket = new ServerSocket()) {
      socket.setReuseAddress(true);
      InetAddress[] addresses = InetAddress.getAllByName(host);
      socket.bind(new InetSocketAddress(addresses[0], port));
      well(what, sentence + host + " port " + port);
    } catch (IOException e) {
      bad(
          what,
          host
              + " port "
              + port
              + ": "
              + e.getMessage()
              + "; if Pitchwatch is running already that is why, else choose another port");
    }
  }

  private void clock() {
    Instant now = Instant.now();
    if (now.isAfter(EARLIEST)) {
      well("clock", "it is " + now);
    } else {
      bad(
          "clock",
          "it says "
              + now
              + ": labels will be wrong and TLS will fail until the network has set it");
    }
  }

  private void store(Path directory) {
    try {
      Files.createDirectories(directory);
      long free = Files.getFileStore(directory).getUsableSpace();
      if (!Files.isWritable(directory)) {
        bad("store", directory + " cannot be written by " + System.getProperty("user.name"));
      } else if (free < NEEDED_BYTES) {
        bad("store", directory + " has only " + free / 1024 / 1024 + " MiB left; make room");
      } else {
        well("store", directory + " can be written, " + free / 1024 / 1024 + " MiB free");
      }
    } catch (IOException e) {
      bad("store", directory + ": " + e.getMessage());
    }
  }

  private void well(String what, String text) {
    line("well", what, text);
  }

  private void bad(String what, String text) {
    allWell = false;
    line("BAD", what, text);
  }

  private void look(String text) {
    line("", "", text);
  }

  private void line(String mark, String what, String text) {
    PrintWriter out = spec.commandLine().getOut();
    out.printf(Locale.ROOT, "%-5s %-12s %s%n", mark, what, text);
  }
}
