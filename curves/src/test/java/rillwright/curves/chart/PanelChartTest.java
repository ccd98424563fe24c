package rillwright.curves.chart;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import rillwright.curves.chart.content.Panel;
import rillwright.curves.chart.content.PanelChart;

class PanelChartTest {
  private static Panel.Curve parabola(String name, double factor) {
    return new Panel.Curve(
        name,
        IntStream.rangeClosed(0, 20)
            .mapToObj(i -> new Panel.Spot(i, factor * i * i - 30))
            .toList());
  }

  private static Panel panel(String across) {
    return new Panel(
        across,
        "Level, mm",
        List.of(parabola("pond", 0.2), parabola("chamber", 0.4)),
        List.of(new Panel.Mark(25, "overflow"), new Panel.Mark(-20, "sill")),
        List.of(new Panel.Mark(12, "pump off")),
        List.of(new Panel.Spot(12, 10)));
  }

  private static PanelChart chart(int columns, int panels) {
    return new PanelChart(
        "Demo < 40>",
        "Two stores",
        columns,
        IntStream.range(0, panels).mapToObj(i -> panel("Time, minutes")).toList());
  }

  @Test
  void pngIsAPictureOfItsSizeAndTheSameEachTime() throws IOException {
    for (int panels = 1; panels <= 4; panels++) {
      byte[] png = ChartWriter.png(chart(2, panels));
      BufferedImage image = ImageIO.read(new ByteArrayInputStream(png));
      assertEquals(1600, image.getWidth());
      assertEquals(1000, image.getHeight());
      assertArrayEquals(png, ChartWriter.png(chart(2, panels)));
    }
  }

  @Test
  void svgHoldsItsWordsAsText() {
    String svg = new String(ChartWriter.svg(chart(1, 2)), UTF_8);
    for (String words :
        List.of("Demo &lt; 40&gt;", "Level, mm", "overflow", "pump off", ">chamber<")) {
      assertTrue(svg.contains(words), words);
    }
    assertTrue(svg.contains("Curves: pond, chamber."), "in words too");
  }

  @Test
  void curvesOfANameAreNamedOnce() {
    assertEquals(List.of("pond", "chamber"), chart(1, 3).names());
  }

  @Test
  void whatCannotBeDrawnIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> new Panel.Spot(Double.NaN, 1));
    assertThrows(IllegalArgumentException.class, () -> new Panel.Mark(1.0 / 0, "sill"));
    assertThrows(IllegalArgumentException.class, () -> new Panel.Curve("one", List.of()));
    assertThrows(
        IllegalArgumentException.class,
        () -> new Panel("", "", List.of(), List.of(), List.of(), List.of()));
    assertThrows(IllegalArgumentException.class, () -> new PanelChart("", "", 1, List.of()));
  }
}
