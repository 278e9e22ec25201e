package io.pitchwatch.mqtt;

import io.pitchwatch.mqtt.link.BrokerAddress;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.eclipse.paho.mqttv5.client.IMqttToken;
import org.eclipse.paho.mqttv5.client.MqttAsyncClient;
import org.eclipse.paho.mqttv5.client.MqttCallback;
import org.eclipse.paho.mqttv5.client.MqttConnectionOptions;
import org.eclipse.paho.mqttv5.client.MqttDisconnectResponse;
import org.eclipse.paho.mqttv5.client.persist.MemoryPersistence;
import org.eclipse.paho.mqttv5.common.MqttException;
import org.eclipse.paho.mqttv5.common.MqttMessage;
import org.eclipse.paho.mqttv5.common.MqttSubscription;
import org.eclipse.paho.mqttv5.common.packet.MqttProperties;

/** Any other client of the broker: hears, remembers, publishes. */
public final class Observer implements AutoCloseable {

  private static final AtomicInteger COUNT = new AtomicInteger();
  private static final long LIMIT_MILLIS = 10_000;

  private final List<Heard> heard = new ArrayList<>();
  private final MqttAsyncClient client;

  /** One message heard. */
  public record Heard(
      String topic, String text, int qos, boolean retained, long atNanos, String correlation) {}

  /** Connects without credentials. */
  public Observer(BrokerAddress broker) throws MqttException {
    this(broker, "", "");
  }

  /** Connects. */
  public Observer(BrokerAddress broker, String user, String password) throws MqttException {
    client =
        new MqttAsyncClient(
            "tcp://" + broker.host() + ":" + broker.port(),
            "observer-" + COUNT.incrementAndGet(),
            new MemoryPersistence());
    client.setCallback(new Ears());
    MqttConnectionOptions options = new MqttConnectionOptions();
    options.setCleanStart(true);
    if (!user.isEmpty()) {
      options.setUserName(user);
      options.setPassword(password.getBytes(StandardCharsets.UTF_8));
    }
    client.connect(options).waitForCompletion(LIMIT_MILLIS);
  }

  /** Listens to a filter. */
  public Observer hear(String filter) throws MqttException {
    MqttSubscription subscription = new MqttSubscription(filter, 2);
    subscription.setRetainAsPublished(false);
    IMqttToken token =
        client.subscribe(new MqttSubscription[] {subscription}, null, null, new MqttProperties());
    token.waitForCompletion(LIMIT_MILLIS);
    int code = token.getReasonCodes()[0];
    if (code >= 0x80) {
      throw new AssertionError("subscription to " + filter + " denied, reason " + code);
    }
    return this;
  }

  /** Publishes and waits until the broker has it; returns its reason code. */
  public int publish(String topic, byte[] payload, int qos, boolean retained) throws MqttException {
    return publish(topic, new MqttMessage(payload, qos, retained, new MqttProperties()));
  }

  /** Publishes text, as commands are. */
  public int publish(String topic, String text) throws MqttException {
    return publish(topic, text.getBytes(StandardCharsets.UTF_8), 1, false);
  }

  /** Publishes a request. */
  public int ask(String topic, String responseTopic, String correlation) throws MqttException {
    MqttProperties properties = new MqttProperties();
    properties.setResponseTopic(responseTopic);
    properties.setCorrelationData(correlation.getBytes(StandardCharsets.UTF_8));
    return publish(topic, new MqttMessage(new byte[0], 1, false, properties));
  }

  private int publish(String topic, MqttMessage message) throws MqttException {
    IMqttToken token = client.publish(topic, message);
    token.waitForCompletion(LIMIT_MILLIS);
    int[] codes = token.getReasonCodes();
    return codes == null || codes.length == 0 ? 0 : codes[0];
  }

  /** All messages so far, in order. */
  public List<Heard> all() {
    synchronized (heard) {
      return List.copyOf(heard);
    }
  }

  /** All messages under one topic so far, in order. */
  public List<String> all(String topic) {
    return all().stream().filter(h -> h.topic().equals(topic)).map(Heard::text).toList();
  }

  /** The last text under a topic. */
  public Optional<String> last(String topic) {
    List<String> texts = all(topic);
    return texts.isEmpty() ? Optional.empty() : Optional.of(texts.get(texts.size() - 1));
  }

  /** Waits until the last text under the topic is this one. */
  public void awaitLast(String topic, String text) {
    Await.until(
        topic + " says \"" + text + "\"; " + "see all: " + all(topic),
        () -> last(topic).equals(Optional.of(text)));
  }

  /** Waits until a text under the topic holds this part. */
  public void awaitPart(String topic, String part) {
    Await.until(
        topic + " says something with \"" + part + "\"",
        () -> all(topic).stream().anyMatch(text -> text.contains(part)));
  }

  /** Waits until all that the broker had to tell so far was heard: its own echo is the last. */
  public void settle() throws MqttException {
    String echo = "homeassistant/status";
    String mark = "settle-" + System.nanoTime();
    publish(echo, mark);
    Await.until("echo of " + mark, () -> all(echo).contains(mark));
  }

  /** Forgets what was heard. */
  public void forget() {
    synchronized (heard) {
      heard.clear();
    }
  }

  @Override
  public void close() throws MqttException {
    try {
      client.disconnectForcibly(0, 500, true);
    } finally {
      client.close(true);
    }
  }

  private final class Ears implements MqttCallback {
    @Override
    public void messageArrived(String topic, MqttMessage message) {
      byte[] correlation = message.getProperties().getCorrelationData();
      synchronized (heard) {
        heard.add(
            new Heard(
                topic,
                new String(message.getPayload(), StandardCharsets.UTF_8),
                message.getQos(),
                message.isRetained(),
                System.nanoTime(),
                correlation == null ? "" : new String(correlation, StandardCharsets.UTF_8)));
      }
    }

    @Override
    public void disconnected(MqttDisconnectResponse response) {
      // The test will notice.
    }

    @Override
    public void mqttErrorOccurred(MqttException exception) {
      // The test will notice.
    }

    @Override
    public void deliveryComplete(IMqttToken token) {
      // Publishing waits for its own token.
    }

    @Override
    public void connectComplete(boolean reconnect, String serverUri) {
      // The constructor waits for its own token.
    }

    @Override
    public void authPacketArrived(int reasonCode, MqttProperties properties) {
      // Never asked for.
    }
  }
}
