package rillwright.cli.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import rillwright.cli.page.OpenPage;

/** The live page on every screen: nothing cut off, and axe finds nothing. */
class LiveLooksTest extends LivePage {
  private static final String SIDEWAYS =
      "document.documentElement.scrollWidth <= document.documentElement.clientWidth";

  /** Words of pictures in answers are 11 px at least; what gets too wide moves in its own box. */
  private static final String READABLE =
      """
      [...document.querySelectorAll('figure[tabindex="0"] svg')].every(svg =>
          [...svg.querySelectorAll('text')].every(text =>
              parseFloat(getComputedStyle(text).fontSize)
                  * svg.getBoundingClientRect().width / svg.viewBox.baseVal.width > 10.9))
      """;

  @Test
  void aJobIsWholeAndAccessibleOnPhoneAndDesktop() throws IOException {
    openAll();
    ask("solve");
    ask("pipes");
    ask("weak");
    openAll();
    set("points.high fall.crest", "60");
    browser.await("document.querySelector('.fault') !== null");
    look();
  }

  @Test
  void aNewJobIsWholeAndAccessibleOnPhoneAndDesktop() throws IOException {
    try (OpenPage start = OpenPage.of(folder.resolve("new.yaml"))) {
      visit(start);
      openAll();
      look();
      leave();
    }
  }

  private void look() throws IOException {
    for (int width : List.of(320, 390, 1280)) {
      for (boolean dark : List.of(false, true)) {
        browser.show(width, dark, false);
        browser.await(SIDEWAYS);
        browser.await(READABLE);
        // names and roles are the same in light and dark, colours at every width
        if (width == (dark ? 1280 : 320)) {
          assertEquals(List.of(), browser.inaccessible(), width + " px, dark " + dark);
        }
      }
    }
  }
}
