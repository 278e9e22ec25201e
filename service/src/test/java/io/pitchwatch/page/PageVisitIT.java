package io.pitchwatch.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;

/** What the reader can ask of the coach, and how the page follows a visit. */
class PageVisitIT extends OnThePage {

  @BeforeEach
  void inOrder() throws Exception {
    emptyBroker();
    coach().parkedInOrder();
    coach().manner(CoachOnTheBroker.Manner.ECHOES);
  }

  @Test
  void stayFollowsTheEchoOfTheCoach() {
    signedInAndLive(Mosquitto.DRIVER);
    pick("stay-kind", "season");
    browser().awaitText("#stay-answer", "The coach has taken it");
    assertTrue(coach().commands().contains("visit/stay/set season"), coach().commands().toString());
    awaitChosen("stay-kind", "season");
  }

  @Test
  void refusedStayGoesBackToWhatTheCoachHolds() {
    coach().manner(CoachOnTheBroker.Manner.REFUSES);
    signedInAndLive(Mosquitto.DRIVER);
    pick("stay-kind", "season");
    browser().awaitText("#stay-answer", "The coach refused: not while the coach moves");
    awaitChosen("stay-kind", "overnight");
  }

  @Test
  void accountThatMayOnlyReadIsToldSo() {
    signedInAndLive(Mosquitto.GUEST);
    pick("stay-surface", "grass");
    browser().awaitText("#stay-answer", "may only be allowed to read");
    awaitChosen("stay-surface", "gravel");
    assertEquals(List.of(), coach().commands());
  }

  @Test
  void zeroIsAskedTwice() {
    signedInAndLive(Mosquitto.DRIVER);
    browser().find("#zero").click();
    browser().find("#zero-question button[value=no]").click();
    browser().find("#zero").click();
    browser().find("#zero-question button[value=no]").sendKeys(Keys.ESCAPE);
    browser().find("#zero").click();
    browser().find("#zero-question button[value=yes]").click();
    browser().awaitText("#zero-answer", "The coach has taken it");
    assertEquals(List.of("upkeep/zero/set now"), coach().commands());
  }

  /** The echo says that a command was taken, the log what came of it. */
  @Test
  void zeroThatWasTakenAndThenRefusedIsToldSo() throws Exception {
    signedInAndLive(Mosquitto.DRIVER);
    browser().press("#zero");
    browser().find("#zero-question button[value=yes]").click();
    browser().awaitText("#zero-answer", "The coach has taken it");
    coach().log("warn", "zero refused: the floor is unsettled; zero needs it steady");
    browser().awaitText("#zero-answer", "The coach refused: the floor is unsettled");
  }

  @Test
  void coachLeadsThroughAReversalAndBack() throws Exception {
    coach().put("upkeep/guide", guide("none", "", "", ""));
    signedInAndLive(Mosquitto.DRIVER);
    browser().press("#care-ways details:nth-child(1) summary");
    assertTrue(browser().text("#care-ways").contains("Turn the coach end for end"));
    browser().press("#care-ways details:nth-child(1) button");
    browser().awaitText("#care-answer", "The coach has taken it");
    coach().put("upkeep/guide", guide("reversal", "first reading taken", "turn the coach", ""));
    browser().awaitText("#care-said", "First reading taken.");
    browser().awaitText("#care-next", "Next: Turn the coach.");
    assertFalse(browser().find("#care-ways").isDisplayed());
    browser().press("#care-steps button:nth-child(1)");
    browser().awaitText("#care-answer", "The coach has taken it");
    coach().log("info", "reversal second: zero taken");
    browser().awaitText("#care-answer", "The coach has taken it: zero taken");
    coach().put("upkeep/guide", guide("none", "zero taken", "", "zero none"));
    browser().awaitText("#care-undo-words", "An undo goes back to: zero none.");
    browser().press("#care-undo button");
    browser()
        .wait(
            "three commands", () -> coach().commands().size() == 3, () -> coach().commands() + "");
    assertEquals(
        List.of("upkeep/reversal/set first", "upkeep/reversal/set second", "upkeep/undo/set now"),
        coach().commands());
  }

  @Test
  void oneOfSeveralSensorsCanBeCalibratedUndoneAndMadeToForget() throws Exception {
    coach().put("upkeep/guide", guide("none", "", "", "zero none"));
    coach().put("sensor-rear/health", "good").put("sensor-rear/roll-drift", "0.0344");
    coach().put("sensor-rear/pitch-drift", "-0.0458");
    signedInAndLive(Mosquitto.DRIVER);
    browser().awaitText("#sensor-list", "Drifts by 0.034° side to side and 0.046° front to back");
    browser().press("#care-ways details:nth-child(3) summary");
    browser().awaitText("#care-ways", "Begin the calibration of Main");
    browser().press("#care-ways details:nth-child(3) button:nth-child(2)");
    browser().awaitText("#care-answer", "The coach has taken it");
    browser().press("#care-ways details:nth-child(4) summary");
    browser().press("#care-ways details:nth-child(4) button");
    browser().awaitText("#care-answer", "The coach has taken it");
    browser().press("#care-undo button:nth-child(3)");
    browser()
        .wait(
            "three commands", () -> coach().commands().size() == 3, () -> coach().commands() + "");
    assertEquals(
        List.of(
            "upkeep/calibrate/set start-rear",
            "upkeep/drift/set forget-rear",
            "upkeep/undo/set now-rear"),
        coach().commands());
    forget("sensor-rear/health", "sensor-rear/roll-drift", "sensor-rear/pitch-drift");
    browser()
        .wait(
            "one sensor's undo gone",
            () -> !browser().text("#care-undo").contains("alone"),
            () -> browser().text("#care-undo"));
  }

  @Test
  void placeGetsItsNameAndTellsOfEarlierVisits() throws Exception {
    coach().put("$description", "{\"nodes\":{\"visit\":{\"properties\":{\"book\":{}}}}}");
    signedInAndLive(Mosquitto.DRIVER);
    browser().awaitText("#site-book-words", "With a name the coach remembers");
    browser().find("[name=site]").sendKeys("Alder Bend");
    browser().press("#site-form button");
    browser().awaitText("#site-answer", "The coach has taken it");
    assertTrue(coach().commands().contains("visit/site/set Alder Bend"));
    browser().awaitText("#site-book-words", "no earlier visit");
    coach()
        .put(
            "visit/book",
            """
            {"site":"Alder Bend","visits":[{"begun":"2026-05-02T12:00:00Z",
             "ended":"2026-05-09T12:00:00Z","stay":"stay","surface":"grass",
             "found":{"rollDeg":2.1,"pitchDeg":-0.8},"levelled":{"rollDeg":0.1,"pitchDeg":0},
             "settled":{"rollDeg":0.12,"pitchDeg":0},"laid":"rear right: 2 block",
             "plan":"Right side up 76 mm"},
             {"begun":"soon","surface":"__proto__","found":7,"laid":["x"]}]}
            """);
    browser().awaitText("#site-book-words", "You were here 2 times before");
    String book = browser().text("#site-book");
    for (String part :
        List.of(
            "May 2, 2026 – May 9, 2026",
            "Grass. Found right side low 2.10°, rear low 0.80°."
                + " The plan was: Right side up 76 mm. Laid: rear right: 2 block.",
            "Then right side low 0.10°. Right side sank 0.12°.",
            "Some day")) {
      assertTrue(book.contains(part), part + " in " + book);
    }
    browser().find("[name=site]").clear();
    browser().press("#site-form button");
    browser().awaitText("#site-book-words", "With a name the coach remembers");
  }

  private static String guide(String task, String said, String next, String undo) {
    return "{\"task\":\"%s\",\"said\":\"%s\",\"next\":\"%s\",\"undo\":\"%s\"}"
        .formatted(task, said, next, undo);
  }

  @Test
  void alertComesFirstAndCanBeAcknowledgedAndQuieted() throws Exception {
    coach().put("$alert/fridge-galley", "Fridge galley is outside its limits.");
    signedInAndLive(Mosquitto.DRIVER);
    browser().awaitText("#alerts", "Fridge galley is outside its limits.");
    assertTrue(above("#alerts", "#floor"));
    browser().press("#alert-list button");
    browser().awaitText("#alert-answer", "The coach has taken it");
    browser().press("#alert-list button:last-child");
    browser()
        .wait("two commands", () -> coach().commands().size() == 2, () -> coach().commands() + "");
    assertEquals(
        List.of(
            "upkeep/acknowledge/set fridge-galley",
            "upkeep/shelve/set {\"alert\":\"fridge-galley\",\"minutes\":60}"),
        coach().commands());
    forget("$alert/fridge-galley");
    awaitGone("#alerts");
  }

  @Test
  void arrivingTurnsThePageToThePlan() throws Exception {
    arriving();
    signedInAndLive(Mosquitto.DRIVER);
    browser().awaitText("#plan-headline", Plans.HEADLINE_LINES);
    String plan = browser().text("#plan");
    for (String part :
        List.of(
            "Rear right",
            "up 76 mm",
            "2 layers of block, 2 side by side",
            "Front pair: raise 94 mm",
            "Pads: left 114 mm (1 × timber pad), right 190 mm (1 × timber pad, 2 × thin pad)",
            "Block: 7 of 10")) {
      assertTrue(plan.contains(part), part + " in " + plan);
    }
    assertTrue(plan.contains("Without block: Right side up 48 mm"), plan);
    assertFalse(plan.contains("Or turn the coach"), "this plan is good as it is");
    assertTrue(above("#plan", "#floor"));
    assertTrue(browser().text("#cautions").contains("Chock the wheels"));
    // drawn to scale: a block is 380 mm long and 38 mm thick
    double ratio =
        browser()
            .numbers(
                "const p = document.querySelector('.piece.block');"
                    + "return [p.width.baseVal.value / p.height.baseVal.value]")
            .get(0);
    assertEquals(10, ratio, 0.1);
  }

  /** Outside what the stay asks, but no piece brings it nearer. */
  @Test
  void whatThePlanLeavesIsNotAskedFor() throws Exception {
    arriving();
    coach().put("visit/stay", "season");
    String leaves = Plans.RIGHT_SIDE_UP.replace("{\"rollDeg\":0.04,", "{\"rollDeg\":0.60,");
    coach().put("plan/document", leaves).floor("0.62", "0.01", "steady", "near-enough");
    signedInAndLive(Mosquitto.DRIVER);
    browser().awaitText("#plan-go", "Side to side is as planned");
    assertEquals("near", level("#plan-go .go-line"));
    assertFalse(browser().text("#plan-go").contains("mm"), browser().text("#plan-go"));
  }

  @Test
  void whereNoPlanHelpsTheHeadingsThatWouldAreShown() throws Exception {
    arriving();
    coach()
        .put("plan/document", Plans.RIGHT_SIDE_UP.replace("\"good\"", "\"move\""))
        .put("plan/turn", "{\"best\":[{\"text\":\"turn 90 deg left: no block needed\"}]}");
    signedInAndLive(Mosquitto.DRIVER);
    browser().awaitText("#plan-verdict", "Not on this spot");
    browser().awaitText("#plan-steps", "Or turn the coach");
    browser().awaitText("#plan-steps", "turn 90 deg left: no block needed");
    assertFalse(browser().text("#plan-steps").contains("Afterwards"), "nothing is changed here");
    assertEquals("", browser().text("#plan-go"), "nothing is to be raised here");
  }

  @Test
  void whatIsStillToRiseFollowsTheFloorUntilItIsLevelEnough() throws Exception {
    arriving();
    coach().put("visit/stay", "stay");
    signedInAndLive(Mosquitto.DRIVER);
    // 1960 mm · tan(2.10° − 0.04°) = 70.5 mm; 5600 mm · tan 0.80° = 78.2 mm
    browser().awaitText("#plan-go", "Right side up");
    browser().awaitText("#plan-go", "70 mm");
    browser().awaitText("#plan-go", "Front up");
    browser().awaitText("#plan-go", "78 mm");
    coach().put("plan/next", "Right side: 19 mm to go");
    browser().awaitText("#plan-next", "Right side: 19 mm to go");
    coach().floor("0.60", "0.80", "unsettled", "near-enough");
    // 1960 mm · tan(0.60° − 0.04°) = 19.2 mm
    browser().awaitText("#plan-go", "19 mm");
    coach().put("plan/next", "Stop, you are up");
    coach().floor("0.30", "-0.90", "steady", "near-enough");
    browser().awaitText("#plan-go", "Side to side is enough");
    browser().awaitText("#plan-go", "Rear up");
    browser()
        .wait(
            "the screen reader told",
            () ->
                heard().contains("Side to side is enough") && heard().contains("Stop, you are up"),
            PageVisitIT::heard);
    assertFalse(heard().contains("mm"), heard());
  }

  private static String heard() {
    return String.valueOf(browser().find("#heard").getDomProperty("textContent"));
  }

  @Test
  void oneGlanceSaysWhetherAllIsWell() throws Exception {
    coach().put("ground/settling", "false");
    signedInAndLive(Mosquitto.DRIVER);
    browser().awaitText("#well-words", "All is well");
    coach().put("door-washroom/tendency", "drifts-open");
    browser().awaitText("#well-words", "Not all is as it should be");
    browser().awaitText("#well-list", "Doors: not quite");
    coach().put("ground/settling", "true");
    browser().awaitText("#well-words", "Something is wrong");
    browser().awaitText("#well-list", "Ground: wrong");
    coach().put("visit/phase", "leaving");
    awaitGone("#well");
  }

  @Test
  void whatIsLaidIsTickedOffWhenLeaving() throws Exception {
    arriving();
    signedInAndLive(Mosquitto.DRIVER);
    browser().awaitText("#plan-headline", Plans.HEADLINE_LINES);
    browser().press("#plan-laid");
    browser().awaitText("#plan-answer", "The coach has taken it");
    coach().put("visit/phase", "leaving");
    // front: a sheet and a block; rear: two layers of two blocks and a stair of two
    browser().awaitText("#laid-summary", "8 pieces to collect");
    browser().awaitText("#laid-list", "6 × block");
    assertTrue(above("#laid", "#floor"));
    browser().press("#laid-list li:nth-child(2) button");
    browser().awaitText("#laid-summary", "2 pieces to collect");
    browser().press("#laid-list button");
    browser().awaitText("#laid-summary", "Nothing lies under the coach");
    assertTrue(coach().commands().contains("visit/laid/set {\"wheels\":[]}"));
  }

  @Test
  void commandsAreNotSentToAProgramThatIsNotRunning() throws Exception {
    coach().put("$state", "disconnected");
    stage().signedIn(Mosquitto.DRIVER);
    browser().awaitText("#link", "switched off");
    pick("stay-kind", "season");
    browser().awaitText("#stay-answer", "the coach's program is not running");
    assertEquals(List.of(), coach().commands());
  }

  @Test
  void beforeThereIsAPlanThePageSaysWhatItWaitsForAndNoFigure() throws Exception {
    coach().put("visit/phase", "arriving").put("plan/next", "Waiting for the coach");
    coach().floor("2.10", "-7.40", "moving", "unknown");
    signedInAndLive(Mosquitto.DRIVER);
    browser().awaitText("#plan-next", "Waiting for the coach");
    assertEquals("", browser().text("#plan-go") + browser().text("#plan-headline"));
    assertEquals("", browser().text("#plan-laid"));
    arriving();
    browser().awaitText("#plan-go", "Right side up");
  }

  private static void arriving() throws Exception {
    coach().put("visit/phase", "arriving").put("plan/headline", Plans.HEADLINE);
    coach().put("plan/document", Plans.RIGHT_SIDE_UP);
    coach().floor("2.10", "0.80", "steady", "near-enough");
  }

  private static void signedInAndLive(String user) {
    stage().signedIn(user);
    browser().awaitText("#link", "Live");
    browser().awaitText("#lean", "Right side low");
  }

  private static void pick(String group, String value) {
    browser().find("#" + group + " input[value=" + value + "]").click();
  }

  private static void awaitChosen(String group, String value) {
    String css = "#" + group + " input[value=" + value + "]";
    browser()
        .wait(value + " chosen", () -> browser().find(css).isSelected(), () -> "another choice");
  }

  private static boolean above(String first, String second) {
    return browser().find(first).getLocation().y < browser().find(second).getLocation().y;
  }
}
