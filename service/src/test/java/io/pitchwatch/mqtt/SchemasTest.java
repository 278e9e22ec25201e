package io.pitchwatch.mqtt;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The schemas are schemas themselves, and refuse what they should. */
class SchemasTest {

  private static final List<String> METASCHEMAS =
      List.of(
          "http://json-schema.org/draft-07/schema", "https://json-schema.org/draft/2020-12/schema");

  @Test
  void allAreValidInBothReadings() throws Exception {
    try (Stream<Path> files = Files.list(Path.of("../docs/schemas"))) {
      List<Path> all = files.filter(f -> f.toString().endsWith(".json")).toList();
      assertFalse(all.isEmpty());
      for (Path each : all) {
        for (String metaschema : METASCHEMAS) {
          assertEquals(
              List.of(),
              Schemas.faultsAgainst(metaschema, Files.readString(each)),
              each + " against " + metaschema);
        }
      }
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{}",
        "{\"wheels\": [{\"axle\": \"rear\", \"side\": \"front\", \"layers\": []}]}",
        "{\"wheels\": [{\"axle\": \"rear\", \"side\": \"left\", \"layers\": [{\"piece\": \"block\"}]}]}",
        "{\"wheels\": [], \"more\": 1}",
      })
  void refuseWhatIsNotLaid(String document) throws Exception {
    assertFalse(Schemas.faults("laid", document).isEmpty());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{\"alert\": \"x\"}",
        "{\"alert\": \"x\", \"minutes\": -1}",
        "{\"alert\": \"X\", \"minutes\": 1}",
        "{\"alert\": \"x\", \"minutes\": 10081}",
      })
  void refuseWhatIsNotShelve(String document) throws Exception {
    assertFalse(Schemas.faults("shelve", document).isEmpty());
  }

  @Test
  void refuseADescriptionWithoutVersion() throws Exception {
    assertFalse(
        Schemas.faults("homie-description", "{\"homie\": \"5.0\", \"name\": \"x\", \"nodes\": {}}")
            .isEmpty());
  }
}
