package io.pitchwatch.mqtt;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.eclipse.paho.mqttv5.common.MqttException;
import org.junit.jupiter.api.RepeatedTest;

/** Who comes while values change: the built-in broker must not tell the old one last. */
class NewcomerOnOwnBrokerIT extends LinkBench {

  private static final int TOPICS = 150;

  @Override
  BrokerProcess broker(Path place) {
    return new OwnBrokerProcess(place);
  }

  @RepeatedTest(5)
  void noOldValueIsHeardAfterANewerOne() throws Exception {
    Observer daemon = later(new Observer(broker.address(), "pitchwatch", password()));
    say(daemon, 0);
    Thread speaker = new Thread(() -> sayAll(daemon));
    speaker.start();
    try (Observer newcomer = broker.dashboard()) {
      newcomer.hear("homie/5/#").hear("homeassistant/#");
      speaker.join();
      newcomer.settle();
      assertEquals(List.of(), stepsBack(newcomer));
    }
  }

  private String password() {
    return BrokerProcess.read(broker.daemon().passwordFile()).strip();
  }

  private static void sayAll(Observer daemon) {
    try {
      for (int value = 1; value < 5; value++) {
        say(daemon, value);
      }
    } catch (MqttException e) {
      throw new IllegalStateException(e);
    }
  }

  private static void say(Observer daemon, int value) throws MqttException {
    byte[] payload = Integer.toString(value).getBytes(StandardCharsets.UTF_8);
    for (int i = 0; i < TOPICS; i++) {
      daemon.publish(BASE + (i % 5 == 0 ? "visit/" : "floor/") + i, payload, 2, true);
    }
  }

  private static List<String> stepsBack(Observer newcomer) {
    Map<String, String> latest = new HashMap<>();
    return newcomer.all().stream()
        .filter(heard -> heard.topic().startsWith(BASE))
        .flatMap(
            heard -> {
              String before = latest.put(heard.topic(), heard.text());
              return before != null && before.compareTo(heard.text()) > 0
                  ? Stream.of(heard.topic() + ": " + before + " then " + heard.text())
                  : Stream.empty();
            })
        .toList();
  }
}
