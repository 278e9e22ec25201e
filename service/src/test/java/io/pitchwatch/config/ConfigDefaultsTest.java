package io.pitchwatch.config;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.pitchwatch.attitude.Axis;
import io.pitchwatch.attitude.Mounting;
import io.pitchwatch.coach.Axle;
import io.pitchwatch.coach.Coach;
import io.pitchwatch.coach.JackPair;
import io.pitchwatch.coach.Units;
import java.net.URI;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is absent has a default, and what is given is taken as it stands. */
class ConfigDefaultsTest {

  @TempDir Path directory;
  private Configs configs = new Configs(Path.of(""));

  @BeforeEach
  void inAnEmptyDirectory() {
    configs = new Configs(directory);
  }

  @Test
  void aCoachAndOneAxleAreEnough() {
    Config config = configs.good(Configs.LEAST);
    Coach coach = config.coach();
    assertEquals(Units.METRIC, coach.units());
    assertTrue(coach.jackPairs().isEmpty() && coach.pieces().isEmpty() && coach.pads().isEmpty());
    assertTrue(coach.fridges().isEmpty() && coach.doors().isEmpty());
    assertEquals(40, coach.levelling().stepMm());
    assertEquals(Math.toRadians(0.25), coach.levelling().seasonRad());
    assertEquals(
        List.of(new Config.Sensor("1", Chip.ADXL345, 1, 0x53, Mounting.FLAT)), config.sensors());
    assertEquals(new Config.Page(true, 8080, "127.0.0.1", Optional.empty()), config.page());
    Path store = Path.of("/home/owner/.local/state/pitchwatch");
    assertEquals(store, config.store().directory());
    assertEquals(
        new Config.Mqtt(
            URI.create("mqtt://127.0.0.1:1883"),
            Config.Broker.OWN,
            Optional.of(new Config.Login("pitchwatch", store.resolve("mqtt-password"))),
            Optional.empty(),
            "homie",
            List.of("homeassistant")),
        config.mqtt());
  }

  @Test
  void theStoreFollowsTheSurroundings() {
    assertEquals("/state/pitchwatch", store(Map.of("XDG_STATE_HOME", "/state", "HOME", "/home/o")));
    assertEquals(
        "/home/o/.local/state/pitchwatch",
        store(Map.of("XDG_STATE_HOME", "rel", "HOME", "/home/o")));
    assertEquals("/var/lib/pitchwatch", store(Map.of()));
  }

  private String store(Map<String, String> environment) {
    ConfigOutcome outcome = configs.outcome(Configs.LEAST, environment);
    return assertInstanceOf(ConfigOutcome.Good.class, outcome).config().store().directory() + "";
  }

  @Test
  void relativePathsAreRelativeToTheFile() {
    Config config =
        configs.good(
            Configs.LEAST
                + """
                [mqtt]
                password-file = "../secret"
                [store]
                directory = "state"
                """);
    Path here = directory.toAbsolutePath();
    assertEquals(here.resolve("state"), config.store().directory());
    assertEquals(here.resolveSibling("secret"), config.mqtt().login().orElseThrow().passwordFile());
  }

  @Test
  void theRearmostAxleHoldsTheBrakeWhereNoneIsNamed() {
    String tag = axle("tag", "-6800 mm", "");
    assertEquals(List.of(false, true), brakes(Configs.LEAST + tag));
    assertEquals(List.of(true, false), brakes(Configs.LEAST + "parking-brake = true\n" + tag));
    assertEquals(List.of(false, false), brakes(Configs.LEAST + tag + "parking-brake = false\n"));
  }

  private List<Boolean> brakes(String toml) {
    return configs.good(toml).coach().axles().stream().map(Axle::parkingBrake).toList();
  }

  private static String axle(String id, String position, String more) {
    return "[[axle]]\nid = \""
        + id
        + "\"\nposition = \""
        + position
        + "\"\ntrack = \"2 m\"\n"
        + "load = \"2300 kg\"\nfootprint = \"30 cm\"\n"
        + more;
  }

  @Test
  void stiffnessNotGivenIsInProportionToLoad() {
    String tag = axle("tag", "-6800 mm", "");
    List<Axle> none = configs.good(Configs.LEAST + tag).coach().axles();
    assertEquals(3.0, none.get(0).stiffness() / none.get(1).stiffness(), 1e-12);
    // 6900 kg with 1.5: the other axle's third of that load has 0.5
    List<Axle> one = configs.good(Configs.LEAST + "stiffness = 1.5\n" + tag).coach().axles();
    assertEquals(1.5, one.get(0).stiffness());
    assertEquals(0.5, one.get(1).stiffness(), 1e-12);
    List<Axle> both =
        configs
            .good(Configs.LEAST + "stiffness = 3\n" + axle("tag", "-7 m", "stiffness = 1\n"))
            .coach()
            .axles();
    assertEquals(List.of(3.0, 1.0), both.stream().map(Axle::stiffness).toList());
  }

  @Test
  void jackPairsComeFrontToBackHoweverTheyAreWritten() {
    String pair =
        """
        [[jack-pair]]
        id = "%s"
        position = "%s"
        spacing = "1.5 m"
        clearance = "30 cm"
        stroke = "40 cm"
        capacity = "5 t"
        """;
    String toml =
        Configs.LEAST
            + "droop = \"8 cm\"\n"
            + pair.formatted("rear", "-6 m")
            + pair.formatted("front", "-1 m");
    assertEquals(
        List.of("front", "rear"),
        configs.good(toml).coach().jackPairs().stream().map(JackPair::id).toList());
  }

  @Test
  void mountingsMayNameAnyTwoAxes() {
    assertEquals(Mounting.ofXy(Axis.LEFT, Axis.UP), mounting("{ x = \"left\", y = \"up\" }"));
    assertEquals(Mounting.ofYz(Axis.DOWN, Axis.REARWARD), mounting("{y='down', z='rearward'}"));
    assertEquals(Mounting.ofXz(Axis.FORWARD, Axis.UP), mounting("{x='forward', y='left', z='up'}"));
  }

  private Mounting mounting(String toml) {
    return configs.good(Configs.LEAST + "[sensor]\nmounting = " + toml).sensors().get(0).mounting();
  }

  @Test
  void twoSensorsHaveTheirOwnNames() {
    String toml =
        Configs.LEAST
            + """
            [[sensor]]
            [[sensor]]
            id = "rear"
            address = "0x1d"
            """;
    List<Config.Sensor> sensors = configs.good(toml).sensors();
    assertEquals(List.of("1", "rear"), sensors.stream().map(Config.Sensor::id).toList());
    assertEquals(0x1D, sensors.get(1).address());
  }

  @Test
  void theOwnBrokerMayListenOnThePrivateNetwork() {
    for (String host :
        List.of("0.0.0.0", "[::]", "[::1]", "localhost", "192.168.8.2", "[fd00::2]")) {
      String url = "mqtt://" + host + ":1884";
      assertEquals(
          URI.create(url), configs.good(Configs.LEAST + "[mqtt]\nurl='" + url + "'").mqtt().url());
    }
  }

  @Test
  void anotherBrokerMayBeAnywhere() {
    Config.Mqtt mqtt =
        configs
            .good(
                Configs.LEAST
                    + """
                    [mqtt]
                    url = "mqtts://broker.example.org"
                    broker = "other"
                    user = "coach@example.org"
                    password-file = "/etc/pitchwatch/password"
                    ca-file = "ours.pem"
                    announce = []
                    [page]
                    websocket = "wss://broker.example.org/mqtt"
                    """)
            .mqtt();
    assertEquals(Config.Broker.OTHER, mqtt.broker());
    assertTrue(mqtt.announce().isEmpty());
    assertEquals(Optional.of(directory.resolve("ours.pem")), mqtt.caFile());
    assertEquals("coach@example.org", mqtt.login().orElseThrow().user());
  }
}
