package io.pitchwatch.mqtt.tree;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.pitchwatch.mqtt.Heron;
import io.pitchwatch.mqtt.homie.Property;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** docs/interface.md lists the properties of the tree that is published, and no others. */
class InterfacePageTest {

  private static final Pattern ROW =
      Pattern.compile("^\\| `homie/5/<coach>/([a-z][^/`]*/[a-z-]+)` \\|.*", Pattern.MULTILINE);

  @Test
  void everyPropertyIsOnThePageAndNothingElseIs() throws IOException {
    TreeSet<String> documented = new TreeSet<>();
    Matcher rows = ROW.matcher(Files.readString(Path.of("../docs/interface.md")));
    while (rows.find()) {
      documented.add(rows.group(1));
    }
    TreeSet<String> published = new TreeSet<>();
    for (CoachNode node : DeviceTree.of(Heron.COACH, List.of("floor", "rear")).nodes()) {
      for (Property property : node.node().properties()) {
        published.add(general(node.node().id()) + "/" + property.id());
      }
    }
    assertEquals(published, documented);
  }

  private static String general(String node) {
    return node.replaceAll("^(fridge|sensor|door)-.*", "$1-<id>");
  }
}
