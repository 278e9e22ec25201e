package io.pitchwatch.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The history, asked for over MQTT and drawn. */
class PageHistoryIT extends OnThePage {

  /** How many pixels of a colour stand in the part of the plot between two shares of its width. */
  private static final String PIXELS =
      """
      const canvas = document.querySelector('#history-roll canvas');
      const over = document.querySelector('#history-roll .u-over');
      const scale = canvas.width / canvas.clientWidth;
      const left = Math.round(over.offsetLeft * scale);
      const width = Math.round(over.offsetWidth * scale);
      const [from, to] = [arguments[0], arguments[1]].map(s => left + Math.round(s * width));
      const pixels = canvas.getContext('2d').getImageData(from, 0, to - from, canvas.height).data;
      const ink = [15, 37, 44];
      let count = 0;
      for (let i = 0; i < pixels.length; i += 4) {
        count += ink.every((part, k) => Math.abs(pixels[i + k] - part) < 12) && pixels[i + 3] > 200;
      }
      return count;
      """;

  @BeforeEach
  void parkedOnGroundThatGives() throws Exception {
    emptyBroker();
    coach().parkedInOrder();
    coach().manner(CoachOnTheBroker.Manner.ECHOES);
    coach().history(Histories.sinkingDay(Instant.now().getEpochSecond()));
    stage().signedIn(Mosquitto.DRIVER);
    browser().awaitText("#link", "Live");
  }

  @Test
  void nothingOfItIsLoadedBeforeSomebodyAsks() {
    assertEquals(
        List.of(0.0),
        browser()
            .numbers(
                "return [performance.getEntries().filter(e => /history|uplot/.test(e.name)).length]"));
    open();
    assertTrue(coach().commands().get(0).startsWith("upkeep/history/set {\"hours\":24,"));
  }

  @Test
  void historyIsSaidInWordsWithItsForecast() {
    open();
    String words = browser().text("#history-words");
    // roll from 0.30 - 0.03 to 0.30 + 719 · 0.002 + 0.03
    assertTrue(
        words.contains("Side to side: between right side low 0.27° and right side low 1.77°"),
        words);
    String forecast = browser().text("#history-forecast");
    assertTrue(
        forecast.contains("Right side sinking 0.120° an hour, give or take 0.020°"), forecast);
    assertTrue(forecast.contains("in about 11 h, between 8 h and 14 h"), forecast);
    browser().press("#history-events summary");
    browser().awaitText("#history-event-list", "Alert: The ground gives way.");
    browser().awaitText("#history-event-list", "Zero set on sensor main");
  }

  @Test
  void whereNothingIsKnownNothingIsDrawn() {
    open();
    // The day, and the trend onward by 0.3 of it: minutes 500 to 620 of 1440 · 1.3.
    assertTrue(pixels(0.05, 0.25) > 50, "drawn before the gap: " + pixels(0.05, 0.25));
    assertEquals(0, pixels(0.275, 0.325), "in the gap");
    assertTrue(pixels(0.4, 0.75) > 50, "drawn after the gap");
    assertEquals(0, pixels(0.8, 0.99), "what is to come is no measurement");
  }

  @Test
  void answerThatIsNoneIsSaidToBeNone() {
    coach().history("[".repeat(1000) + "<script>taken()</script>");
    browser().press("#history-open");
    browser().awaitText("#history-answer", "cannot be read");
    coach()
        .history(
            """
            {"columns":["time","roll","__proto__",7],"rows":[[1,"x",2],[null],["a"],7,[2,0.5,1]],
             "events":[{"time":1,"kind":"constructor"},null],"limits":7,"forecast":{"roll":[]}}
            """);
    browser().find("#history-spans input[value=week]").click();
    browser().awaitText("#history-words", "right side low 0.50°");
  }

  @Test
  void refusedHistoryIsToldInTheCoachsWords() {
    coach().manner(CoachOnTheBroker.Manner.REFUSES);
    browser().press("#history-open");
    browser().awaitText("#history-answer", "not while the coach moves");
  }

  @Test
  void emptyStoreIsSaidToBeEmpty() {
    coach().history("{\"columns\":[\"time\"],\"rows\":[]}");
    browser().press("#history-open");
    browser().awaitText("#history-words", "Nothing is written down of this time");
  }

  @Test
  void plotsFitAPhone() {
    open();
    assertEquals(0, browser().sidewaysScroll());
    browser().size(320, 800);
    browser()
        .wait(
            "no sideways scroll",
            () -> browser().sidewaysScroll() == 0,
            () -> browser().sidewaysScroll() + " px");
    browser().size(390, 844);
  }

  private static void open() {
    browser().press("#history-open");
    browser().awaitText("#history-words", "Side to side");
  }

  private static long pixels(double from, double to) {
    return ((Number) java.util.Objects.requireNonNull(browser().script(PIXELS, from, to)))
        .longValue();
  }
}
