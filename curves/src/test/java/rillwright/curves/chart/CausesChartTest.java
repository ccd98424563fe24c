package rillwright.curves.chart;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import rillwright.curves.chart.content.CausesChart;
import rillwright.curves.chart.content.CausesChart.Band;
import rillwright.curves.chart.content.CausesChart.CauseBar;
import rillwright.curves.chart.content.CausesChart.Mark;
import rillwright.curves.chart.content.CausesChart.Strip;

class CausesChartTest {

  private static CausesChart chart(List<Strip> strips) {
    return new CausesChart(
        "Demo 40",
        "Why it is weak, by one reading",
        List.of(
            new CauseBar("A", "pump worn", 0.6, "60 %"),
            new CauseBar("B", "valve part shut <2>", 0.4, "40 %")),
        strips);
  }

  private static CausesChart chart() {
    return chart(
        List.of(
            new Strip(
                "Gauge G1",
                Optional.of(new Band(30_000, 1700, "4.4 psi")),
                Optional.of(new Mark("", 40_000, "5.8 psi")),
                List.of(new Mark("A", 30_500, "4.4 psi"), new Mark("B", 55_000, "8 psi"))),
            new Strip("Level", Optional.empty(), Optional.empty(), List.of())));
  }

  @Test
  void isAPictureThatDiffersFromOneWithoutReadings() throws IOException {
    byte[] png = ChartWriter.png(chart());
    BufferedImage image = ImageIO.read(new ByteArrayInputStream(png));
    assertEquals(1600, image.getWidth());
    assertEquals(1000, image.getHeight());
    BufferedImage without =
        ImageIO.read(new ByteArrayInputStream(ChartWriter.png(chart(List.of()))));
    assertTrue(ink(image) > ink(without) + 2000);
    assertArrayEquals(png, ChartWriter.png(chart()), "the same chart, the same bytes");
  }

  /** Pixels to the right of the bars that are not paper. */
  private static int ink(BufferedImage image) {
    int count = 0;
    for (int x = 650; x < image.getWidth(); x++) {
      for (int y = 120; y < 900; y++) {
        count += (image.getRGB(x, y) & 0xFFFFFF) == 0xFFFFFF ? 0 : 1;
      }
    }
    return count;
  }

  @Test
  void saysInWordsWhatItShows() {
    String svg = new String(ChartWriter.svg(chart()), StandardCharsets.UTF_8);
    assertTrue(
        svg.contains("Gauge G1, read 4.4 psi, by the file 5.8 psi, by A 4.4 psi, by B 8 psi."),
        svg);
    assertTrue(svg.contains("valve part shut &lt;2&gt;"), svg);
  }

  @Test
  void refusesNothingToShowAndNumbersThatAreNone() {
    assertThrows(
        IllegalArgumentException.class, () -> new CausesChart("", "", List.of(), List.of()));
    assertThrows(IllegalArgumentException.class, () -> new CauseBar("A", "", Double.NaN, ""));
  }
}
