package io.pitchwatch.command;

import io.pitchwatch.bus.Pi4jBus;
import io.pitchwatch.config.Config;
import io.pitchwatch.config.ConfigReader;
import io.pitchwatch.mqtt.broker.OwnBrokerSettings;
import io.pitchwatch.mqtt.link.BrokerAddress;
import java.io.IOException;
import java.io.PrintWriter;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Everything on one machine: simulated coach, built-in broker, daemon and page. */
@Command(
    name = "demo",
    mixinStandardHelpOptions = true,
    description = "Shows everything on one machine: simulated coach, built-in broker, page.",
    footer = {
      "",
      "Nothing outside a temporary directory is written; it is deleted at the end (Ctrl-C).",
      "Exit codes: 0 stopped, 2 no such scenario or port taken."
    })
final class DemoCommand implements Callable<Integer> {

  private static final int MQTT_PORT = 1883;
  private static final int PAGE_PORT = 8080;
  private static final String LOOPBACK = "127.0.0.1";

  @Spec CommandSpec spec;

  @Option(
      names = "--scenario",
      paramLabel = "NAME",
      defaultValue = "arrival",
      description = "A built-in scenario or a scenario file (default: ${DEFAULT-VALUE}).")
  String scenario;

  @Option(
      names = "--mqtt-port",
      paramLabel = "PORT",
      description = "Port of the broker (default: 1883, or a free one when that is taken).")
  Optional<Integer> mqttPort = Optional.empty();

  @Option(
      names = "--page-port",
      paramLabel = "PORT",
      description = "Port of the page (default: 8080, or a free one when that is taken).")
  Optional<Integer> pagePort = Optional.empty();

  @Option(
      names = "--broker",
      paramLabel = "URL",
      description = "Publish to this broker, such as mqtt://127.0.0.1:1883, not to a built-in one.")
  Optional<URI> broker = Optional.empty();

  @Option(
      names = "--user",
      paramLabel = "NAME",
      description = "User for --broker; without it none is sent.")
  Optional<String> user = Optional.empty();

  @Option(
      names = "--password-file",
      paramLabel = "FILE",
      description = "File with that user's password on its first line.")
  Optional<Path> passwordFile = Optional.empty();

  @Option(
      names = "--websocket",
      paramLabel = "URL",
      description = "Where the page finds --broker: ws:// or wss:// (default: its port, /mqtt).")
  Optional<URI> websocket = Optional.empty();

  private volatile @Nullable Service service;

  @Override
  public Integer call() throws IOException, InterruptedException {
    PrintWriter err = spec.commandLine().getErr();
    Path directory = Files.createTempDirectory("pitchwatch-demo");
    Runtime.getRuntime().addShutdownHook(new Thread(() -> tidy(directory), "stop"));
    Optional<String> wrong = broker.flatMap(DemoCommand::wrong);
    if (wrong.isPresent()) {
      err.println("--broker: " + wrong.get());
      return ExitCode.NOT_KNOWN;
    }
    if (broker.isPresent() && (user.isPresent() != passwordFile.isPresent())) {
      err.println("--user and --password-file go together");
      return ExitCode.NOT_KNOWN;
    }
    if (websocket.isPresent() && !String.valueOf(websocket.get()).matches("wss?://[^/@]+(/.*)?")) {
      err.println("--websocket is \"" + websocket.get() + "\"; allowed is ws://… or wss://…");
      return ExitCode.NOT_KNOWN;
    }
    Optional<Path> file = Scenarios.find(scenario, directory, err);
    if (file.isEmpty()) {
      return ExitCode.NOT_KNOWN;
    }
    Optional<Config> read =
        ConfigOption.good(new ConfigReader(System.getenv()).readScenario(file.get()), err);
    return read.isPresent()
        ? show(onThisMachine(read.get(), directory), file.get())
        : ExitCode.NOT_KNOWN;
  }

  private static Optional<String> wrong(URI url) {
    try {
      BrokerAddress.parse(url.toString());
      return Optional.empty();
    } catch (IllegalArgumentException e) {
      return Optional.of(String.valueOf(e.getMessage()));
    }
  }

  private Config onThisMachine(Config config, Path directory) throws IOException {
    int page = pagePort.isPresent() ? pagePort.get() : freePort(PAGE_PORT);
    return new Config(
        config.file(),
        config.coach(),
        config.sensors(),
        broker.isPresent() ? otherBroker(config, broker.get()) : ownBroker(config, directory),
        new Config.Page(true, page, LOOPBACK, websocket),
        new Config.Store(directory.resolve("store")));
  }

  private Config.Mqtt ownBroker(Config config, Path directory) throws IOException {
    int port = mqttPort.isPresent() ? mqttPort.get() : freePort(MQTT_PORT);
    return new Config.Mqtt(
        URI.create("mqtt://" + LOOPBACK + ":" + port),
        Config.Broker.OWN,
        Optional.of(new Config.Login("pitchwatch", directory.resolve("mqtt-password"))),
        Optional.empty(),
        config.mqtt().tree(),
        config.mqtt().announce());
  }

  private Config.Mqtt otherBroker(Config config, URI url) {
    Path none = Path.of("");
    return new Config.Mqtt(
        url,
        Config.Broker.OTHER,
        user.map(name -> new Config.Login(name, passwordFile.orElse(none))),
        Optional.empty(),
        config.mqtt().tree(),
        config.mqtt().announce());
  }

  private static int freePort(int wanted) throws IOException {
    InetAddress loopback = InetAddress.getLoopbackAddress();
    try (ServerSocket socket = new ServerSocket(wanted, 1, loopback)) {
      return socket.getLocalPort();
    } catch (IOException taken) {
      try (ServerSocket socket = new ServerSocket(0, 1, loopback)) {
        return socket.getLocalPort();
      }
    }
  }

  private int show(Config config, Path file) throws IOException, InterruptedException {
    PrintWriter out = spec.commandLine().getOut();
    PrintWriter err = spec.commandLine().getErr();
    BusChoice choice = BusChoice.simulated(file.toString());
    Optional<String> refusal = refusal(choice);
    if (refusal.isPresent()) {
      err.println(refusal.get());
      return ExitCode.NOT_KNOWN;
    }
    CountDownLatch over = new CountDownLatch(1);
    Service.Ending ending =
        new Service.Ending(
            new Commentary(out),
            why -> {
              err.println(why);
              over.countDown();
            });
    Service.Start start = Service.start(config, choice, ending);
    if (start instanceof Service.Start.Refused refused) {
      err.println(refused.why());
      return ExitCode.NOT_KNOWN;
    }
    Service running = ((Service.Start.Running) start).service();
    service = running;
    printAddresses(config, running, out);
    over.await();
    return ExitCode.NOT_KNOWN;
  }

  /** What the simulated coach finds wrong with its scenario. */
  @SuppressWarnings({"rawtypes", "unchecked"}) // a face is asked for by its class
  private static Optional<String> refusal(BusChoice choice) {
    try (Pi4jBus buses = choice.open()) {
      Optional<Function> questions = buses.face(Function.class);
      return questions.map(q -> (String) q.apply("refusal")).filter(text -> !text.isEmpty());
    }
  }

  private void printAddresses(Config config, Service service, PrintWriter out) throws IOException {
    boolean own = config.mqtt().broker() == Config.Broker.OWN;
    String name = OwnBrokerSettings.DASHBOARD;
    String password = own ? Edges.broker(config).passwordFile(name).readOrCreate() : "";
    String login = own ? "#user=" + name + "&password=" + password : "";
    URI url = config.mqtt().url();
    String root = config.mqtt().tree() + "/5/" + config.coach().id();
    int port = BrokerAddress.parse(url.toString()).port();
    out.println();
    out.println("Simulated coach \"" + config.coach().id() + "\", scenario " + scenario + ".");
    out.println(
        "  page   "
            + service.page().map(p -> p.address() + login).orElse("not served; see the warning"));
    out.println("  mqtt   " + url + (own ? "  user " + name + "  password " + password : ""));
    out.println(
        "  look   mosquitto_sub -h "
            + url.getHost()
            + " -p "
            + port
            + (own ? " -u " + name + " -P " + password : user.map(u -> " -u " + u).orElse(""))
            + " -v -t '"
            + root
            + "/#'");
    out.println("  end    Ctrl-C");
    out.println();
    out.flush();
  }

  /** In this order: what still runs would write into the directory. */
  private void tidy(Path directory) {
    Service running = service;
    if (running != null) {
      running.close();
    }
    delete(directory);
  }

  private static void delete(Path directory) {
    try (Stream<Path> files = Files.walk(directory)) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(file);
      }
    } catch (IOException e) {
      System.err.println(directory + " could not be deleted: " + e.getMessage());
    }
  }
}
