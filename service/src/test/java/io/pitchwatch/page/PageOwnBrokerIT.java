package io.pitchwatch.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import io.pitchwatch.mqtt.broker.BrokerStart;
import io.pitchwatch.mqtt.broker.OwnBroker;
import io.pitchwatch.mqtt.broker.OwnBrokerSettings;
import io.pitchwatch.mqtt.link.Credentials;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The page against the built-in broker: the same port, WebSocket, accounts with their rights. */
class PageOwnBrokerIT {

  private static final String DAEMON = "pitchwatch";

  @TempDir Path directory;

  @Test
  @SuppressWarnings("try") // the broker only has to run
  void readsAsGuestAndAsksAsDashboard() throws Exception {
    PageStage.require(Browser.CHROMIUM, Browser.DRIVER);
    int port = freePort();
    Path daemonPassword = directory.resolve("daemon-password");
    OwnBrokerSettings settings =
        new OwnBrokerSettings(
            PageSettings.LOOPBACK,
            port,
            directory,
            "homie",
            List.of(),
            new Credentials(DAEMON, daemonPassword));
    try (OwnBroker broker =
            assertInstanceOf(BrokerStart.Running.class, OwnBroker.start(settings)).broker();
        PageServer server = page(port);
        Browser browser = new Browser(directory.resolve("profile"));
        CoachOnTheBroker coach = new CoachOnTheBroker(port, DAEMON, first(daemonPassword))) {
      coach.parkedInOrder();
      browser.size(390, 844);
      browser.openFresh(server.address());
      open(browser, server, OwnBrokerSettings.GUEST, "not-the-password");
      browser.awaitText("#sign-in-problem", "does not take this user and password");
      open(browser, server, OwnBrokerSettings.GUEST, password("guest"));
      browser.awaitText("#verdict", "Level enough");
      browser.find("#stay-kind input[value=season]").click();
      browser.awaitText("#stay-answer", "may only be allowed to read");
      assertEquals(List.of(), coach.commands());
      open(browser, server, OwnBrokerSettings.DASHBOARD, password("dashboard"));
      browser.awaitText("#where", "dashboard");
      browser.awaitText("#verdict", "Level enough");
      browser.find("#stay-kind input[value=season]").click();
      browser.awaitText("#stay-answer", "The coach has taken it");
      assertEquals(List.of("visit/stay/set season"), coach.commands());
    }
  }

  private static PageServer page(int port) {
    PageSettings settings =
        new PageSettings(
            PageSettings.LOOPBACK,
            0,
            Herons.heron(),
            "homie",
            new BrokerAddress.SameHost(port),
            true);
    return assertInstanceOf(PageStart.Started.class, PageServer.start(settings)).server();
  }

  private static void open(Browser browser, PageServer server, String user, String password) {
    browser.driver().get(server.address() + "#user=" + user + "&password=" + password);
  }

  private String password(String account) throws IOException {
    return first(directory.resolve("mqtt-" + account + "-password"));
  }

  private static String first(Path file) throws IOException {
    return Files.readAllLines(file).get(0);
  }

  private static int freePort() throws IOException {
    try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      return socket.getLocalPort();
    }
  }
}
