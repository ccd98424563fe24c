package rillwright.cli.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rillwright.cli.page.OpenPage;

/**
 * What a redraw takes from the hand's movement to the drawn page, as its row of the table in
 * DEVELOPERS.md: {@code -Drillwright.redraws=400}. Wall time in the browser, over HTTP, so what
 * else runs on the machine counts: its load is printed. The build asks for a few only and holds no
 * time to anything.
 */
class LiveRedrawTest extends LivePage {
  private static final int REDRAWS = Integer.getInteger("rillwright.redraws", 4);

  /**
   * Drags a handle from choice to choice; the next one once the page with the last has been
   * painted: a message sent in the frame's callback arrives after it.
   */
  private static final String DRAGGED =
      """
      const done = arguments[1];
      const range = document.querySelector('.drag[data-at$=".pipe.size"] input');
      const times = [];
      const painted = () => new Promise(then => requestAnimationFrame(() => {
        const channel = new MessageChannel();
        channel.port1.onmessage = then;
        channel.port2.postMessage('');
      }));
      const replaced = () => new Promise(then => {
        const watch = new MutationObserver(() => {
          watch.disconnect();
          then();
        });
        watch.observe(document.getElementById('findings').parentElement, {childList: true});
      });
      (async () => {
        for (let i = 0; i < arguments[0]; i++) {
          const drawn = replaced();
          const began = performance.now();
          range.value = (Number(range.value) + 1) % (Number(range.max) + 1);
          range.dispatchEvent(new Event('input', {bubbles: true}));
          await drawn;
          await painted();
          times.push((performance.now() - began).toFixed(2));
        }
        done(times);
      })();
      """;

  @TempDir private Path other;

  @ParameterizedTest(name = "{0}")
  @ValueSource(
      strings = {
        "small-pond/pond.yaml",
        "twin-falls/falls.yaml",
        "weak-fall/fall.yaml",
        "long-stream/mended.yaml",
        "header-pond/troughs.yaml"
      })
  void aDraggedSizeIsPainted(String example) throws IOException {
    try (OpenPage dragged = OpenPage.ofExample(example, other)) {
      visit(dragged);
      double[] ms =
          browser.later(DRAGGED, REDRAWS).stream().mapToDouble(Double::parseDouble).toArray();
      assertEquals(REDRAWS, ms.length);
      double[] warm = Arrays.copyOfRange(ms, REDRAWS / 2, REDRAWS);
      Arrays.sort(warm);
      assertTrue(warm[0] > 0);
      System.out.printf(
          Locale.ROOT,
          "| %s | %.0f | %.0f | %.0f | %.1f |%n",
          example,
          ms[0],
          warm[warm.length / 2],
          warm[(int) (0.95 * (warm.length - 1))],
          ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage());
      assertEquals(List.of(), dragged.defects());
      browser.open(java.net.URI.create("about:blank"));
    }
  }
}
