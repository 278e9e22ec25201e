package io.pitchwatch.mqtt.broker;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import org.apache.activemq.artemis.api.core.TransportConfiguration;
import org.apache.activemq.artemis.core.config.Configuration;
import org.apache.activemq.artemis.core.config.impl.ConfigurationImpl;
import org.apache.activemq.artemis.core.remoting.impl.netty.NettyAcceptorFactory;
import org.apache.activemq.artemis.core.server.ActiveMQServer;
import org.apache.activemq.artemis.core.server.JournalType;
import org.apache.activemq.artemis.core.server.impl.ActiveMQServerImpl;
import org.apache.activemq.artemis.core.settings.impl.AddressFullMessagePolicy;
import org.apache.activemq.artemis.core.settings.impl.AddressSettings;

/** One run of Artemis, with as little of it as serves one coach. */
final class ArtemisServer {

  private static final int KIB = 1024;

  /** As the link's own limit: a larger message has no business here. */
  private static final int LARGEST_PACKET = 256 * KIB;

  private static final int JOURNAL_FILE = 512 * KIB;
  private static final int JOURNAL_BUFFER = 128 * KIB;

  /**
   * What is written within this time goes to disk in one piece; a crash loses no more than this.
   */
  private static final int FLUSH_NANOS = (int) TimeUnit.MILLISECONDS.toNanos(100);

  private static final long MEMORY = 8L * KIB * KIB;

  /** Beyond this a client that does not read loses messages; the others do not notice. */
  private static final long QUEUE_MEMORY = 512L * KIB;

  private static final long LOCK_MILLIS = 2_000;
  private static final long START_S = 20;

  private final ActiveMQServer server;

  /**
   * One that is not started yet.
   *
   * @param store where messages that outlive the process are kept; not used unless kept is true
   * @param kept whether any are
   */
  ArtemisServer(OwnBrokerSettings settings, List<Account> accounts, Path store, boolean kept) {
    Rights rights = new Rights(settings.tree(), settings.hubPrefixes());
    Configuration configuration = configuration(settings, store, kept);
    configuration.registerBrokerPlugin(new ArtemisKeeping(new Keeping(settings.tree())));
    server = new ActiveMQServerImpl(configuration, new ArtemisSecurity(accounts, rights));
  }

  /**
   * Starts; returns once it accepts connections.
   *
   * @param diskFailed told, on one of Artemis' threads, when messages cannot be kept any more
   * @throws IOException if it does not start
   */
  void start(Consumer<String> diskFailed) throws IOException {
    server.registerIOCriticalErrorListener(
        (thrown, message, file) -> diskFailed.accept(String.valueOf(message)));
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

  private static Configuration configuration(OwnBrokerSettings settings, Path store, boolean kept) {
    ConfigurationImpl configuration = new ConfigurationImpl();
    configuration.setName("pitchwatch");
    configuration.setPersistenceEnabled(kept);
    setStore(configuration, store);
    configuration.setThreadPoolMaxSize(4);
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

  private static void setStore(Configuration configuration, Path store) {
    configuration.setJournalDirectory(store.resolve("journal").toString());
    configuration.setBindingsDirectory(store.resolve("bindings").toString());
    configuration.setPagingDirectory(store.resolve("paging").toString());
    configuration.setLargeMessagesDirectory(store.resolve("large").toString());
    configuration.setJournalType(JournalType.NIO);
    configuration.setJournalFileSize(JOURNAL_FILE);
    configuration.setJournalMinFiles(2);
    configuration.setJournalPoolFiles(2);
    configuration.setJournalBufferSize_NIO(JOURNAL_BUFFER);
    configuration.setJournalBufferTimeout_NIO(FLUSH_NANOS);
    // Nothing here is worth a flush of the card's cache: what must last is in the store.
    configuration.setJournalDatasync(false);
    configuration.setJournalSyncTransactional(false);
    configuration.setJournalSyncNonTransactional(false);
    configuration.setJournalLockAcquisitionTimeout(LOCK_MILLIS);
    configuration.setMaxDiskUsage(-1);
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
