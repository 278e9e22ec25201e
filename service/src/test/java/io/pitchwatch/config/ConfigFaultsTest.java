package io.pitchwatch.config;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every fault is told at once, each with file, line, key, what was found and what is allowed. */
class ConfigFaultsTest {

  private static final String DOOR =
      """
      [[door]]
      id = "washroom"
      shut-towards = "left"
      opens-towards = "rear"
      """;

  @TempDir Path directory;
  private Configs configs = new Configs(Path.of(""));

  @BeforeEach
  void inAnEmptyDirectory() {
    configs = new Configs(directory);
  }

  private String only(String toml) {
    List<String> faults = configs.faults(toml);
    assertEquals(1, faults.size(), () -> String.join("\n", faults));
    return faults.get(0);
  }

  private void assertOnly(String expected, String toml) {
    assertEquals(expected, only(toml));
  }

  @Test
  void everyFaultIsToldAtOnceInTheOrderOfTheFile() {
    List<String> faults =
        configs.faults(
            """
            [coach]
            id = "Heron"
            colour = "grey"
            [[axle]]
            id = "rear"
            position = -5600
            trak = "1830 mm"
            load = "6900 mm"
            footprint = "590 km"
            twin = "yes"
            [jacks]
            """);
    assertEquals(
        List.of(
            "coach.toml:2: coach.id: found \"Heron\";"
                + " allowed: a string: 1 to 32 of a-z, 0-9 and -",
            "coach.toml:3: coach.colour: found a key not known here; allowed: id, units",
            "coach.toml:4: axle[1].track: found nothing; allowed: a length of 500 mm to 4 m,"
                + " with its unit (mm, cm, m, in, ft)",
            "coach.toml:6: axle[1].position: found -5600, a bare number; allowed: a length of"
                + " -30 m to 30 m, with its unit (mm, cm, m, in, ft)",
            "coach.toml:7: axle[1].trak: found a key not known here; allowed: perhaps track; here"
                + " are stiffness, id, position, track, load, droop, footprint, twin,"
                + " parking-brake",
            "coach.toml:8: axle[1].load: found \"6900 mm\", whose unit is not known; allowed: a"
                + " mass of 50 kg to 30 t, with its unit (kg, t, lb)",
            "coach.toml:9: axle[1].footprint: found \"590 km\", whose unit is not known; allowed:"
                + " a length of 50 mm to 2 m, with its unit (mm, cm, m, in, ft)",
            "coach.toml:10: axle[1].twin: found \"yes\"; allowed: true or false",
            "coach.toml:11: jacks: found a key not known here; allowed: coach, axle, jack-pair,"
                + " piece, pad, levelling, fridge, door, sensor, store, mqtt, page"),
        faults);
  }

  @Test
  void anEmptyFileLacksACoachAndAnAxle() {
    assertEquals(
        List.of(
            "coach.toml: coach: found nothing; allowed: a table [coach] with the coach's id",
            "coach.toml: axle: found nothing; allowed: at least one table [[axle]]"),
        configs.faults(""));
    assertEquals(2, configs.faults("axle = []").size());
  }

  @Test
  void aLineThatIsNotTomlIsToldWithTheRestsFaults() {
    List<String> faults = configs.faults(Configs.LEAST + "units = = 3\n[page]\nport = 0\n");
    assertEquals(2, faults.size(), faults::toString);
    assertTrue(faults.get(0).startsWith("coach.toml:10: found unexpected '='"), faults.get(0));
    assertTrue(faults.get(1).startsWith("coach.toml:12: page.port: found 0;"), faults.get(1));
  }

  @Test
  void aKeyGivenTwiceIsTold() {
    assertTrue(only("[coach]\nid=\"a\"\nid=\"b\"\n" + tail()).startsWith("coach.toml:3: found id"));
  }

  private static String tail() {
    return Configs.LEAST.substring(Configs.LEAST.indexOf("[[axle]]"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "coach = 3 | coach: found 3, a bare number; allowed: a table, [coach]",
        "coach = [] | coach: found an array; allowed: a table, [coach]",
        "[[coach]] | coach: found an array; allowed: a table, [coach]",
      })
  void theCoachIsATable(String toml, String fault) {
    List<String> faults = configs.faults(toml + "\n" + tail());
    assertTrue(faults.get(0).endsWith(fault), faults::toString);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "axle = 3 | coach.toml:3: axle: found 3, a bare number",
        "axle = [1] | coach.toml:3: axle[1]: found 1, a bare number",
        "[axle] | coach.toml:3: axle: found a table",
      })
  void axlesAreTables(String toml, String fault) {
    String found = only("coach.id = \"heron\"\n\n" + toml + "\n");
    assertTrue(found.startsWith(fault), found);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2026-01-01 | 2026-01-01, a date or time",
        "nan | NaN, a bare number",
        "-inf | -Infinity, a bare number",
        "-0.0 | -0.0, a bare number",
        "true | true",
        "[] | an array",
        "{} | a table",
        "\"\" | \"\", which is not a number with a unit",
        "\"0 mm\" | \"0 mm\"",
        "\"-1 mm\" | \"-1 mm\"",
      })
  void aLengthIsNothingElse(String value, String found) {
    String toml = Configs.LEAST.replace("\"1830 mm\"", value);
    assertOnly(
        "coach.toml:7: axle[1].track: found "
            + found
            + "; allowed: a length of 500 mm to 4 m, with its unit (mm, cm, m, in, ft)",
        toml);
  }

  @Test
  void limitsThemselvesAreAllowed() {
    configs.good(Configs.LEAST.replace("1830 mm", "4 m"));
    only(Configs.LEAST.replace("1830 mm", "4.001 m"));
  }

  @Test
  void idsAreUniqueInTheirTable() {
    String fridge = "[[fridge]]\nid = \"galley\"\n";
    assertOnly(
        "coach.toml:13: fridge[2].id: found \"galley\" again; allowed: an id not used before",
        Configs.LEAST + fridge + fridge);
    // What is one fridge's may be a door's too.
    configs.good(Configs.LEAST + fridge + DOOR.replace("washroom", "galley"));
  }

  @Test
  void axlesStandFrontToBack() {
    String second = tail().replace("rear", "tag");
    String fault = only(Configs.LEAST + second);
    assertTrue(fault.startsWith("coach.toml:12: axle[2].position: found an axle not"), fault);
    only(Configs.LEAST + second.replace("-5600", "0"));
    configs.good(Configs.LEAST + second.replace("-5600", "-6800"));
  }

  @Test
  void aTyreIsNarrowerThanTheTrack() {
    String fault = only(Configs.LEAST.replace("\"590 mm\"", "\"1830 mm\""));
    assertTrue(fault.startsWith("coach.toml:9: axle[1].footprint"), fault);
  }

  @Test
  void droopIsNeededWhereThereAreJacks() {
    String jacks =
        """
        [[jack-pair]]
        id = "rear"
        position = "-6 m"
        spacing = "1.5 m"
        clearance = "30 cm"
        stroke = "40 cm"
        capacity = "5 t"
        """;
    String fault = only(Configs.LEAST + jacks);
    assertTrue(fault.startsWith("coach.toml:4: axle[1].droop: found nothing"), fault);
    String good = Configs.LEAST + "droop = \"80 mm\"\n" + jacks;
    assertEquals(400, configs.good(good).coach().jackPairs().get(0).keepUnderMm());
    assertTrue(
        only(good + jacks.replace("rear", "front")).contains("the position of the other pair"));
    assertTrue(
        configs.faults(good + jacks + jacks).toString().contains("at most 2"), "three pairs");
  }

  @Test
  void aDoorOpensSquareToTheWayItShuts() {
    configs.good(Configs.LEAST + DOOR);
    String fault = only(Configs.LEAST + DOOR.replace("rear", "right"));
    assertEquals(
        "coach.toml:13: door[1].opens-towards: found the same line as shut-towards;"
            + " allowed: \"front\", \"rear\": square to it",
        fault);
    assertTrue(
        only(Configs.LEAST + DOOR.replace("rear", "up")).contains("\"front\", \"rear\", \"left\""));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "chip = 'adxl346' | sensor.chip: found \"adxl346\"; allowed: \"adxl345\", \"adxl355\", \"mpu6050\"",
        "bus = -1 | sensor.bus: found -1; allowed: a whole number, 0 to 99",
        "bus = 1.5 | sensor.bus: found 1.5, a bare number; allowed: a whole number, 0 to 99",
        "bus = 99999999999 | sensor.bus: found 99999999999; allowed: a whole number, 0 to 99",
        "address = '0x54' | sensor.address: found \"0x54\"; allowed: \"0x53\", \"0x1D\", which"
            + " adxl345 has",
        "address = '83' | sensor.address: found \"83\"; allowed: a string: 0x and two digits",
        "mounting = 'up' | sensor.mounting: found \"up\"; allowed: a table, [sensor.mounting]",
        "mounting = { x = 'up' } | sensor.mounting: found fewer than two axes; allowed: two of x,"
            + " y and z",
        "mounting = { x = 'up', z = 'down' } | sensor.mounting: found parallel axes; allowed: axes"
            + " square to each other",
        "mounting = { x = 'forward', y = 'right', z = 'up' } | sensor.mounting: found z up, a"
            + " left-handed set; allowed: z down with that x and y; two axes are enough",
        "mounting = { x = 'fore', z = 'up' } | sensor.mounting.x: found \"fore\"; allowed:"
            + " \"forward\", \"rearward\", \"left\", \"right\", \"up\", \"down\"",
      })
  void sensorsAreWhatTheyCanBe(String key, String fault) {
    assertOnly("coach.toml:11: " + fault, Configs.LEAST + "[sensor]\n" + key + "\n");
  }

  @Test
  void twoSensorsDoNotShareAPlace() {
    String fault = only(Configs.LEAST + "[[sensor]]\n[[sensor]]\n");
    assertTrue(fault.contains("sensor[2].address: found 0x53 on bus 1 again"), fault);
    configs.good(Configs.LEAST + "[[sensor]]\n[[sensor]]\naddress = \"0x1D\"\n");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "url = 'http://127.0.0.1' | mqtt.url: found \"http://127.0.0.1\"",
        "url = 'mqtt://' | mqtt.url: found \"mqtt://\"",
        "url = 'mqtt://127.0.0.1:99999' | mqtt.url: found \"mqtt://127.0.0.1:99999\"",
        "url = 'mqtt://a:b@127.0.0.1' | mqtt.url: found \"mqtt://a:b@127.0.0.1\"",
        "url = 'mqtt://127.0.0.1/x' | mqtt.url: found \"mqtt://127.0.0.1/x\"",
        "url = 'mqtts://127.0.0.1' | mqtt.url: found \"mqtts://127.0.0.1\"; allowed: mqtt:// with",
        "url = 'mqtt://example.org' | mqtt.url: found \"mqtt://example.org\"; allowed: an address",
        "url = 'mqtt://8.8.8.8' | mqtt.url: found \"mqtt://8.8.8.8\"; allowed: an address of this",
        "broker = 'mine' | mqtt.broker: found \"mine\"; allowed: \"own\", \"other\"",
        "tree = 'a/b' | mqtt.tree: found \"a/b\"",
        "tree = '#' | mqtt.tree: found \"#\"",
        "announce = 'homeassistant' | mqtt.announce: found \"homeassistant\"",
        "announce = ['a', 'a'] | mqtt.announce: found [\"a\", \"a\"]",
        "announce = ['+', 3] | mqtt.announce: found [\"+\", 3, a bare number]",
        "ca-file = 'c.pem' | mqtt.ca-file: found a file with mqtt://",
        "user = '' | mqtt.user: found \"\"",
        "password-file = '~/secret' | mqtt.password-file: found \"~/secret\"",
        "password-file = \"a\\u0000\" | mqtt.password-file: found \"a\\u0000\"",
      })
  void brokersAreReachable(String key, String fault) {
    String found = only(Configs.LEAST + "[mqtt]\n" + key + "\n");
    assertTrue(found.startsWith("coach.toml:11: " + fault), found);
  }

  @Test
  void anotherBrokersUserNeedsAPassword() {
    String other = Configs.LEAST + "[mqtt]\nbroker = \"other\"\n";
    assertTrue(configs.good(other).mqtt().login().isEmpty());
    assertTrue(only(other + "user = \"u\"").contains("mqtt.password-file: found nothing"));
    assertTrue(only(other + "password-file = \"p\"").contains("mqtt.user: found nothing"));
  }

  @Test
  void pageAndOwnBrokerDoNotShareAPort() {
    String fault = only(Configs.LEAST + "[page]\nport = 1883\n");
    assertTrue(fault.contains("page.port: found 1883, the port of the built-in broker"), fault);
    configs.good(Configs.LEAST + "[page]\nport = 1883\nenabled = false\n");
    only(Configs.LEAST + "[page]\nwebsocket = \"http://x\"\n");
    only(Configs.LEAST + "[page]\nbind = \"a b\"\n");
  }

  @Test
  void whatIsFoundIsToldOnOneLine() {
    String fault = only(Configs.LEAST.replace("\"heron\"", "\"\\n\\u202E" + "x".repeat(99) + '"'));
    assertTrue(fault.contains("\"\\u000A\\u202E" + "x".repeat(58) + "…\""), fault);
    String key = only(Configs.LEAST + "[\"a\\tb\"]");
    assertTrue(key.startsWith("coach.toml:10: \"a\\u0009b\": found a key not known"), key);
  }
}
