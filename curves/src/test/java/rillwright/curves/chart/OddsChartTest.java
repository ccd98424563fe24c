package rillwright.curves.chart;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import rillwright.curves.chart.content.OddsChart;
import rillwright.curves.chart.content.OddsChart.ChanceCurve;
import rillwright.curves.chart.content.OddsChart.Share;
import rillwright.curves.chart.content.OddsChart.Target;
import rillwright.curves.unit.Unit;

class OddsChartTest {
  private static ChanceCurve fall(String name, double from, double to, Optional<Target> target) {
    return new ChanceCurve(
        name,
        IntStream.rangeClosed(0, 100).mapToObj(i -> from + (to - from) * i / 100).toList(),
        target);
  }

  private static Optional<Target> target(double flow, double chance, String label) {
    return Optional.of(new Target(flow, chance, List.of(label)));
  }

  private static OddsChart chart(List<Share> shares) {
    return new OddsChart(
        "Demo < 40>",
        "many samples",
        Unit.GALLON_PER_HOUR,
        List.of(
            fall("low fall", 1e-3, 2e-3, target(1.4e-3, 0.6, "target of the low fall")),
            fall("always dry", 0, 0, target(1e-3, 0, "never")),
            fall("no target", 1.5e-3, 4e-3, Optional.empty())),
        shares);
  }

  private static List<Share> shares(int count) {
    return IntStream.range(0, count)
        .mapToObj(i -> new Share("unknown number " + i, 1.0 / (i + 1), "some"))
        .toList();
  }

  @Test
  void pngIsAPictureOfItsSizeAndTheSameEachTime() throws IOException {
    for (int bars : List.of(0, 1, 10)) {
      byte[] png = ChartWriter.png(chart(shares(bars)));
      BufferedImage image = ImageIO.read(new ByteArrayInputStream(png));
      assertEquals(1600, image.getWidth());
      assertEquals(1000, image.getHeight());
      assertArrayEquals(png, ChartWriter.png(chart(shares(bars))));
    }
  }

  @Test
  void svgHoldsItsWordsAsText() {
    String svg = new String(ChartWriter.svg(chart(shares(3))), UTF_8);
    for (String words :
        List.of(
            "Demo &lt; 40&gt;",
            "Chance of at least this flow",
            "Flow, gph",
            ">low fall<",
            ">unknown number 2<",
            ">target of the low fall<")) {
      assertTrue(svg.contains(words), words);
    }
  }

  @Test
  void withoutSharesThereAreNoBars() {
    String svg = new String(ChartWriter.svg(chart(List.of())), UTF_8);
    assertFalse(svg.contains("Share of variance"));
  }

  @Test
  void whatCannotBeDrawnIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> fall("x", 0, 1.0 / 0, Optional.empty()));
    assertThrows(IllegalArgumentException.class, () -> new Share("x", Double.NaN, ""));
    assertThrows(
        IllegalArgumentException.class,
        () -> new ChanceCurve("x", List.of(1.0, 2.0), Optional.empty()));
    assertThrows(
        IllegalArgumentException.class,
        () -> new OddsChart("", "", Unit.GALLON_PER_HOUR, List.of(), List.of()));
    assertThrows(
        IllegalArgumentException.class,
        () ->
            new OddsChart(
                "", "", Unit.METRE, List.of(fall("x", 0, 1, Optional.empty())), List.of()));
  }
}
