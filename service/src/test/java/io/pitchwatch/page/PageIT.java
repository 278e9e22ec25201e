package io.pitchwatch.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What the page says of the tree of a real broker, in a real Chromium. */
class PageIT extends OnThePage {

  @BeforeEach
  void nothingRetained() throws Exception {
    emptyBroker();
  }

  @Test
  void beforeTheFirstValueThePageSaysSoAndClaimsNothing() {
    stage().signedIn(Mosquitto.DRIVER);
    browser().awaitText("#link", "no news of the coach yet");
    browser().awaitText("#lean", "Waiting for the first value");
    assertTrue(browser().text("#verdict").contains("not known"));
    assertTrue(browser().text("#reading").contains("Nothing has been read"));
  }

  @Test
  void leanIsSaidInWordsDegreesAndMillimetres() throws Exception {
    coach().parkedInOrder().floor("2.10", "0.80", "steady", "near-enough");
    stage().signedIn(Mosquitto.DRIVER);
    browser().awaitText("#link", "Live");
    browser().awaitText("#lean", "Right side low");
    String lean = browser().text("#lean");
    // 1960 mm · tan 2.10° = 71.9 mm; 5600 mm · tan 0.80° = 78.2 mm
    for (String part : List.of("2.10°", "72 mm over the track", "Front low", "0.80°", "78 mm")) {
      assertTrue(lean.contains(part), part + " in " + lean);
    }
    assertTrue(browser().text("#verdict").contains("Not level enough"));
    // two standard errors of 0.010°
    assertTrue(browser().text("#sure").contains("Give or take 0.02°"), browser().text("#sure"));
    // 5600 mm · tan 0.80° + 1960 mm · tan 2.10° = 150.1 mm
    String picture = browser().text("#floorplan-words");
    assertTrue(picture.contains("front right corner, 150 mm below"), picture);
    assertTrue(browser().text("#fridge-list").contains("Inside its limits, 2.6° to spare"));
  }

  @Test
  void otherSideAndOtherEnd() throws Exception {
    coach().parkedInOrder().floor("-1.30", "-0.40", "steady", "near-enough");
    stage().signedIn(Mosquitto.DRIVER);
    browser().awaitText("#lean", "Left side low");
    browser().awaitText("#lean", "Rear low");
    browser().awaitText("#floorplan-words", "rear left corner");
  }

  /** Less than 0.05°, or less than two standard errors, is not told from level. */
  @Test
  void leanThatCannotBeToldFromLevelIsEven() throws Exception {
    coach().parkedInOrder().floor("0.04", "-0.18", "unsettled", "good");
    coach().put("floor/uncertainty", "0.100");
    stage().signedIn(Mosquitto.DRIVER);
    browser().awaitText("#floorplan-words", "The floor is even both ways");
    assertFalse(browser().text("#lean").contains("low"), browser().text("#lean"));
  }

  @Test
  void inchesForThoseWhoWantThem() throws Exception {
    coach().parkedInOrder().floor("2.10", "0.80", "steady", "near-enough");
    stage().signedIn(Mosquitto.DRIVER);
    browser().awaitText("#lean", "72 mm over the track");
    choose("units", "imperial");
    // 71.9 mm = 2.83 in, to the nearest eighth 2 7/8
    browser().awaitText("#lean", "2 7/8 in over the track");
    browser().driver().navigate().refresh();
    browser().awaitText("#lean", "2 7/8 in over the track");
  }

  @Test
  void heightsOnTheContourLinesAreThoseOfTheFloor() throws Exception {
    coach().parkedInOrder().floor("0.00", "0.50", "steady", "good");
    stage().signedIn(Mosquitto.DRIVER);
    // 5600 mm · tan 0.50° = 48.9 mm over the wheelbase: lines every 10 mm
    browser().awaitText("#floorplan-key", "every 10 mm");
    List<Double> drawn =
        browser()
            .numbers(
                "const y = l => (l.y1.baseVal.value + l.y2.baseVal.value) / 2;"
                    + "const lines = [...document.querySelectorAll('.contour line')].map(y);"
                    + "const wheels = [...document.querySelectorAll('.wheel')]"
                    + ".map(w => w.y.baseVal.value + w.height.baseVal.value / 2);"
                    + "return [lines.length, lines[0] - Math.min(...wheels),"
                    + " (lines[1] - lines[0]) / (Math.max(...wheels) - Math.min(...wheels))]");
    assertEquals(5, drawn.get(0), "lines at 0, 10, 20, 30 and 40 mm");
    assertEquals(0, drawn.get(1), 0.1, "the lowest line runs through the front wheels");
    assertEquals(10 / 48.87, drawn.get(2), 0.001, "10 mm of 48.87 mm");
  }

  @Test
  void unknownFloorIsNeverShownAsANumber() throws Exception {
    coach().parkedInOrder();
    stage().signedIn(Mosquitto.DRIVER);
    browser().awaitText("#lean", "Right side low");
    coach().put("floor/state", "unknown").put("floor/verdict", "unknown");
    forget("floor/roll", "floor/pitch", "fridge-galley/within", "fridge-galley/margin");
    coach().put("sensor-main/health", "failed");
    browser().awaitText("#lean", "How the floor leans is not known");
    assertTrue(browser().text("#verdict").contains("not known"));
    browser().awaitText("#fridge-list", "Not known");
    browser().awaitText("#sensor-list", "Failed");
    assertFalse(browser().text("#lean").contains("°"));
  }

  @Test
  void groundThatGivesWaySaysHowFastAndHowLong() throws Exception {
    coach().parkedInOrder().put("ground/settling", "true").put("ground/roll-rate", "0.120");
    coach().put("ground/pitch-rate", "0").put("ground/hours-to-limit", "6.4");
    stage().signedIn(Mosquitto.DRIVER);
    browser().awaitText("#ground-list", "The ground is giving way");
    browser().awaitText("#ground-list", "Right side sinking 0.12° an hour");
    browser().awaitText("#ground-list", "First limit in about 6 h");
  }

  @Test
  void readingKeptByTheBrokerSinceYesterdayIsOldHoweverGoodItSounds() throws Exception {
    coach().parkedInOrder().takenAt(Instant.now().minus(Duration.ofHours(26)));
    stage().signedIn(Mosquitto.DRIVER);
    browser().awaitText("#reading", "26 h old");
    assertTrue(browser().text("#verdict").contains("not known"));
    coach().takenAt(Instant.now());
    browser().awaitText("#verdict", "Level enough");
  }

  @Test
  void coachWhoseClockIsYearsOutIsCurrentOnceItIsSeenToSpeak() throws Exception {
    coach().parkedInOrder().takenAt(Instant.parse("2031-01-01T00:00:00Z"));
    stage().signedIn(Mosquitto.DRIVER);
    browser().awaitText("#reading", "age not known");
    coach().takenAt(Instant.parse("2031-01-01T00:00:01Z"));
    browser().awaitText("#verdict", "Level enough");
    assertTrue(browser().text("#reading").contains("Read"));
  }

  @Test
  void valuesAgeWhileTheScreenSleeps() throws Exception {
    coach().parkedInOrder();
    stage().signedIn(Mosquitto.DRIVER);
    browser().awaitText("#verdict", "Level enough");
    coach().takenAt(Instant.now().plusSeconds(1));
    // The browser's wall clock moves on by ten minutes, as it does over a sleep.
    browser().script("const real = Date.now; Date.now = () => real() + 600000");
    browser().awaitText("#reading", "10 min old");
    assertTrue(browser().text("#verdict").contains("not known"));
  }

  @Test
  void hostileValuesAreTextOrUnknown() throws Exception {
    String markup = "<img src=x onerror=\"document.title='taken'\"><script>taken()</script>";
    coach().parkedInOrder();
    coach().put("floor/roll", markup).put("floor/pitch", "1e400").put("floor/state", markup);
    coach().put("floor/verdict", "GOOD").put("floor/uncertainty", "NaN");
    coach().put("fridge-galley/margin", "Infinity").put("fridge-galley/within", "yes");
    coach().put("fridge-galley/outside-minutes", "-5").put("visit/stay", markup);
    coach().put("visit/phase", "__proto__").put("door-washroom/tendency", "constructor");
    coach().put("$alert/spoof", markup).put("$alert/long", "x".repeat(200_000));
    coach().putBytes("sensor-main/health", new byte[] {(byte) 0xff, (byte) 0xfe, 0});
    coach().put("plan/headline", markup).put("plan/document", "[".repeat(50_000));
    coach().put("visit/laid", "{\"wheels\":[{\"axle\":{},\"side\":\"left\",\"layers\":\"x\"},7]}");
    coach().put("sensor-__proto__/health", "good").put("floor/" + "deep/".repeat(20), "1");
    stage().signedIn(Mosquitto.DRIVER);
    browser().awaitText("#alerts", "<img src=x");
    browser().awaitText("#lean", "not known");
    browser().awaitText("#fridge-list", "Not known");
    browser().awaitText("#door-list", "Not known");
    browser().awaitText("#sensor-list", "Not known");
    assertTrue(browser().text("#verdict").contains("not known"));
    browser().awaitText("#plan-headline", "<img src=x");
    assertEquals("Heron · Pitchwatch", browser().driver().getTitle());
    assertEquals(List.of(0.0), browser().numbers("return [document.images.length]"));
    assertTrue(browser().text("#alerts").length() < 1000, "cut to a few lines");
    assertEquals(0, browser().sidewaysScroll());
  }

  /** A plan whose every part is of the wrong kind: what is left of it is shown, nothing breaks. */
  @Test
  void planOfNonsenseIsShownAsFarAsItMakesSense() throws Exception {
    coach().parkedInOrder().put("visit/phase", "arriving");
    coach()
        .put(
            "plan/document",
            """
            {"headline":"Stay in the seat","verdict":"toString",
             "wheels":[{"axle":"rear","side":"right","liftMm":"76","layers":[{"piece":"__proto__",
               "abreast":1}],"stair":{"length":3}},{"axle":"rear","side":"up","layers":[]}, null],
             "jacks":[{"pair":"front","raiseMm":1e9},{"pair":{},"raiseMm":1}],
             "pieces":{"piece":"block"},"reasons":["x",{"sentence":7}],"alternatives":[[]],
             "afterWheels":{"rollDeg":"0"}}
            """);
    stage().signedIn(Mosquitto.DRIVER);
    browser().awaitText("#plan-headline", "Stay in the seat");
    assertTrue(browser().text("#plan-steps").contains("Rear right"));
    assertFalse(browser().text("#plan-steps").contains("Front"));
  }
}
