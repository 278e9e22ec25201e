package io.pitchwatch.mqtt.link;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.paho.mqttv5.client.IMqttToken;

/** A question to the broker that it has not answered yet, or just has. */
public final class Pending {

  private static final int FIRST_FAILURE_CODE = 0x80;

  private final List<String> topics;
  private final Optional<IMqttToken> token;

  Pending(List<String> topics, Optional<IMqttToken> token) {
    this.topics = topics;
    this.token = token;
  }

  /** Whether there is nothing left to wait for. */
  public boolean isDone() {
    return token.isEmpty() || token.get().isComplete();
  }

  /** Those of the topics asked about that the broker denied; all, if the question failed. */
  public List<String> denied() {
    if (token.isEmpty() || token.get().getException() != null) {
      return topics;
    }
    List<String> denied = new ArrayList<>();
    int[] codes = token.get().getReasonCodes();
    for (int i = 0; codes != null && i < codes.length && i < topics.size(); i++) {
      if (codes[i] >= FIRST_FAILURE_CODE) {
        denied.add(topics.get(i));
      }
    }
    return denied;
  }
}
