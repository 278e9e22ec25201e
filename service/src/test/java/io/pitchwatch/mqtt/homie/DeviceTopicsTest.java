package io.pitchwatch.mqtt.homie;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Shapes from the Homie convention 5.0, "Topology and structure", "Alert topic", "Logging". */
class DeviceTopicsTest {

  private final DeviceTopics topics = new DeviceTopics("homie", "heron");
  private final Property stay = Property.choice("stay", "Stay", "a", "b").taking();
  private final Node visit = new Node("visit", "Visit", List.of(stay));

  @Test
  void haveTheShapesOfTheConvention() {
    assertEquals("homie/5/heron/$state", topics.state().text());
    assertEquals("homie/5/heron/$description", topics.description().text());
    assertEquals("homie/5/heron/$log/warn", topics.log(LogLevel.WARN).text());
    assertEquals("homie/5/heron/$alert/fridge-galley", topics.alert("fridge-galley").text());
    assertEquals("homie/5/heron/visit/stay", topics.value(visit, stay).text());
    assertEquals("homie/5/heron/visit/stay/set", topics.set(visit, stay).text());
    assertEquals("homie/5/heron/#", topics.everything());
  }

  @Test
  void renameTheFirstLevelOnly() {
    assertEquals("coaches/5/heron/$state", new DeviceTopics("coaches", "heron").state().text());
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "Heron", "heron/x", "héron", "he ron", "$heron", "heron_1"})
  void refuseIdsOutsideTheConvention(String id) {
    assertThrows(IllegalArgumentException.class, () -> new DeviceTopics("homie", id));
    assertThrows(IllegalArgumentException.class, () -> topics.alert(id));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "a/b", "#", "$SYS"})
  void refuseTreesThatAreNotOneLevel(String tree) {
    assertThrows(IllegalArgumentException.class, () -> new DeviceTopics(tree, "heron"));
  }

  @Test
  void refuseTwoPropertiesOfOneName() {
    assertThrows(
        IllegalArgumentException.class, () -> new Node("visit", "Visit", List.of(stay, stay)));
  }

  /** Homie 5.0, "Units": the degree sign is U+00B0, on the wire C2 B0. */
  @Test
  void writeTheDegreeAsTheConventionDoes() {
    byte[] bytes = Property.DEGREE.getBytes(java.nio.charset.StandardCharsets.UTF_8);
    assertEquals(List.of(0xC2, 0xB0), List.of(bytes[0] & 0xFF, bytes[1] & 0xFF));
    assertEquals(2, bytes.length);
  }
}
