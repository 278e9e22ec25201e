package io.pitchwatch.mqtt.link;

import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.paho.mqttv5.client.IMqttToken;
import org.eclipse.paho.mqttv5.client.MqttCallback;
import org.eclipse.paho.mqttv5.client.MqttDisconnectResponse;
import org.eclipse.paho.mqttv5.common.MqttException;
import org.eclipse.paho.mqttv5.common.MqttMessage;
import org.eclipse.paho.mqttv5.common.packet.MqttProperties;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Takes Paho's calls on Paho's threads and passes on what matters. */
final class PahoCallback implements MqttCallback {

  private static final Logger LOG = LoggerFactory.getLogger(PahoCallback.class);

  private final SessionPlan plan;
  private final SessionEvents events;
  private final Consumer<Standing.Ended> end;

  PahoCallback(SessionPlan plan, SessionEvents events, Consumer<Standing.Ended> end) {
    this.plan = plan;
    this.events = events;
    this.end = end;
  }

  @Override
  public void messageArrived(String topic, MqttMessage message) {
    byte[] payload = message.getPayload();
    MqttProperties properties = message.getProperties();
    events.arrived(
        new Arrival(
            topic,
            payload.length <= Arrival.LONGEST_KEPT ? Payload.of(payload) : Payload.NOTHING,
            payload.length,
            message.isRetained(),
            Optional.ofNullable(properties).map(MqttProperties::getResponseTopic),
            Optional.ofNullable(properties)
                .map(MqttProperties::getCorrelationData)
                .map(Payload::of),
            plan.nanos().getAsLong()));
  }

  @Override
  public void disconnected(MqttDisconnectResponse response) {
    end.accept(new Reasons(plan).ofEnd(response));
  }

  @Override
  public void mqttErrorOccurred(MqttException exception) {
    LOG.debug("Paho reports {}", exception.getMessage());
  }

  @Override
  public void deliveryComplete(IMqttToken token) {
    // Each message has a listener of its own.
  }

  @Override
  public void connectComplete(boolean reconnect, String serverUri) {
    // The attempt has a listener of its own.
  }

  @Override
  public void authPacketArrived(int reasonCode, MqttProperties properties) {
    LOG.debug("the broker wants an exchange that was not asked for, reason {}", reasonCode);
  }
}
