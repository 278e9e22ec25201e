package io.pitchwatch.config;

import io.pitchwatch.config.Config.Broker;
import io.pitchwatch.config.Config.Login;
import io.pitchwatch.config.Config.Mqtt;
import io.pitchwatch.config.Config.Page;
import io.pitchwatch.config.Config.Store;
import java.net.URI;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads [mqtt], [page] and [store]. */
final class ServiceReader {

  private static final String OWN_URL = "mqtt://127.0.0.1:1883";
  private static final String OWN_USER = "pitchwatch";
  private static final String PASSWORD_FILE = "mqtt-password";
  private static final Form BIND =
      Form.matching("a host name or an IP address", "[A-Za-z0-9.-]{1,253}|[0-9A-Fa-f:.]{2,45}");

  private final Path directory;
  private final Map<String, String> environment;

  /**
   * Relative paths are relative to the file.
   *
   * @param directory where the file is, absolute
   * @param environment the process's variables
   */
  ServiceReader(Path directory, Map<String, String> environment) {
    this.directory = directory;
    this.environment = environment;
  }

  Store store(Section root) {
    Section section = root.table("store");
    Optional<String> given =
        optional(section, "directory", Form.PATH, "$XDG_STATE_HOME/pitchwatch");
    section.refuseUnknown();
    return new Store(given.map(directory::resolve).orElseGet(this::usualStore).normalize());
  }

  /** The XDG base directory specification 0.8: relative paths in its variables are ignored. */
  private Path usualStore() {
    String state = environment.getOrDefault("XDG_STATE_HOME", "");
    if (state.startsWith("/")) {
      return Path.of(state, "pitchwatch");
    }
    String home = environment.getOrDefault("HOME", "");
    return home.startsWith("/")
        ? Path.of(home, ".local", "state", "pitchwatch")
        : Path.of("/var/lib/pitchwatch");
  }

  Mqtt mqtt(Section root, Store store) {
    Section section = root.table("mqtt");
    URI url = URI.create(section.text("url", BrokerUrl.MQTT, OWN_URL).orElse(OWN_URL));
    Broker broker = section.choice("broker", Broker.class, Broker.OWN);
    Optional<String> refusal = BrokerUrl.refusal(url, broker);
    if (refusal.isPresent() && section.sound("url", "broker")) {
      section.fault("url", Found.quoted(url.toString()), refusal.get());
    }
    Optional<Login> login = login(section, broker, store);
    Optional<Path> caFile = caFile(section, url);
    String tree = section.text("tree", Form.LEVEL, "homie").orElse("homie");
    List<String> announce = section.texts("announce", Form.LEVELS, List.of("homeassistant"));
    section.refuseUnknown();
    return new Mqtt(url, broker, login, caFile, tree, announce);
  }

  private Optional<Path> caFile(Section section, URI url) {
    Optional<String> file = optional(section, "ca-file", Form.PATH, "the system's");
    if (file.isPresent() && !"mqtts".equals(url.getScheme()) && section.sound("url")) {
      section.fault("ca-file", "a file with mqtt://", "a file of certificates with mqtts://");
    }
    return file.map(directory::resolve).map(Path::normalize);
  }

  private Optional<Login> login(Section section, Broker broker, Store store) {
    boolean own = broker == Broker.OWN;
    Optional<String> user = optional(section, "user", Form.USER, OWN_USER + " (own), none (other)");
    Optional<String> file =
        optional(section, "password-file", Form.PATH, PASSWORD_FILE + " in the store (own)");
    if (!own && section.sound("user", "password-file", "broker")) {
      if (user.isPresent() && file.isEmpty()) {
        section.missing("password-file", "the file that holds the password of user");
      } else if (file.isPresent() && user.isEmpty()) {
        section.missing("user", "the user whose password the password-file holds");
      }
    }
    if (!own && user.isEmpty()) {
      return Optional.empty();
    }
    Path path = file.map(directory::resolve).orElse(store.directory().resolve(PASSWORD_FILE));
    return Optional.of(new Login(user.orElse(OWN_USER), path.normalize()));
  }

  Page page(Section root, Mqtt mqtt) {
    Section section = root.table("page");
    boolean enabled = section.flag("enabled", true);
    int port = section.whole("port", 1, 65535, 8080);
    String bind = section.text("bind", BIND, "127.0.0.1").orElse("127.0.0.1");
    Optional<URI> websocket =
        optional(section, "websocket", BrokerUrl.WEBSOCKET, "the MQTT host and port, path /mqtt")
            .map(URI::create);
    boolean taken = mqtt.broker() == Broker.OWN && BrokerUrl.port(mqtt.url()) == port;
    if (enabled && taken && section.sound("port")) {
      section.fault("port", port + ", the port of the built-in broker", "another port");
    }
    section.refuseUnknown();
    return new Page(enabled, port, bind, websocket);
  }

  /** A text without a default of its own; the words say what its absence means. */
  private static Optional<String> optional(Section section, String key, Form form, String words) {
    Optional<String> text = section.text(key, form, words);
    return section.has(key) ? text : Optional.empty();
  }
}
