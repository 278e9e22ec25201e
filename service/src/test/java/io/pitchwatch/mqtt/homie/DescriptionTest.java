package io.pitchwatch.mqtt.homie;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.pitchwatch.mqtt.Heron;
import io.pitchwatch.mqtt.Schemas;
import io.pitchwatch.mqtt.tree.DeviceTree;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

class DescriptionTest {

  private final Description heron =
      DeviceTree.of(Heron.COACH, Heron.DEVICE.sensors()).description();

  @Test
  void isWhatItsSchemaSays() throws Exception {
    String json = new String(heron.json(7), StandardCharsets.UTF_8);
    assertEquals(List.of(), Schemas.faults("homie-description", json));
    assertTrue(json.startsWith("{\"homie\":\"5.0\",\"version\":7,\"name\":\"heron\""), json);
  }

  @Test
  void saysOfASettableMomentWhatTheConventionAsks() {
    String json = new String(heron.json(1), StandardCharsets.UTF_8);
    String zero = json.substring(json.indexOf("\"zero\":"));
    String first = zero.substring(0, zero.indexOf('}'));
    assertTrue(first.contains("\"datatype\":\"enum\",\"format\":\"now\""), first);
    assertTrue(first.contains("\"settable\":true,\"retained\":false"), first);
  }
}
