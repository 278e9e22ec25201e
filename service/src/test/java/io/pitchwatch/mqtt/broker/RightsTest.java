package io.pitchwatch.mqtt.broker;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.pitchwatch.mqtt.broker.Account.Kind;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RightsTest {

  private final Rights rights = new Rights("homie", List.of("homeassistant"));

  private static List<String> levels(String topic) {
    return List.of(topic.split("/", -1));
  }

  @ParameterizedTest
  @CsvSource({
    "homie/5/heron/$state,                 true,  false",
    "homie/5/heron/floor/verdict,          true,  false",
    "homie/5/heron/$alert/x,               true,  false",
    "homie/5/heron/visit/stay/set,         true,  true",
    "homie/5/heron/upkeep/check/set,       true,  true",
    "homie/5/heron/upkeep/history/set,     true,  true",
    "homie/5/heron/upkeep/history/answer/x, true, false",
    "homie/5/heron/$alert/x/set,           true,  false",
    "homie/5/heron/visit/set,              true,  false",
    "homie/5/heron/visit/stay/set/set,     true,  false",
    "homie/5/set,                          true,  false",
    "homie/5,                              false, false",
    "homie/6/heron/visit/stay/set,         false, false",
    "other/5/heron/visit/stay/set,         false, false",
    "homeassistant/status,                 true,  true",
    "homeassistant/device/x/config,        true,  false",
    "pitchwatch/answer/x,                  true,  false",
    "'',                                   false, false",
  })
  void onlyTheDaemonSpeaksForTheCoach(String topic, boolean daemon, boolean dashboard) {
    assertEquals(daemon, rights.mayPublish(Kind.DAEMON, levels(topic)));
    assertEquals(dashboard, rights.mayPublish(Kind.DASHBOARD, levels(topic)));
    assertEquals(false, rights.mayPublish(Kind.GUEST, levels(topic)));
  }
}
