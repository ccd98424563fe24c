package rillwright.cli.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rillwright.cli.page.web.Asked;
import rillwright.cli.page.web.Reply;

/**
 * What a redraw takes while something is dragged, as its row of the table in DEVELOPERS.md: {@code
 * -Drillwright.redraws=400}. Processor time of the one thread that makes it, so that what else runs
 * does not count; the build asks for a few only and holds no time to anything.
 */
class RedrawTableTest {
  private static final int REDRAWS = Integer.getInteger("rillwright.redraws", 3);
  private static final List<String> DRAGGED = List.of("2 in", "3 in", "2-1/2 in", "1-1/2 in");
  private static final List<String> METRIC = List.of("63 mm", "75 mm", "90 mm", "50 mm");

  @TempDir private Path folder;

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "small-pond/pond.yaml, lines.supply.pipe.size",
    "twin-falls/falls.yaml, lines.supply.pipe.size",
    "weak-fall/fall.yaml, lines.supply.pipe.size",
    "long-stream/stream.yaml, lines.supply.pipe.size"
  })
  void aDraggedSizeIsRedrawn(String example, String address) throws IOException {
    try (OpenPage page = OpenPage.ofExample(example, folder)) {
      PageAnswers answers = PageAnswers.open(page.file(), page.defects()::add);
      List<String> sizes = example.startsWith("long") ? METRIC : DRAGGED;
      double[] ms = new double[REDRAWS];
      for (int i = 0; i < REDRAWS; i++) {
        String size = sizes.get(i % sizes.size());
        Asked asked =
            new Asked(
                Asked.Method.POST, "try", Map.of("at", address, "value", size, "width", "600"));
        long began = processorNs();
        Reply reply = answers.apply(asked);
        ms[i] = (processorNs() - began) / 1e6;
        assertEquals(
            List.of("drawing", "falls", "changed", "curves", "findings"), pieces(reply.text()));
      }
      double[] warm = Arrays.copyOfRange(ms, REDRAWS / 2, REDRAWS);
      Arrays.sort(warm);
      System.out.printf(
          Locale.ROOT,
          "| %s | %.0f | %.0f | %.0f |%n",
          example,
          ms[0],
          warm[warm.length / 2],
          warm[(int) (0.95 * (warm.length - 1))]);
      assertEquals(List.of(), page.defects());
    }
  }

  private static long processorNs() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }

  private static List<String> pieces(String html) {
    return Pattern.compile("<section id=\"([a-z]+)\"")
        .matcher(html)
        .results()
        .map(it -> it.group(1))
        .toList();
  }
}
