package io.pitchwatch.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.Keys;

/** Small screens, keyboard, screen reader, size: with everything on the page at once. */
class PageCraftIT extends OnThePage {

  @BeforeEach
  void everythingAtOnce() throws Exception {
    coach().parkedInOrder().put("visit/phase", "arriving");
    coach().put("plan/headline", Plans.HEADLINE).put("plan/document", Plans.RIGHT_SIDE_UP);
    coach().put("$alert/fridge-galley", "Fridge galley is outside its limits.");
    coach().put("$description", "{\"nodes\":{\"visit\":{\"properties\":{\"book\":{}}}}}");
    coach().put("visit/site", "Alder Bend").put("visit/book", Plans.BOOK);
    coach()
        .put(
            "upkeep/guide",
            "{\"task\":\"none\",\"said\":\"zero taken\",\"next\":\"\",\"undo\":\"zero none\"}");
    coach().history(Histories.sinkingDay(Instant.now().getEpochSecond()));
    coach().put("visit/laid", Plans.LAID).put("ground/settling", "true");
    browser().size(390, 844);
  }

  @ParameterizedTest
  @ValueSource(ints = {320, 390, 768, 1280})
  void nothingScrollsSideways(int width) throws Exception {
    stage().signedIn(Mosquitto.DRIVER);
    browser().size(width, 800);
    for (String phase : List.of("arriving", "parked", "leaving", "under-way")) {
      coach().put("visit/phase", phase);
      browser()
          .wait(
              phase,
              () -> phase.equals(browser().find("#coach-view").getDomAttribute("data-phase")),
              () -> browser().text("#phase"));
      browser().awaitText("#laid-summary", "6 pieces");
      assertEquals(0, browser().sidewaysScroll(), phase);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"light", "dark", "red"})
  void axeFindsNothingInAnyLook(String look) throws Exception {
    browser().openFresh(stage().page());
    browser().awaitText("#sign-in", "Sign in");
    assertEquals("[]", axe(), "sign-in");
    stage().signedIn(Mosquitto.DRIVER);
    browser().awaitText("#plan-headline", Plans.HEADLINE_LINES);
    choose("look", look);
    assertEquals("[]", axe(), "arriving");
    coach().put("visit/phase", "parked");
    browser().awaitText("#phase", "Parked");
    browser().size(1280, 800);
    browser().press("#history-open");
    browser().awaitText("#history-words", "Side to side");
    browser().script("document.querySelectorAll('details').forEach(each => each.open = true)");
    assertEquals("[]", axe(), "parked, wide");
    coach().put("$state", "lost");
    browser().awaitText("#reading", "not current");
    assertEquals("[]", axe(), "old values");
    browser().find("#zero").click();
    assertEquals("[]", axe(), "question");
  }

  @Test
  void screenReaderHearsChangesOfStateNotEveryDigit() throws Exception {
    stage().signedIn(Mosquitto.DRIVER);
    browser().awaitText("#verdict", "Level enough");
    browser()
        .script(
            "window.said = 0; new MutationObserver(() => window.said++)"
                + ".observe(document.getElementById('heard'), {childList: true})");
    coach().floor("0.41", "-0.22", "steady", "good");
    browser().awaitText("#lean", "0.41°");
    browser().awaitText("#lean", "0.22°");
    assertEquals(List.of(0.0), browser().numbers("return [window.said]"));
    coach().floor("3.20", "-0.22", "steady", "outside");
    browser().awaitText("#verdict", "Outside what a fridge can stand");
    browser()
        .wait(
            "one sentence told",
            () -> browser().numbers("return [window.said]").equals(List.of(1.0)),
            () -> browser().numbers("return [window.said]").toString());
  }

  @Test
  void everythingCanBeReachedWithTheKeyboard() {
    stage().signedIn(Mosquitto.DRIVER);
    browser().awaitText("#verdict", "Level enough");
    browser().driver().navigate().refresh();
    browser().awaitText("#verdict", "Level enough");
    browser().find("body").sendKeys(Keys.TAB);
    assertEquals("skip", focused("className"));
    for (int i = 0; i < 40 && !focused("id").equals("zero"); i++) {
      browser().driver().switchTo().activeElement().sendKeys(Keys.TAB);
    }
    assertEquals("zero", focused("id"));
    browser().driver().switchTo().activeElement().sendKeys(Keys.ENTER);
    assertEquals("no", focused("value"), "the harmless answer is the nearer one");
  }

  @Test
  void turningThePageDoesNotTakeTheFocusAway() throws Exception {
    stage().signedIn(Mosquitto.DRIVER);
    browser().awaitText("#plan-headline", Plans.HEADLINE_LINES);
    browser().script("document.getElementById('zero').focus()");
    coach().put("visit/phase", "leaving");
    browser().awaitText("#phase", "Leaving");
    assertEquals("zero", focused("id"));
  }

  /** What a first visit loads, as it goes over the wire, and how soon it is there. */
  @Test
  void firstViewIsSmall() {
    stage().signedIn(Mosquitto.DRIVER);
    browser().awaitText("#link", "Live");
    browser().driver().executeCdpCommand("Network.enable", Map.of());
    browser().driver().executeCdpCommand("Network.clearBrowserCache", Map.of());
    // A first visit has no keeper yet that could answer for the server.
    bypassKeeper(true);
    browser().driver().navigate().refresh();
    browser().awaitText("#verdict", "Level enough");
    List<Double> found =
        browser()
            .numbers(
                "const all = performance.getEntries().filter(e => e.transferSize);"
                    + "return [all.reduce((sum, e) => sum + e.transferSize, 0),"
                    + " Math.max(...all.map(e => e.responseEnd))]");
    System.out.printf(
        "first view: %.1f KiB over the wire, headers included; last file after %.0f ms%n",
        found.get(0) / 1024, found.get(1));
    bypassKeeper(false);
    assertTrue(found.get(0) > 20 * 1024, "counted " + found.get(0) + " bytes");
    assertTrue(found.get(0) <= 100 * 1024, found.get(0) + " bytes");
  }

  /** Chromium's own list of what keeps a page from being installed. */
  @Test
  void pageCanBeInstalled() {
    stage().signedIn(Mosquitto.DRIVER);
    browser().awaitText("#verdict", "Level enough");
    Map<String, Object> found =
        browser().driver().executeCdpCommand("Page.getInstallabilityErrors", Map.of());
    assertEquals(List.of(), found.get("installabilityErrors"));
  }

  @Test
  void keptPageOpensWithoutItsServerAndReadsTheBroker() throws Exception {
    try (PageServer server = stage().anotherServer()) {
      stage().signedIn(Mosquitto.DRIVER, server.address());
      browser().awaitText("#verdict", "Level enough");
      browser()
          .wait(
              "the page's keeper at work",
              () ->
                  Boolean.TRUE.equals(
                      browser().script("return !!navigator.serviceWorker.controller")),
              () -> "none");
      browser().driver().navigate().refresh();
      browser().awaitText("#verdict", "Level enough");
    }
    browser().driver().navigate().refresh();
    browser().awaitText("#link", "Live");
    browser().awaitText("#verdict", "Level enough");
  }

  private static void bypassKeeper(boolean bypass) {
    browser()
        .driver()
        .executeCdpCommand("Network.setBypassServiceWorker", Map.of("bypass", bypass));
  }

  private static String focused(String property) {
    return String.valueOf(browser().script("return document.activeElement." + property));
  }

  /** What axe-core finds against WCAG 2.0 to 2.2, A and AA, and good practice. */
  private static String axe() throws IOException {
    try (InputStream script = PageCraftIT.class.getResourceAsStream("/axe.min.js")) {
      if (script == null) {
        throw new AssertionError("axe.min.js is not on the class path");
      }
      browser().script(new String(script.readAllBytes(), StandardCharsets.UTF_8));
    }
    return String.valueOf(
        browser()
            .driver()
            .executeAsyncScript(
                "const done = arguments[0]; axe.run({runOnly: ['wcag2a', 'wcag2aa', 'wcag21a',"
                    + " 'wcag21aa', 'wcag22aa', 'best-practice']}).then(found =>"
                    + " done(JSON.stringify(found.violations.map(v => [v.id,"
                    + " v.nodes.map(n => n.target + ' ' + n.failureSummary)]))))"));
  }
}
