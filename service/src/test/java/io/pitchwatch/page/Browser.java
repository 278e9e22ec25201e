package io.pitchwatch.page;

import java.io.File;
import java.net.URI;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.concurrent.locks.LockSupport;
import org.jspecify.annotations.Nullable;
import org.openqa.selenium.By;
import org.openqa.selenium.StaleElementReferenceException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;

/** A real Chromium without a window. */
final class Browser implements AutoCloseable {

  static final String CHROMIUM = "/usr/bin/chromium";
  static final String DRIVER = "/usr/bin/chromedriver";

  private static final Duration WAIT = Duration.ofSeconds(15);
  private static final Duration POLL = Duration.ofMillis(50);

  private final ChromeDriver driver;

  Browser(Path profile) {
    ChromeOptions options = new ChromeOptions();
    options.setBinary(CHROMIUM);
    options.addArguments(
        "--headless=new",
        "--no-sandbox",
        "--disable-gpu",
        "--disable-quic",
        "--no-first-run",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-sync",
        "--hide-scrollbars",
        "--user-data-dir=" + profile);
    ChromeDriverService service =
        new ChromeDriverService.Builder().usingDriverExecutable(new File(DRIVER)).build();
    driver = new ChromeDriver(service, options);
  }

  ChromeDriver driver() {
    return driver;
  }

  /** Opens the address with nothing remembered from before. */
  void openFresh(URI address) {
    driver.get(address.resolve("/icon.svg").toString());
    driver.executeScript("localStorage.clear(); sessionStorage.clear()");
    driver.get(address.toString());
  }

  /** A screen of that many CSS pixels. */
  void size(int width, int height) {
    driver.executeCdpCommand(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", width < 600));
  }

  /** What the device prefers, such as a dark look. */
  void prefers(String feature, String value) {
    driver.executeCdpCommand(
        "Emulation.setEmulatedMedia",
        Map.of("features", List.of(Map.of("name", feature, "value", value))));
  }

  WebElement find(String css) {
    return driver.findElement(By.cssSelector(css));
  }

  /** Presses a button, in the middle of the screen where nothing covers it. */
  void press(String css) {
    WebElement button = find(css);
    driver.executeScript("arguments[0].scrollIntoView({block: 'center'})", button);
    button.click();
  }

  /** The text a reader sees there; empty when it is hidden. */
  String text(String css) {
    return find(css).getText();
  }

  @Nullable Object script(String source, Object... arguments) {
    return driver.executeScript(source, arguments);
  }

  /** Runs a script that returns a list of numbers. */
  List<Double> numbers(String source) {
    if (!(driver.executeScript(source) instanceof List<?> found)) {
      throw new AssertionError("no list from " + source);
    }
    return found.stream().map(each -> ((Number) each).doubleValue()).toList();
  }

  /** How far the page reaches beyond the screen's edge, in CSS pixels. */
  int sidewaysScroll() {
    return numbers(
            "const page = document.documentElement; return [page.scrollWidth - page.clientWidth]")
        .get(0)
        .intValue();
  }

  /** Waits until the text seen at a place holds the words. */
  void awaitText(String css, String words) {
    wait("\"" + words + "\" at " + css, () -> text(css).contains(words), () -> text(css));
  }

  /** Waits until something holds, and says what was there instead when it never does. */
  void wait(String wanted, Condition condition, Found found) {
    long end = System.nanoTime() + WAIT.toNanos();
    while (!holdsNow(condition)) {
      if (System.nanoTime() - end > 0) {
        throw new AssertionError("waited for " + wanted + "; there is: " + found.now());
      }
      LockSupport.parkNanos(POLL.toNanos());
    }
  }

  private static boolean holdsNow(Condition condition) {
    try {
      return condition.holds();
    } catch (StaleElementReferenceException redrawn) {
      return false;
    }
  }

  @Override
  public void close() {
    driver.quit();
  }

  /** Something that will come to hold. */
  interface Condition {
    boolean holds();
  }

  /** What is there while it does not. */
  interface Found {
    String now();
  }
}
