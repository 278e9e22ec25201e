package io.pitchwatch.mqtt.link;

import io.pitchwatch.mqtt.homie.Topic;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.eclipse.paho.mqttv5.client.IMqttToken;
import org.eclipse.paho.mqttv5.client.MqttAsyncClient;
import org.eclipse.paho.mqttv5.client.MqttConnectionOptions;
import org.eclipse.paho.mqttv5.client.persist.MemoryPersistence;
import org.eclipse.paho.mqttv5.common.MqttException;
import org.eclipse.paho.mqttv5.common.MqttMessage;
import org.eclipse.paho.mqttv5.common.MqttSubscription;
import org.eclipse.paho.mqttv5.common.packet.MqttProperties;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * One connection to a broker, from its start to its end; for the next one, make another. Nothing
 * here waits: an answer is asked for, and {@link SessionEvents#stirred()} says when to look again.
 *
 * <p>Not for use by several threads.
 */
public final class Session {

  private static final Logger LOG = LoggerFactory.getLogger(Session.class);

  /**
   * Messages under way at one time. Brokers allow 20 by default (Mosquitto) or more, and Paho fails
   * with 32202 beyond what the broker allows.
   */
  private static final int WINDOW = 16;

  private static final int FIRST_FAILURE_CODE = 0x80;

  /** Paho tells every step of a delivery; what matters of it is said here, in our own words. */
  private static final java.util.logging.Logger PAHO =
      java.util.logging.Logger.getLogger("org.eclipse.paho.mqttv5.client");

  static {
    PAHO.setLevel(java.util.logging.Level.OFF);
  }

  private volatile Standing standing = new Standing.Connecting();
  private final AtomicInteger underWay = new AtomicInteger();
  private final SessionPlan plan;
  private final SessionEvents events;
  private final Reasons reasons;
  private final LoopPing ping;
  private final long deadlineNanos;
  private final Optional<MqttAsyncClient> client;

  /** Starts to connect. */
  public Session(SessionPlan plan, SessionEvents events) {
    this.plan = plan;
    this.events = events;
    this.reasons = new Reasons(plan);
    this.ping = new LoopPing(plan.nanos());
    this.deadlineNanos =
        plan.nanos().getAsLong() + TimeUnit.SECONDS.toNanos(ConnectOptions.TIMEOUT_S + 1);
    this.client = connect();
  }

  private Optional<MqttAsyncClient> connect() {
    try {
      MqttConnectionOptions options = ConnectOptions.of(plan);
      String scheme = plan.broker().tls() ? "ssl://" : "tcp://";
      MqttAsyncClient made =
          new MqttAsyncClient(
              scheme + plan.broker().host() + ":" + plan.broker().port(),
              plan.clientId(),
              new MemoryPersistence(),
              ping,
              null);
      made.setCallback(new PahoCallback(plan, events, this::move));
      made.connect(
          options,
          null,
          new TokenListener(
              token -> move(new Standing.Connected()), thrown -> move(reasons.ofRefusal(thrown))));
      return Optional.of(made);
    } catch (IOException e) {
      move(new Standing.Unwelcome("cannot read the credentials: " + e.getMessage()));
    } catch (MqttException e) {
      move(reasons.ofRefusal(e));
    }
    return Optional.empty();
  }

  /** Where the connection is now. */
  public Standing standing() {
    if (standing instanceof Standing.Connecting && plan.nanos().getAsLong() - deadlineNanos > 0) {
      move(reasons.noAnswer());
    }
    return standing;
  }

  /**
   * Hands a message over for delivery.
   *
   * @return false if it has to wait; a later call may take it
   */
  public boolean offer(Publication publication) {
    if (client.isEmpty() || underWay.get() >= WINDOW) {
      return false;
    }
    MqttProperties properties = new MqttProperties();
    publication.responseTopic().map(Topic::text).ifPresent(properties::setResponseTopic);
    publication.correlation().map(Payload::bytes).ifPresent(properties::setCorrelationData);
    MqttMessage message =
        new MqttMessage(
            publication.payload().bytes(), publication.qos(), publication.retained(), properties);
    underWay.incrementAndGet();
    try {
      String topic = publication.topic().text();
      client.get().publish(topic, message, null, delivery(topic));
      return true;
    } catch (MqttException e) {
      // 32202 too many under way, 32104 not connected: the message is the caller's to keep.
      underWay.decrementAndGet();
      LOG.debug("publish put off: {}", e.getMessage());
      return false;
    }
  }

  /** How many messages are under way. */
  public int underWay() {
    return underWay.get();
  }

  /** Asks for messages; those that stand come at once, marked as such. */
  public Pending subscribe(List<Filter> filters) {
    MqttSubscription[] subscriptions = new MqttSubscription[filters.size()];
    for (int i = 0; i < subscriptions.length; i++) {
      subscriptions[i] = new MqttSubscription(filters.get(i).text(), filters.get(i).qos());
      // Else a command that was sent to stand could not be told from one that was not.
      subscriptions[i].setRetainAsPublished(true);
    }
    List<String> topics = filters.stream().map(Filter::text).toList();
    return pending(
        topics,
        c ->
            c.subscribe(
                subscriptions, null, TokenListener.either(events::stirred), new MqttProperties()));
  }

  /** Asks for no more messages. */
  public Pending unsubscribe(String filter) {
    return pending(
        List.of(filter),
        c ->
            c.unsubscribe(
                new String[] {filter},
                null,
                TokenListener.either(events::stirred),
                new MqttProperties()));
  }

  private Pending pending(List<String> topics, Question question) {
    try {
      return new Pending(topics, Optional.of(question.ask(client.orElseThrow())));
    } catch (MqttException e) {
      LOG.debug("question to the broker failed: {}", e.getMessage());
      return new Pending(topics, Optional.empty());
    }
  }

  /** Looks after the silence on the connection when it is time to. */
  public void tick(long nowNanos) {
    if (client.isPresent() && ping.isDue(nowNanos)) {
      ping.stop();
      try {
        client.get().checkPing(null, null);
      } catch (MqttException e) {
        LOG.debug("ping failed: {}", e.getMessage());
      }
    }
  }

  /** How long nothing is to be done for this connection, if nothing stirs. */
  public long restNanos(long nowNanos) {
    return standing instanceof Standing.Connecting
        ? Math.max(0, deadlineNanos - nowNanos)
        : ping.remainingNanos(nowNanos);
  }

  /**
   * Ends the connection and lets its threads go. Paho may take its time to do so: it gets a thread
   * of its own for that.
   *
   * @param farewell whether to tell the broker, so that it does not publish the will
   * @return the thread, for those who want to wait for it
   */
  public Thread close(boolean farewell) {
    Thread closing = new Thread(() -> client.ifPresent(c -> close(c, farewell)), "mqtt-close");
    closing.setDaemon(true);
    closing.start();
    return closing;
  }

  private static void close(MqttAsyncClient client, boolean farewell) {
    try {
      if (client.isConnected() && farewell) {
        client.disconnectForcibly(0, 1_000, true);
      } else {
        client.disconnectForcibly(0, 0, false);
      }
      client.close(true);
    } catch (MqttException e) {
      LOG.debug("closing the connection failed: {}", e.getMessage());
    }
  }

  private TokenListener delivery(String topic) {
    return new TokenListener(
        token -> delivered(topic, firstOf(token.getReasonCodes())),
        // When a connection breaks, all that was under way fails for the reason it broke.
        thrown -> delivered(topic, 0));
  }

  private void delivered(String topic, int code) {
    underWay.decrementAndGet();
    if (code >= FIRST_FAILURE_CODE) {
      events.refused(topic, "the broker does not let us publish there, reason " + code);
    }
    events.stirred();
  }

  private static int firstOf(int @Nullable [] codes) {
    return codes == null || codes.length == 0 ? 0 : codes[0];
  }

  private void move(Standing next) {
    synchronized (this) {
      // The first end is the one that counts: what Paho says while it shuts down explains nothing.
      if (!(standing instanceof Standing.Ended)) {
        standing = next;
      }
    }
    events.stirred();
  }

  /** Something only the broker can answer. */
  private interface Question {
    IMqttToken ask(MqttAsyncClient client) throws MqttException;
  }
}
