package io.pitchwatch.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.WebElement;

/** How the page signs in, and what it says when broker or coach come and go. */
class PageLinkIT extends OnThePage {

  @BeforeEach
  void inOrder() throws Exception {
    coach().parkedInOrder();
  }

  @ParameterizedTest
  @ValueSource(strings = {"lost", "disconnected", "init", "sleeping"})
  void coachThatIsNotThereMakesEveryValueOld(String state) throws Exception {
    stage().signedIn(Mosquitto.DRIVER);
    browser().awaitText("#verdict", "Level enough");
    coach().put("$state", state);
    browser().awaitText("#reading", "not current");
    assertTrue(browser().text("#verdict").contains("not known"));
    browser().awaitText("#fridge-list", "Last known: inside its limits");
    browser().awaitText("#door-list", "Last known: stays where it is put");
    assertEquals("none", level("#fridge-list li"));
    browser().awaitText("#well-words", "How things stand is not known");
    assertFalse(browser().text("#link").contains("Live"));
    coach().put("$state", "ready");
    browser().awaitText("#verdict", "Level enough");
  }

  @Test
  void lastWillOfACoachThatVanishesIsShown() throws Exception {
    stage().signedIn(Mosquitto.DRIVER);
    browser().awaitText("#link", "Live");
    coach().vanish();
    browser().awaitText("#link", "fell silent");
    browser().awaitText("#reading", "not current");
    stage().coachAnew().parkedInOrder();
    browser().awaitText("#link", "Live");
  }

  @Test
  void signInIsAskedForAndRefusedInWords() {
    browser().openFresh(stage().page());
    browser().awaitText("#sign-in", "Sign in to the coach's broker");
    signIn("driver", "wrong");
    browser().awaitText("#sign-in-problem", "does not take this user and password");
    assertTrue(browser().text("#link").contains("Not connected"), browser().text("#link"));
    signIn(Mosquitto.DRIVER, Mosquitto.password());
    browser().awaitText("#link", "Live");
    assertFalse(browser().find("#sign-in").isDisplayed());
    browser().find("#sign-out").click();
    browser().awaitText("#sign-in", "Sign in to the coach's broker");
    assertEquals("", browser().text("#coach-view"), "nothing of the coach after signing out");
  }

  @Test
  void credentialsLeaveTheAddressBarAndAreKeptForTheTabOnly() {
    stage().signedIn(Mosquitto.DRIVER);
    browser().awaitText("#link", "Live");
    assertFalse(browser().driver().getCurrentUrl().contains("password"));
    String kept = String.valueOf(browser().script("return JSON.stringify(localStorage)"));
    assertFalse(kept.contains(Mosquitto.password()));
    browser().driver().navigate().refresh();
    browser().awaitText("#link", "Live");
  }

  @Test
  void addressThatIsNoWebSocketIsRefusedBeforeAnythingIsSent() {
    browser().openFresh(stage().page());
    browser().find("#elsewhere summary").click();
    browser().find("[name=address]").sendKeys("http://broker.example/");
    signIn(Mosquitto.DRIVER, Mosquitto.password());
    browser().awaitText("#sign-in-problem", "not a WebSocket address");
  }

  @Test
  void anotherBrokerIsRememberedAndItsCoachIsShownWithoutOurFigures() {
    String address = "ws://localhost:" + stage().broker().webSocketPort();
    browser().openFresh(stage().page());
    browser().find("#elsewhere summary").click();
    browser().find("[name=address]").sendKeys(address);
    WebElement id = browser().find("[name=coach]");
    id.clear();
    id.sendKeys("egret");
    signIn(Mosquitto.DRIVER, Mosquitto.password());
    browser().awaitText("#link", "no news of the coach yet");
    assertEquals("Egret", browser().text("#coach"));
    browser().driver().navigate().refresh();
    browser().awaitText("#coach", "Egret");
    browser().awaitText("#where", address);
    browser().find("#described summary").click();
    browser().awaitText("#described", "Only the page that comes from the coach itself");
  }

  @Test
  void brokerThatIsNotThereIsTriedAgainAndTheAddressCanBeChanged() {
    browser().openFresh(stage().page());
    browser().find("#elsewhere summary").click();
    browser().find("[name=address]").sendKeys("ws://127.0.0.1:1/mqtt");
    signIn(Mosquitto.DRIVER, Mosquitto.password());
    browser().awaitText("#link", "No connection. Next try in");
    browser().find("#change").click();
    browser().find("[name=address]").clear();
    signIn(Mosquitto.DRIVER, Mosquitto.password());
    browser().awaitText("#link", "Live");
  }

  @Test
  void brokerLostAndBack() throws Exception {
    stage().signedIn(Mosquitto.DRIVER);
    browser().awaitText("#verdict", "Level enough");
    stage().broker().kill();
    browser().awaitText("#link", "No connection");
    browser().awaitText("#reading", "not current");
    assertTrue(browser().text("#lean").contains("Right side low"), "last known, shown as old");
    assertTrue(browser().text("#verdict").contains("not known"));
    stage().broker().startAgain();
    stage().coachAnew().parkedInOrder();
    browser().awaitText("#link", "Live");
    browser().awaitText("#verdict", "Level enough");
  }

  @Test
  void whatTheBrokerNoLongerHoldsIsNotShownAfterReconnecting() throws Exception {
    coach().put("$alert/fridge", "Fridge galley leans too much.");
    stage().signedIn(Mosquitto.DRIVER);
    browser().awaitText("#alerts", "Fridge galley leans too much.");
    stage().broker().kill();
    browser().awaitText("#link", "No connection");
    stage().broker().startAgain();
    stage().coachAnew().parkedInOrder();
    browser().find("#retry").click();
    browser().awaitText("#link", "Live");
    awaitGone("#alerts");
  }

  @Test
  void alertHeardBeforeTheLineBrokeIsShownAsWhatStoodThen() throws Exception {
    coach().put("$alert/settling", "The ground gives way.");
    stage().signedIn(Mosquitto.DRIVER);
    browser().awaitText("#well-words", "Something is wrong");
    assertTrue(browser().find("#alert-list button").isDisplayed());
    coach().put("$state", "lost");
    browser().awaitText("#alerts", "This stood when the coach was last heard.");
    assertFalse(browser().find("#alert-list button").isDisplayed(), "nobody would answer");
    coach().put("$state", "ready");
    browser().awaitText("#well-words", "Something is wrong");
    forget("$alert/settling");
    browser().awaitText("#well-words", "All is well");
  }

  private static void signIn(String user, String password) {
    for (String[] field : new String[][] {{"user", user}, {"password", password}}) {
      WebElement input = browser().find("[name=" + field[0] + "]");
      input.clear();
      input.sendKeys(field[1]);
    }
    browser().find("#sign-in-form button").click();
  }
}
