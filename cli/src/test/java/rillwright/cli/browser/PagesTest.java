package rillwright.cli.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rillwright.cli.examples.ExamplePages;

/**
 * The page of every command, as a browser shows it; with {@code -Drillwright.pages=true} on every
 * example.
 */
class PagesTest {
  /** Parts that stand out of the page sideways, or whose text is cut off. */
  private static final String CUT =
      """
      const page = document.documentElement;
      const cut = page.scrollWidth > page.clientWidth ? ['the page itself'] : [];
      for (const part of document.body.querySelectorAll('*:not(svg *)')) {
        const wide = part.scrollWidth > part.clientWidth + 1;
        const how = getComputedStyle(part);
        const scrolls = how.overflowX !== 'visible' && !part.matches('figure, :has(figure)');
        if (wide && scrolls && how.display !== 'inline') {
          cut.push(part.tagName + ' ' + part.textContent.slice(0, 60));
        }
      }
      return cut;
      """;

  /**
   * Texts too pale on their ground: WCAG 2.1, 1.4.3: 4.5 to 1, by its definition of contrast.
   * Pictures are drawn on white in any scheme and are tested where they are drawn.
   */
  private static final String PALE =
      """
      const rgb = text => text.match(/[0-9.]+/g).map(Number);
      const light = text => {
        const [r, g, b] = rgb(text).slice(0, 3).map(v => v / 255)
            .map(v => v <= 0.03928 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4));
        return 0.2126 * r + 0.7152 * g + 0.0722 * b;
      };
      const ground = part => {
        for (let p = part; p; p = p.parentElement) {
          const colour = getComputedStyle(p).backgroundColor;
          if ((rgb(colour)[3] ?? 1) > 0) return colour;
        }
        return 'rgb(255, 255, 255)';
      };
      const pale = [];
      for (const part of document.body.querySelectorAll('*:not(svg, svg *)')) {
        const says = [...part.childNodes].some(n => n.nodeType === 3 && n.textContent.trim());
        if (!says) continue;
        const [a, b] = [light(getComputedStyle(part).color), light(ground(part))];
        const contrast = (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
        if (contrast < 4.5) pale.push(contrast.toFixed(2) + ' ' + part.textContent.slice(0, 60));
      }
      return pale;
      """;

  private enum Screen {
    NARROW_PHONE(320, false, false),
    TABLET(800, false, false),
    DESKTOP(1280, true, false),
    /** Narrower than Letter within the same margins. */
    A4_WITHIN_ITS_MARGINS(673, false, true);

    private final int widthPx;
    private final boolean dark;
    private final boolean printed;

    Screen(int widthPx, boolean dark, boolean printed) {
      this.widthPx = widthPx;
      this.dark = dark;
      this.printed = printed;
    }
  }

  @TempDir private static Path folder;

  private static List<Browser> browsers = List.of();

  @BeforeAll
  static void open() {
    browsers = List.of(Browser.open());
  }

  @AfterAll
  static void close() {
    browsers.forEach(Browser::close);
  }

  static List<ExamplePages.Page> pages() throws IOException {
    return Boolean.getBoolean("rillwright.pages") ? ExamplePages.list() : ExamplePages.firsts();
  }

  /** So that a page with every trouble does not pass. */
  @Test
  void troublesAreSeen() throws IOException {
    Path page =
        Files.writeString(
            folder.resolve("trouble.html"),
            """
            <!doctype html>
            <body style="margin: 0; background: #fff">
            <p style="color: #999">pale</p>
            <p style="width: 50px; overflow: hidden; white-space: nowrap">longer than its place</p>
            <div style="width: 400px">wider than a phone</div>
            <img src="elsewhere.png">
            <script>console.error('complaint')</script>
            """);
    List<String> troubles = troublesOf(page, browsers.get(0));
    for (String seen :
        List.of(
            "cut off: P longer", "cut off: the page", "pale: 2.8", "elsewhere.png", "complaint")) {
      assertTrue(troubles.stream().anyMatch(text -> text.contains(seen)), seen + troubles);
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("pages")
  void isWholeReadableAndAsksForNothingElse(ExamplePages.Page page) throws IOException {
    Path file = Files.writeString(folder.resolve("page.html"), page.html());
    assertEquals(List.of(), troublesOf(file, browsers.get(0)));
  }

  /** What a page asks for besides itself, cuts off, shows too pale or complains about. */
  static List<String> troublesOf(Path page, Browser browser) {
    return troublesOf(page, browser, List.of(Screen.values()));
  }

  /** The same on a narrow phone alone. */
  static List<String> troublesOnAPhone(Path page, Browser browser) {
    return troublesOf(page, browser, List.of(Screen.NARROW_PHONE));
  }

  private static List<String> troublesOf(Path page, Browser browser, List<Screen> screens) {
    List<String> troubles = new ArrayList<>();
    browser.open(page).forEach(request -> troubles.add("asks for " + request));
    for (Screen screen : screens) {
      browser.show(screen.widthPx, screen.dark, screen.printed);
      browser.texts(CUT).forEach(part -> troubles.add(screen + " cut off: " + part));
      browser.texts(PALE).forEach(part -> troubles.add(screen + " pale: " + part));
    }
    troubles.addAll(browser.complaints());
    return troubles;
  }
}
