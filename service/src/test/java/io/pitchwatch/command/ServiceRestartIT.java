package io.pitchwatch.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.pitchwatch.config.Config;
import io.pitchwatch.config.ConfigOutcome;
import io.pitchwatch.config.ConfigReader;
import io.pitchwatch.mqtt.Await;
import io.pitchwatch.mqtt.BrokerProcess;
import io.pitchwatch.mqtt.Mosquitto;
import io.pitchwatch.mqtt.Observer;
import io.pitchwatch.mqtt.Schemas;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a restart must not lose, asked for and seen on a real broker. */
class ServiceRestartIT {

  private static final String ROOT = "homie/5/heron/";
  private static final String COACH =
      """
      [coach]
      id = "heron"
      [[axle]]
      id = "front"
      position = "0 mm"
      track = "2000 mm"
      load = "3000 kg"
      footprint = "250 mm"
      [[axle]]
      id = "rear"
      position = "-5000 mm"
      track = "1900 mm"
      load = "5000 kg"
      footprint = "590 mm"
      """;
  private static final String SITE =
      """
      seed = 9
      coach = "coach.toml"
      [sensor]
      chip = "adxl345"
      [site]
      roll = "2 deg"
      pitch = "-1 deg"
      """;

  @TempDir Path directory;

  @Test
  void zeroStayAndSurfaceSurviveARestart() throws Exception {
    Path scenario = Files.writeString(directory.resolve("site.toml"), SITE);
    try (BrokerProcess broker =
            new Mosquitto(Files.createDirectory(directory.resolve("broker"))).start();
        Observer observer = broker.dashboard().hear(ROOT + "#")) {
      try (Service service = start(config(broker), scenario)) {
        observer.awaitLast(ROOT + "floor/state", "steady");
        observer.awaitLast(ROOT + "floor/low-side", "right");
        observer.publish(ROOT + "visit/stay/set", "season");
        observer.publish(ROOT + "visit/surface/set", "gravel");
        observer.publish(ROOT + "upkeep/zero/set", "now");
        observer.awaitLast(ROOT + "visit/stay", "season");
        observer.awaitLast(ROOT + "visit/surface", "gravel");
        observer.awaitLast(ROOT + "floor/low-side", "even");
        assertTrue(service.page().isEmpty(), "no page was asked for");
      }
      observer.awaitLast(ROOT + "$state", "disconnected");
      observer.forget();
      try (Service service = start(config(broker), scenario)) {
        observer.awaitLast(ROOT + "floor/state", "steady");
        observer.awaitLast(ROOT + "visit/stay", "season");
        observer.awaitLast(ROOT + "visit/surface", "gravel");
        Await.until(
            "the floor is level by the zero of before",
            () -> Math.abs(number(observer, "floor/roll")) < 0.3);
        assertTrue(Math.abs(number(observer, "floor/pitch")) < 0.3, "pitch");
      }
    }
  }

  @Test
  void theHistoryIsThereForWhoAsks() throws Exception {
    Path scenario = Files.writeString(directory.resolve("site.toml"), SITE);
    try (BrokerProcess broker =
            new Mosquitto(Files.createDirectory(directory.resolve("broker"))).start();
        Observer observer = broker.dashboard().hear(ROOT + "#");
        Service service = start(config(broker), scenario)) {
      observer.awaitLast(ROOT + "floor/state", "steady");
      observer.publish(ROOT + "upkeep/zero/set", "now");
      observer.awaitPart(ROOT + "$log/info", "zero: the floor as it stands now is level");
      observer.publish(ROOT + "upkeep/history/set", "{\"reply\": \"me\"}");
      String answer = ROOT + "upkeep/history/answer/me";
      Await.until("an answer", () -> observer.last(answer).isPresent());
      String document = observer.last(answer).orElseThrow();
      assertEquals(List.of(), Schemas.faults("history", document));
      assertTrue(document.contains("\"tolerance\":0.5"), document);
      assertTrue(service.page().isEmpty(), "no page was asked for");
    }
  }

  private static double number(Observer observer, String topic) {
    String text = observer.last(ROOT + topic).orElse("");
    return text.isEmpty() ? Double.NaN : Double.parseDouble(text);
  }

  private Config config(BrokerProcess broker) throws IOException {
    String service =
        COACH
            + "[mqtt]\nbroker = \"other\"\nurl = \""
            + broker.address()
            + "\"\nuser = \""
            + broker.daemon().user()
            + "\"\npassword-file = \""
            + broker.daemon().passwordFile().toAbsolutePath()
            + "\"\n[page]\nenabled = false\n[store]\ndirectory = \"kept\"\n";
    Path file = Files.writeString(directory.resolve("coach.toml"), service);
    ConfigOutcome outcome = new ConfigReader(Map.of()).read(file);
    return assertInstanceOf(ConfigOutcome.Good.class, outcome, outcome::toString).config();
  }

  private static Service start(Config config, Path scenario) {
    Service.Start start =
        Service.start(
            config,
            BusChoice.simulated(scenario.toString()),
            new Service.Ending(report -> {}, why -> {}));
    return assertInstanceOf(Service.Start.Running.class, start, start::toString).service();
  }
}
