package io.pitchwatch.page;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.openqa.selenium.OutputType;

/**
 * Takes the pictures of the page that the documents show. From the project's root:
 *
 * <pre>
 * mvn -q verify -pl service -am -Dit.test=PagePicturesIT -Dtest=none \
 *   -Dsurefire.failIfNoSpecifiedTests=false -Dfailsafe.failIfNoSpecifiedTests=false \
 *   -Dpitchwatch.pictures=$PWD/docs/images
 * </pre>
 *
 * <p>Skipped unless {@code pitchwatch.pictures} names a directory.
 */
@EnabledIfSystemProperty(
    named = "pitchwatch.pictures",
    matches = ".+",
    disabledReason = "no pictures wanted: pitchwatch.pictures names no directory")
class PagePicturesIT extends OnThePage {

  private static final int PHONE = 390;
  private static final int DESK = 1280;
  private static final int TALLEST = 1300;

  private static Path pictures = Path.of(".");

  @BeforeAll
  static void where() throws IOException {
    pictures = Files.createDirectories(Path.of(System.getProperty("pitchwatch.pictures")));
  }

  @Test
  void arriving() throws Exception {
    coach().parkedInOrder().put("visit/phase", "arriving").put("visit/surface", "grass");
    coach().put("plan/headline", Plans.HEADLINE).put("plan/document", Plans.RIGHT_SIDE_UP);
    coach().put("plan/next", "Lay the pieces in front of the wheels, then drive on");
    coach().put("fridge-galley/margin", "0.90");
    coach().floor("2.10", "0.80", "steady", "near-enough");
    stage().signedIn(Mosquitto.DRIVER);
    browser().awaitText("#plan-headline", Plans.HEADLINE_LINES);
    takeAll("arriving");
    forget("plan/headline", "plan/document", "plan/next");
  }

  @Test
  void parked() throws Exception {
    coach().parkedInOrder().put("ground/settling", "false");
    stage().signedIn(Mosquitto.DRIVER);
    browser().awaitText("#verdict", "Level enough");
    takeAll("parked");
    choose("look", "red");
    take("parked-red-390", PHONE);
    forget("ground/settling");
  }

  @Test
  void sinking() throws Exception {
    coach().parkedInOrder().put("ground/settling", "true").put("ground/roll-rate", "0.12");
    coach().put("ground/pitch-rate", "0.02").put("ground/hours-to-limit", "6.4");
    coach()
        .put(
            "$alert/settling",
            "The ground gives way: the right side sinks 0.12° an hour. The galley fridge reaches"
                + " its limit in about 6 hours. Put a wide board under the right wheels.");
    coach().put("door-washroom/tendency", "drifts-open").put("visit/laid", Plans.LAID);
    coach().put("fridge-galley/margin", "0.75");
    coach().floor("2.25", "-0.21", "steady", "near-enough");
    stage().signedIn(Mosquitto.DRIVER);
    browser().awaitText("#verdict", "Not level enough");
    takeAll("sinking");
    forget(
        "ground/settling",
        "ground/roll-rate",
        "ground/pitch-rate",
        "ground/hours-to-limit",
        "$alert/settling",
        "visit/laid");
  }

  @Test
  void history() throws Exception {
    coach().parkedInOrder().history(Histories.sinkingDay(Instant.now().getEpochSecond()));
    stage().signedIn(Mosquitto.DRIVER);
    browser().awaitText("#link", "Live");
    browser().press("#history-open");
    browser().awaitText("#history-words", "Side to side");
    for (String look : new String[] {"light", "dark"}) {
      choose("look", look);
      takeCard("history-" + look + "-" + PHONE, "#history", PHONE);
      takeCard("history-" + look + "-" + DESK, "#history", DESK);
    }
  }

  @Test
  void setUp() throws Exception {
    coach().parkedInOrder();
    coach().put("$description", "{\"nodes\":{\"visit\":{\"properties\":{\"book\":{}}}}}");
    coach().put("visit/site", "Alder Bend").put("visit/book", Plans.BOOK);
    coach()
        .put(
            "upkeep/guide",
            """
            {"task":"reversal","said":"first reading taken","undo":"",
             "next":"turn the coach end for end on the same spot, wheels in the same tracks, and \
            take the second reading there"}
            """);
    stage().signedIn(Mosquitto.DRIVER);
    browser().awaitText("#care-next", "Turn the coach");
    browser().press("#described summary");
    takeCard("set-up-light-" + PHONE, "#set-up", PHONE);
    takeCard("site-light-" + PHONE, "#site", PHONE);
    forget("upkeep/guide", "visit/book", "visit/site", "$description");
  }

  @Test
  void leaving() throws Exception {
    coach().parkedInOrder().put("visit/phase", "leaving").put("visit/laid", Plans.LAID);
    stage().signedIn(Mosquitto.DRIVER);
    browser().awaitText("#laid-summary", "6 pieces");
    takeAll("leaving");
    forget("visit/laid");
  }

  @Test
  void lost() throws Exception {
    coach().parkedInOrder().put("$state", "lost");
    stage().signedIn(Mosquitto.DRIVER);
    browser().awaitText("#reading", "not current");
    take("lost-390", PHONE);
  }

  @Test
  void signIn() throws Exception {
    browser().openFresh(stage().page());
    browser().awaitText("#sign-in", "Sign in");
    take("sign-in-390", PHONE);
  }

  private static void takeAll(String name) throws IOException {
    for (String look : new String[] {"light", "dark"}) {
      browser().prefers("prefers-color-scheme", look);
      take(name + "-" + look + "-" + PHONE, PHONE);
      take(name + "-" + look + "-" + DESK, DESK);
    }
    browser().prefers("prefers-color-scheme", "light");
  }

  /** One card, wherever it stands. */
  private static void takeCard(String name, String css, int width) throws IOException {
    browser().size(width, 4 * TALLEST);
    browser().script("document.querySelector('.bar').style.position = 'static'");
    // Two frames: the plots follow the width in the first, and are drawn in the second.
    browser()
        .driver()
        .executeAsyncScript(
            "const done = arguments[0];"
                + "requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(done, 50)))");
    byte[] shot = browser().find(css).getScreenshotAs(OutputType.BYTES);
    SmallPng.write(shot, pictures.resolve(name + ".png"));
  }

  /** The page from its top, as far down as a picture in a document should reach. */
  private static void take(String name, int width) throws IOException {
    browser().size(width, width == PHONE ? 844 : 800);
    double height = browser().numbers("return [document.documentElement.scrollHeight]").get(0);
    browser().size(width, (int) Math.min(height, TALLEST));
    byte[] shot = browser().driver().getScreenshotAs(OutputType.BYTES);
    SmallPng.write(shot, pictures.resolve(name + ".png"));
  }
}
