package io.pitchwatch.page;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import org.eclipse.paho.mqttv5.common.MqttException;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;

/** A stage for the page's browser tests, set once for each class of them. */
abstract class OnThePage {

  @TempDir static Path directory;

  private static @Nullable PageStage stage;

  @BeforeAll
  static void set() throws IOException, MqttException {
    stage = PageStage.set(directory);
    browser().size(390, 844);
  }

  @AfterAll
  static void strike() throws MqttException {
    if (stage != null) {
      stage.close();
      stage = null;
    }
  }

  /** Nothing on the page is against its own policy, nothing is missing, nothing throws. */
  @AfterEach
  void theBrowserHasNothingToComplainOf() {
    for (LogEntry entry : browser().driver().manage().logs().get(LogType.BROWSER)) {
      String message = entry.getMessage();
      boolean expected =
          message.contains("WebSocket")
              || message.contains("favicon.ico")
              // A test looks at what was drawn; the page does not.
              || message.contains("willReadFrequently");
      assertTrue(expected, message);
    }
  }

  static PageStage stage() {
    if (stage == null) {
      throw new IllegalStateException("the stage is not set");
    }
    return stage;
  }

  static Browser browser() {
    return stage().browser();
  }

  static CoachOnTheBroker coach() {
    return stage().coach();
  }

  /** A broker that holds nothing of any earlier test. */
  static void emptyBroker() throws IOException, MqttException {
    stage().broker().kill();
    stage().broker().startAgain();
    stage().coachAnew();
  }

  static void forget(String... paths) throws MqttException {
    for (String path : paths) {
      coach().put(path, "");
    }
  }

  static void choose(String select, String value) {
    browser().find("#" + select + " option[value=" + value + "]").click();
  }

  static void awaitGone(String css) {
    browser()
        .wait(css + " gone", () -> !browser().find(css).isDisplayed(), () -> browser().text(css));
  }

  /** What sign and colour stand before the words. */
  static String level(String css) {
    return String.valueOf(browser().find(css).getDomAttribute("data-level"));
  }
}
