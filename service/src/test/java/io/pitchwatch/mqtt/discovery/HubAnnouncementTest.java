package io.pitchwatch.mqtt.discovery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import io.pitchwatch.mqtt.Heron;
import io.pitchwatch.mqtt.Schemas;
import io.pitchwatch.mqtt.homie.DeviceTopics;
import io.pitchwatch.mqtt.tree.DeviceTree;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

class HubAnnouncementTest {

  private final byte[] bytes =
      new HubAnnouncement(
              DeviceTree.of(Heron.COACH, List.of("floor")),
              new DeviceTopics("homie", "heron"),
              "pitchwatch-heron",
              "0.1.0")
          .json();
  private final JsonNode message = new ObjectMapper().readTree(bytes);

  @Test
  void isWhatItsSchemaSays() throws Exception {
    assertEquals(List.of(), Schemas.faults("hub-discovery", message.toString()));
  }

  @Test
  void callsEveryComponentByAnIdOfItsOwn() {
    List<String> ids = new ArrayList<>();
    message.get("cmps").forEach(c -> ids.add(c.get("unique_id").asString()));
    assertEquals(ids.size(), ids.stream().distinct().count());
    assertFalse(ids.isEmpty());
  }

  @Test
  void pointsAtTheTree() {
    JsonNode roll = message.get("cmps").get("floor-roll");
    assertEquals("sensor", roll.get("p").asString());
    assertEquals("homie/5/heron/floor/roll", roll.get("state_topic").asString());
    assertEquals("°", roll.get("unit_of_measurement").asString());
    assertEquals("measurement", roll.get("state_class").asString());
  }

  @Test
  void makesAFridgeOutsideItsLimitsAProblem() {
    JsonNode within = message.get("cmps").get("fridge-galley-within");
    assertEquals("binary_sensor", within.get("p").asString());
    assertEquals("problem", within.get("device_class").asString());
    assertEquals("false", within.get("payload_on").asString());
    JsonNode settling = message.get("cmps").get("ground-settling");
    assertEquals("problem", settling.get("device_class").asString());
    assertEquals("true", settling.get("payload_on").asString(), "ground that gives is the trouble");
  }

  @Test
  void makesZeroAButtonAmongTheSettings() {
    JsonNode zero = message.get("cmps").get("upkeep-zero");
    assertEquals("button", zero.get("p").asString());
    assertEquals("config", zero.get("entity_category").asString());
    assertEquals("homie/5/heron/upkeep/zero/set", zero.get("command_topic").asString());
    assertEquals("now", zero.get("payload_press").asString());
  }

  @Test
  void makesTheStayAChoice() {
    JsonNode stay = message.get("cmps").get("visit-stay");
    assertEquals("select", stay.get("p").asString());
    assertEquals("[\"overnight\",\"stay\",\"season\"]", stay.get("options").toString());
  }

  @Test
  void hidesFiguresThatRestOnSamplesWhileThereAreNone() {
    JsonNode available = message.get("cmps").get("floor-roll").get("availability");
    assertEquals("homie/5/heron/$state", available.get(0).get("topic").asString());
    assertEquals("homie/5/heron/floor/state", available.get(1).get("topic").asString());
    JsonNode sensor = message.get("cmps").get("sensor-floor-noise").get("availability");
    assertEquals("homie/5/heron/sensor-floor/health", sensor.get(1).get("topic").asString());
    assertEquals(1, message.get("cmps").get("floor-state").get("availability").size());
  }
}
