package io.pitchwatch.mqtt.broker;

import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.util.ArrayList;
import java.util.List;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * The built-in broker, for coaches without one: MQTT 5 and MQTT over WebSocket on one port,
 * passwords always on. It keeps nothing on disk: the daemon, in the same process, says everything
 * anew whenever it connects.
 */
public final class OwnBroker implements AutoCloseable {

  static final Logger LOG = LoggerFactory.getLogger(OwnBroker.class);

  private final ArtemisServer server;

  private OwnBroker(ArtemisServer server) {
    this.server = server;
  }

  /** Starts it; returns once it accepts connections. */
  public static BrokerStart start(OwnBrokerSettings settings) {
    Netty.beSmall();
    try {
      ArtemisServer server = new ArtemisServer(settings, accounts(settings));
      checkPort(settings);
      server.start();
      return new BrokerStart.Running(new OwnBroker(server));
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
  private static void checkPort(OwnBrokerSettings settings) throws IOException {
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

  @Override
  public void close() {
    server.stop();
  }
}
