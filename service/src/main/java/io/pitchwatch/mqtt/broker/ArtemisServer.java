package io.pitchwatch.mqtt.broker;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.apache.activemq.artemis.api.core.TransportConfiguration;
import org.apache.activemq.artemis.core.config.Configuration;
import org.apache.activemq.artemis.core.config.impl.ConfigurationImpl;
import org.apache.activemq.artemis.core.remoting.impl.netty.NettyAcceptorFactory;
import org.apache.activemq.artemis.core.server.ActiveMQServer;
import org.apache.activemq.artemis.core.server.impl.ActiveMQServerImpl;
import org.apache.activemq.artemis.core.settings.impl.AddressFullMessagePolicy;
import org.apache.activemq.artemis.core.settings.impl.AddressSettings;

/** One run of Artemis, with as little of it as serves one coach. */
final class ArtemisServer {

  private static final int KIB = 1024;

  /** As the link's own limit: a larger message has no business here. */
  private static final int LARGEST_PACKET = 256 * KIB;

  private static final long MEMORY = 8L * KIB * KIB;

  /** Beyond this a client that does not read loses messages; the others do not notice. */
  private static final long QUEUE_MEMORY = 512L * KIB;

  private static final long START_S = 20;

  private final ActiveMQServer server;

  /** One that is not started yet. */
  ArtemisServer(OwnBrokerSettings settings, List<Account> accounts) {
    Rights rights = new Rights(settings.tree(), settings.hubPrefixes());
    Configuration configuration = configuration(settings);
    server = new ActiveMQServerImpl(configuration, new ArtemisSecurity(accounts, rights));
  }

  /**
   * Starts; returns once it accepts connections.
   *
   * @throws IOException if it does not start
   */
  void start() throws IOException {
    try {
      server.start();
      if (!server.waitForActivation(START_S, TimeUnit.SECONDS) || !server.isActive()) {
        throw new IOException("it does not become active");
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IOException("interrupted", e);
    } catch (Exception e) {
      stop();
      throw new IOException(String.valueOf(e.getMessage()), e);
    }
  }

  /** Stops; what goes wrong then is of no consequence. */
  void stop() {
    try {
      server.stop();
    } catch (Exception e) {
      OwnBroker.LOG.debug("stopping the built-in broker: {}", e.getMessage());
    }
  }

  private static Configuration configuration(OwnBrokerSettings settings) {
    ConfigurationImpl configuration = new ConfigurationImpl();
    configuration.setName("pitchwatch");
    configuration.setPersistenceEnabled(false);
    // With more, a newcomer may hear what stood after what is new: see docs/decisions/artemis.md.
    configuration.setThreadPoolMaxSize(1);
    configuration.setScheduledThreadPoolMaxSize(1);
    configuration.setJMXManagementEnabled(false);
    configuration.setCriticalAnalyzer(false);
    configuration.setSuppressSessionNotifications(true);
    configuration.setGlobalMaxSize(MEMORY);
    configuration.setSecurityEnabled(true);
    // Else a second client with the same password would not be asked who it is.
    configuration.setAuthenticationCacheSize(0);
    configuration.setAcceptorConfigurations(Set.of(acceptor(settings)));
    AddressSettings queues = new AddressSettings();
    queues.setMaxSizeBytes(QUEUE_MEMORY);
    queues.setAddressFullMessagePolicy(AddressFullMessagePolicy.DROP);
    configuration.addAddressSetting("#", queues);
    return configuration;
  }

  private static TransportConfiguration acceptor(OwnBrokerSettings settings) {
    Map<String, Object> transport =
        Map.of(
            "host",
            settings.host(),
            "port",
            settings.port(),
            "protocols",
            "MQTT",
            "remotingThreads",
            1,
            "useEpoll",
            false,
            "useKQueue",
            false);
    Map<String, Object> protocol = Map.of("maximumPacketSize", LARGEST_PACKET);
    return new TransportConfiguration(
        NettyAcceptorFactory.class.getName(), transport, "mqtt", protocol);
  }
}
