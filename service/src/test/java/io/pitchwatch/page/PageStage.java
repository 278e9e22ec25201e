package io.pitchwatch.page;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.eclipse.paho.mqttv5.common.MqttException;

/** A broker, the page's server and a browser, all real, and a coach that speaks as it is told. */
final class PageStage implements AutoCloseable {

  private static final String REQUIRE_ALL = "PITCHWATCH_REQUIRE_ALL";

  private final Mosquitto broker;
  private final PageServer server;
  private final Browser browser;
  private CoachOnTheBroker coach;

  private PageStage(Path directory) throws IOException, MqttException {
    broker = Mosquitto.start(directory);
    server = start(broker.webSocketPort());
    browser = new Browser(directory.resolve("profile"));
    coach = new CoachOnTheBroker(broker.port(), Mosquitto.COACH, Mosquitto.password());
  }

  private static PageServer start(int webSocketPort) throws IOException {
    PageSettings settings =
        new PageSettings(
            PageSettings.LOOPBACK,
            0,
            Herons.heron(),
            "homie",
            new BrokerAddress.SameHost(webSocketPort),
            true);
    if (!(PageServer.start(settings) instanceof PageStart.Started started)) {
      throw new IOException("the page's server did not start on any free port");
    }
    return started.server();
  }

  /** Sets the stage, or skips the test with a message where a program is not installed. */
  static PageStage set(Path directory) throws IOException, MqttException {
    require(Mosquitto.EXECUTABLE, Browser.CHROMIUM, Browser.DRIVER);
    return new PageStage(directory);
  }

  /** Skips the test where a program is not installed, unless nothing may be skipped. */
  static void require(String... programs) {
    for (String program : programs) {
      boolean installed = Files.isExecutable(Path.of(program));
      if (!installed && System.getenv(REQUIRE_ALL) != null) {
        throw new AssertionError(program + " is not installed, and " + REQUIRE_ALL + " is set");
      }
      assumeTrue(installed, program + " is not installed: the page is not tried in a browser");
    }
  }

  Mosquitto broker() {
    return broker;
  }

  Browser browser() {
    return browser;
  }

  CoachOnTheBroker coach() {
    return coach;
  }

  /** The coach's program starts anew: another connection, nothing of its own remembered. */
  CoachOnTheBroker coachAnew() throws MqttException {
    coach.close();
    coach = new CoachOnTheBroker(broker.port(), Mosquitto.COACH, Mosquitto.password());
    return coach;
  }

  /** The page on a port of its own, to be closed before the others. */
  PageServer anotherServer() throws IOException {
    return start(broker.webSocketPort());
  }

  URI page() {
    return server.address();
  }

  /** Opens the page with nothing remembered, signed in. */
  Browser signedIn(String user) {
    return signedIn(user, server.address());
  }

  Browser signedIn(String user, URI page) {
    browser.openFresh(page);
    String fragment = "#user=" + user + "&password=" + encoded(Mosquitto.password());
    browser.driver().get(page + fragment);
    return browser;
  }

  private static String encoded(String value) {
    return URLEncoder.encode(value, StandardCharsets.UTF_8);
  }

  @Override
  public void close() throws MqttException {
    browser.close();
    server.close();
    coach.close();
    broker.close();
  }
}
