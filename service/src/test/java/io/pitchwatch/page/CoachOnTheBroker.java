package io.pitchwatch.page;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import org.eclipse.paho.mqttv5.client.IMqttToken;
import org.eclipse.paho.mqttv5.client.MqttAsyncClient;
import org.eclipse.paho.mqttv5.client.MqttCallback;
import org.eclipse.paho.mqttv5.client.MqttConnectionOptions;
import org.eclipse.paho.mqttv5.client.MqttDisconnectResponse;
import org.eclipse.paho.mqttv5.client.persist.MemoryPersistence;
import org.eclipse.paho.mqttv5.common.MqttException;
import org.eclipse.paho.mqttv5.common.MqttMessage;
import org.eclipse.paho.mqttv5.common.packet.MqttProperties;

/**
 * Stands where the daemon stands: publishes the tree of interface.md, and answers commands as told.
 */
final class CoachOnTheBroker implements AutoCloseable, MqttCallback {

  /** How it answers what is asked of it. */
  enum Manner {
    ECHOES,
    REFUSES,
    KEEPS_SILENT
  }

  static final String BASE = "homie/5/heron/";

  private static final int WAIT_MS = 10_000;

  private final MqttAsyncClient client;
  private final List<String> commands = new CopyOnWriteArrayList<>();
  private volatile Manner manner = Manner.ECHOES;
  private volatile String history = "";

  CoachOnTheBroker(int port, String user, String password) throws MqttException {
    client = new MqttAsyncClient("tcp://127.0.0.1:" + port, "coach", new MemoryPersistence());
    client.setCallback(this);
    MqttConnectionOptions options = new MqttConnectionOptions();
    options.setUserName(user);
    options.setPassword(password.getBytes(StandardCharsets.UTF_8));
    options.setCleanStart(true);
    options.setWill(BASE + "$state", retained("lost"));
    client.connect(options).waitForCompletion(WAIT_MS);
    client.subscribe(BASE + "+/+/set", 1).waitForCompletion(WAIT_MS);
  }

  void manner(Manner wanted) {
    manner = wanted;
  }

  /** What it answers whoever asks for its history. */
  void history(String document) {
    history = document;
  }

  /** Commands that arrived, each as topic and payload. */
  List<String> commands() {
    return List.copyOf(commands);
  }

  /** Publishes one retained value; an empty one deletes it. */
  CoachOnTheBroker put(String path, String payload) throws MqttException {
    client.publish(BASE + path, retained(payload)).waitForCompletion(WAIT_MS);
    return this;
  }

  CoachOnTheBroker putBytes(String path, byte[] payload) throws MqttException {
    MqttMessage message = new MqttMessage(payload, 1, true, new MqttProperties());
    client.publish(BASE + path, message).waitForCompletion(WAIT_MS);
    return this;
  }

  /** Says something on its log. */
  void log(String level, String words) throws MqttException {
    client
        .publish(BASE + "$log/" + level, words.getBytes(StandardCharsets.UTF_8), 1, false)
        .waitForCompletion(WAIT_MS);
  }

  /** A floor read just now. */
  CoachOnTheBroker floor(String roll, String pitch, String state, String verdict)
      throws MqttException {
    put("floor/roll", roll).put("floor/pitch", pitch).put("floor/uncertainty", "0.010");
    put("floor/state", state).put("floor/verdict", verdict);
    return takenAt(Instant.now());
  }

  CoachOnTheBroker takenAt(Instant instant) throws MqttException {
    return put("floor/taken-at", instant.truncatedTo(ChronoUnit.SECONDS).toString());
  }

  /** A coach that stands, with everything about it in order. */
  CoachOnTheBroker parkedInOrder() throws MqttException {
    put("$state", "ready").put("visit/phase", "parked");
    put("visit/stay", "overnight").put("visit/surface", "gravel");
    put("fridge-galley/within", "true").put("fridge-galley/margin", "2.60");
    put("fridge-galley/outside-minutes", "0");
    put("door-washroom/tendency", "stays");
    put("sensor-main/health", "good").put("sensor-main/temperature", "18.5");
    put("sensor-main/noise", "0.12");
    return floor("0.40", "-0.21", "steady", "good");
  }

  /** Ends as if the power failed: the broker publishes the last will. */
  void vanish() throws MqttException {
    client.disconnectForcibly(0, 0, false);
    client.close(true);
  }

  @Override
  public void close() throws MqttException {
    if (client.isConnected()) {
      client.disconnect().waitForCompletion(WAIT_MS);
    }
    client.close(true);
  }

  @Override
  public void messageArrived(String topic, MqttMessage message) throws MqttException {
    String payload = new String(message.getPayload(), StandardCharsets.UTF_8);
    commands.add(topic.substring(BASE.length()) + " " + payload);
    String path = topic.substring(BASE.length(), topic.length() - "/set".length());
    if (manner == Manner.ECHOES && path.equals("upkeep/history")) {
      String token = payload.replaceAll(".*\"reply\":\"([a-z0-9-]+)\".*", "$1");
      byte[] document = history.getBytes(StandardCharsets.UTF_8);
      client.publish(BASE + path + "/answer/" + token, document, 1, false);
    } else if (manner == Manner.ECHOES) {
      client.publish(BASE + path, retained(payload));
    } else if (manner == Manner.REFUSES) {
      String why = topic + " refused: not while the coach moves";
      client.publish(BASE + "$log/warn", why.getBytes(StandardCharsets.UTF_8), 1, false);
    }
  }

  @Override
  public void disconnected(MqttDisconnectResponse response) {
    // The test decides when to come back.
  }

  @Override
  public void mqttErrorOccurred(MqttException exception) {
    throw new IllegalStateException(exception);
  }

  @Override
  public void deliveryComplete(IMqttToken token) {
    // Waited for where it matters.
  }

  @Override
  public void connectComplete(boolean reconnect, String serverUri) {
    // Waited for in the constructor.
  }

  @Override
  public void authPacketArrived(int reasonCode, MqttProperties properties) {
    throw new IllegalStateException("no such exchange was asked for");
  }

  private static MqttMessage retained(String payload) {
    return new MqttMessage(payload.getBytes(StandardCharsets.UTF_8), 1, true, new MqttProperties());
  }
}
