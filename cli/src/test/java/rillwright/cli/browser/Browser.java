package rillwright.cli.browser;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.logging.Level;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Assumptions;
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
    return new Browser(new ChromeDriver(service, options));
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

  /** The page as PDF on paper of this size in mm, unless it asks for its own. */
  byte[] print(double widthMm, double heightMm) {
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
