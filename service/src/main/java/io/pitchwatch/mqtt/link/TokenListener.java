package io.pitchwatch.mqtt.link;

import java.util.function.Consumer;
import org.eclipse.paho.mqttv5.client.IMqttToken;
import org.eclipse.paho.mqttv5.client.MqttActionListener;

/** What to do when the broker has answered, or never will. Runs on Paho's threads. */
record TokenListener(Consumer<IMqttToken> success, Consumer<Throwable> failure)
    implements MqttActionListener {

  /** Does the same in either case. */
  static TokenListener either(Runnable action) {
    return new TokenListener(token -> action.run(), thrown -> action.run());
  }

  @Override
  public void onSuccess(IMqttToken token) {
    success.accept(token);
  }

  @Override
  public void onFailure(IMqttToken token, Throwable thrown) {
    failure.accept(thrown);
  }
}
