package io.pitchwatch.mqtt.broker;

import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * The built-in broker, for coaches without one: MQTT 5 and MQTT over WebSocket on one port,
 * passwords always on. When the disk fails it goes on without keeping anything.
 */
public final class OwnBroker implements AutoCloseable {

  static final Logger LOG = LoggerFactory.getLogger(OwnBroker.class);

  private static final String STORE = "broker";
  private static final String SPOILT = "broker-spoilt";

  private final OwnBrokerSettings settings;
  private final List<Account> accounts;
  private Optional<ArtemisServer> server = Optional.empty();
  private boolean closed;

  private OwnBroker(OwnBrokerSettings settings, List<Account> accounts) {
    this.settings = settings;
    this.accounts = accounts;
  }

  /** Starts it; returns once it accepts connections. */
  public static BrokerStart start(OwnBrokerSettings settings) {
    Netty.beSmall();
    try {
      OwnBroker broker = new OwnBroker(settings, accounts(settings));
      broker.checkPort();
      broker.startKeeping();
      return new BrokerStart.Running(broker);
    } catch (IOException e) {
      return new BrokerStart.Failed("the built-in broker does not start: " + e.getMessage());
    }
  }

  private static List<Account> accounts(OwnBrokerSettings settings) throws IOException {
    List<Account> accounts = new ArrayList<>();
    PasswordFile daemon = new PasswordFile(settings.daemon().passwordFile());
    accounts.add(account(settings.daemon().user(), daemon, Account.Kind.DAEMON));
    String dashboard = OwnBrokerSettings.DASHBOARD;
    accounts.add(account(dashboard, settings.passwordFile(dashboard), Account.Kind.DASHBOARD));
    String guest = OwnBrokerSettings.GUEST;
    accounts.add(account(guest, settings.passwordFile(guest), Account.Kind.GUEST));
    return accounts;
  }

  private static Account account(String user, PasswordFile file, Account.Kind kind)
      throws IOException {
    Account account = new Account(user, file.readOrCreate(), kind);
    if (!file.isPrivate()) {
      LOG.warn("{} can be read or changed by others: chmod 600 it", file.path());
    }
    return account;
  }

  /** Artemis itself would go on without the port, and only its log would tell. */
  private void checkPort() throws IOException {
    InetAddress address = InetAddress.getByName(settings.host());
    try (ServerSocket free = new ServerSocket()) {
      free.setReuseAddress(true);
      free.bind(new InetSocketAddress(address, settings.port()));
    } catch (IOException e) {
      throw new IOException(
          "cannot listen on "
              + settings.host()
              + " port "
              + settings.port()
              + ": "
              + e.getMessage()
              + "; is there another broker?",
          e);
    }
  }

  private synchronized void startKeeping() throws IOException {
    Path store = settings.directory().resolve(STORE);
    try {
      startServer(store, true);
    } catch (IOException e) {
      LOG.warn("what stood on the built-in broker cannot be read: {}", e.getMessage());
      try {
        setAside(store);
        startServer(store, true);
      } catch (IOException again) {
        LOG.warn("the built-in broker keeps nothing on disk: {}", again.getMessage());
        startServer(store, false);
      }
    }
  }

  private void startServer(Path store, boolean kept) throws IOException {
    ArtemisServer next = new ArtemisServer(settings, accounts, store, kept);
    next.start(this::goOnWithoutDisk);
    server = Optional.of(next);
  }

  private void setAside(Path store) throws IOException {
    Path spoilt = settings.directory().resolve(SPOILT);
    if (Files.exists(store)) {
      deleteTree(spoilt);
      Files.move(store, spoilt);
      LOG.warn("it was set aside as {}", spoilt);
    }
  }

  private static void deleteTree(Path root) throws IOException {
    if (!Files.exists(root)) {
      return;
    }
    try (Stream<Path> files = Files.walk(root)) {
      for (Path each : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(each);
      }
    }
  }

  /** Artemis stops by itself when it cannot write; it must not be waited for on its own thread. */
  private void goOnWithoutDisk(String why) {
    LOG.warn("the built-in broker cannot write any more ({}): it goes on without keeping", why);
    Thread restart = new Thread(this::restartWithoutDisk, "broker-restart");
    restart.setDaemon(true);
    restart.start();
  }

  private synchronized void restartWithoutDisk() {
    if (closed) {
      return;
    }
    server.ifPresent(ArtemisServer::stop);
    try {
      startServer(settings.directory().resolve(STORE), false);
    } catch (IOException e) {
      LOG.error("the built-in broker does not start again: {}", e.getMessage());
    }
  }

  @Override
  public synchronized void close() {
    closed = true;
    server.ifPresent(ArtemisServer::stop);
    server = Optional.empty();
  }
}
