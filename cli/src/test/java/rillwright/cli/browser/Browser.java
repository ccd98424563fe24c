package rillwright.cli.browser;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.logging.Level;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Assumptions;
import org.openqa.selenium.By;
import org.openqa.selenium.StaleElementReferenceException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;

/** A browser without a window. Where none is installed the test that asks for it is left out. */
final class Browser implements AutoCloseable {
  private static final Path CHROMIUM = Path.of("/usr/bin/chromium");
  private static final Path DRIVER = Path.of("/usr/bin/chromedriver");

  private static final Pattern REQUEST =
      Pattern.compile("Network\\.requestWillBeSent\".*?\"request\":\\{.*?\"url\":\"([^\"]*)\"");

  private static final Duration PATIENCE = Duration.ofSeconds(20);
  private static final Duration SCRIPT_PATIENCE = Duration.ofMinutes(3);
  private static final long POLL_MS = 20;

  private final ChromeDriver driver;

  private Browser(ChromeDriver driver) {
    this.driver = driver;
  }

  static Browser open() {
    Assumptions.assumeTrue(
        Files.isExecutable(CHROMIUM) && Files.isExecutable(DRIVER),
        "left out: Debian's packages chromium and chromium-driver are not installed");
    ChromeOptions options = new ChromeOptions();
    options.setBinary(CHROMIUM.toString());
    options.addArguments(
        "--headless",
        "--no-sandbox",
        "--disable-gpu",
        "--disable-quic",
        "--no-first-run",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-sync");
    LoggingPreferences logs = new LoggingPreferences();
    logs.enable(LogType.BROWSER, Level.ALL);
    logs.enable(LogType.PERFORMANCE, Level.ALL);
    options.setCapability("goog:loggingPrefs", logs);
    ChromeDriverService service =
        new ChromeDriverService.Builder()
            .usingDriverExecutable(new File(DRIVER.toString()))
            .build();
    ChromeDriver driver = new ChromeDriver(service, options);
    driver.manage().timeouts().scriptTimeout(SCRIPT_PATIENCE);
    return new Browser(driver);
  }

  /** Opens a page; the addresses that are asked for besides it. */
  List<String> open(Path page) {
    String address = page.toUri().toString();
    driver.get(address);
    return entries(LogType.PERFORMANCE).stream()
        .flatMap(text -> REQUEST.matcher(text).results())
        .map(request -> request.group(1))
        .filter(asked -> !asked.equals(address))
        .toList();
  }

  /** Opens a page that is served. */
  void open(URI page) {
    driver.get(page.toString());
  }

  /** What a script returns: a text. */
  String text(String script, Object... arguments) {
    return (String) driver.executeScript(script, arguments);
  }

  /** Waits until a script returns what is true; fails with what is on the page if it never does. */
  void await(String script, Object... arguments) {
    long end = System.nanoTime() + PATIENCE.toNanos();
    while (!Boolean.TRUE.equals(driver.executeScript("return " + script, arguments))) {
      if (System.nanoTime() > end) {
        Assertions.fail(script + " " + List.of(arguments) + "; the page says: " + said());
      }
      pause();
    }
  }

  private static void pause() {
    try {
      Thread.sleep(POLL_MS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private String said() {
    return text("return document.body.innerText");
  }

  /** The first element that a selector finds. */
  WebElement find(String selector) {
    return driver.findElement(By.cssSelector(selector));
  }

  /** Clicks the first element that a selector finds. */
  void click(String selector) {
    act(() -> find(selector), WebElement::click);
  }

  /** Types into the first element that a selector finds. */
  void type(String selector, CharSequence... keys) {
    act(() -> find(selector), it -> it.sendKeys(keys));
  }

  /** Presses keys where the focus is. */
  void press(CharSequence... keys) {
    act(() -> driver.switchTo().activeElement(), it -> it.sendKeys(keys));
  }

  /** Finds an element and acts on it; again where the page is drawn anew in between. */
  private static void act(Supplier<WebElement> found, Consumer<WebElement> act) {
    long end = System.nanoTime() + PATIENCE.toNanos();
    while (true) {
      try {
        act.accept(found.get());
        return;
      } catch (StaleElementReferenceException drawnAnew) {
        if (System.nanoTime() > end) {
          throw drawnAnew;
        }
        pause();
      }
    }
  }

  /** What the accessibility checker axe finds: rule, help, elements. */
  @SuppressWarnings("unchecked")
  List<String> inaccessible() throws IOException {
    try (InputStream axe = Browser.class.getResourceAsStream("/axe.min.js")) {
      driver.executeScript(new String(axe.readAllBytes(), StandardCharsets.UTF_8));
    }
    return (List<String>)
        driver.executeAsyncScript(
            """
            const done = arguments[0];
            axe.run(document, {resultTypes: ['violations']}).then(found => done(found.violations.map(it =>
                it.id + ': ' + it.help + ': ' + it.nodes.map(n => n.html).join(' '))));
            """);
  }

  /** Shows the page at a width in CSS pixels, light or dark, on a screen or as it is printed. */
  void show(int widthPx, boolean dark, boolean printed) {
    driver.executeCdpCommand(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", widthPx, "height", 900, "deviceScaleFactor", 1, "mobile", false));
    driver.executeCdpCommand(
        "Emulation.setEmulatedMedia",
        Map.of(
            "media",
            printed ? "print" : "screen",
            "features",
            List.of(Map.of("name", "prefers-color-scheme", "value", dark ? "dark" : "light"))));
  }

  /**
   * The page as PDF on paper of this size in mm, unless it asks for its own; by the style of paper,
   * which a style of screens that was shown before would keep out.
   */
  byte[] print(double widthMm, double heightMm) {
    driver.executeCdpCommand("Emulation.setEmulatedMedia", Map.of("media", "print"));
    Map<String, Object> answer =
        driver.executeCdpCommand(
            "Page.printToPDF",
            Map.of(
                "paperWidth",
                widthMm / 25.4,
                "paperHeight",
                heightMm / 25.4,
                "preferCSSPageSize",
                true));
    return Base64.getDecoder().decode((String) answer.get("data"));
  }

  /** What a script returns: a list of texts. */
  @SuppressWarnings("unchecked")
  List<String> texts(String script) {
    return (List<String>) driver.executeScript(script);
  }

  /** What a script hands over later, to the last of its arguments: a list of texts. */
  @SuppressWarnings("unchecked")
  List<String> later(String script, Object... arguments) {
    return (List<String>) driver.executeAsyncScript(script, arguments);
  }

  /** What the browser complains about since it was last asked. */
  List<String> complaints() {
    return entries(LogType.BROWSER);
  }

  private List<String> entries(String log) {
    return driver.manage().logs().get(log).getAll().stream().map(LogEntry::toString).toList();
  }

  @Override
  public void close() {
    driver.quit();
  }
}
