package rillwright.curves.chart;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import rillwright.curves.chart.content.BandChart;
import rillwright.curves.chart.content.BandChart.BandCurve;
import rillwright.curves.chart.content.BandChart.Spot;
import rillwright.curves.chart.content.CurvePoint;
import rillwright.curves.unit.Unit;

/** Curves with a band over readings; the curve is invented. */
class BandChartTest {
  private static List<CurvePoint> curve(double shutOffM) {
    return IntStream.rangeClosed(0, 10)
        .mapToObj(i -> new CurvePoint(i * 3e-4, shutOffM * (1 - i * i / 100.0)))
        .toList();
  }

  private static BandChart chart(double halfBandM, List<Spot> spots) {
    return new BandChart(
        "Demo 40",
        "What is left of it",
        Unit.CUBIC_METRE_PER_HOUR,
        Unit.METRE,
        List.of(
            new BandCurve(
                "old <pump>", curve(8 - halfBandM), curve(8), curve(8 + halfBandM), spots)));
  }

  private static final Spot READ =
      new Spot(new CurvePoint(0.0015, 6.2), 1e-4, 0.3, true, List.of("valve at 30 %", "6.2 m"));

  private static final Spot HALF_READ =
      new Spot(new CurvePoint(0.002, 4.4), 0, 0.3, false, List.of("running", "4.4 m"));

  private static int grey(BufferedImage image) {
    int count = 0;
    for (int x = 100; x < image.getWidth() - 60; x++) {
      for (int y = 150; y < 850; y++) {
        Color color = new Color(image.getRGB(x, y));
        boolean isGrey = color.getRed() == color.getBlue() && color.getRed() == color.getGreen();
        count += isGrey && color.getRed() > 190 && color.getRed() < 250 ? 1 : 0;
      }
    }
    return count;
  }

  private static BufferedImage picture(BandChart chart) throws IOException {
    return ImageIO.read(new ByteArrayInputStream(ChartWriter.png(chart)));
  }

  @Test
  void aWiderBandIsMoreGrey() throws IOException {
    BandChart wide = chart(1.5, List.of(READ));
    assertTrue(grey(picture(wide)) > grey(picture(chart(0.1, List.of(READ)))) + 50_000);
    assertEquals(1600, picture(wide).getWidth());
    assertArrayEquals(ChartWriter.png(wide), ChartWriter.png(wide), "the same chart, its bytes");
  }

  @Test
  void saysInWordsWhatItShowsAndWhichFlowsWereNotRead() {
    String both =
        new String(ChartWriter.svg(chart(1, List.of(READ, HALF_READ))), StandardCharsets.UTF_8);
    assertTrue(both.contains("valve at 30 %, 6.2 m. running, 4.4 m."), both);
    assertTrue(both.contains("head read, flow as expected"), both);
    assertTrue(both.contains("old &lt;pump&gt;"), both);
    String one = new String(ChartWriter.svg(chart(1, List.of(READ))), StandardCharsets.UTF_8);
    assertTrue(!one.contains("flow as expected"), one);
  }

  @Test
  void refusesABandOfOneEdge() {
    assertThrows(
        IllegalArgumentException.class,
        () -> new BandCurve("", curve(1).subList(0, 3), curve(1), curve(2), List.of()));
    assertThrows(
        IllegalArgumentException.class,
        () -> new BandChart("", "", Unit.CUBIC_METRE_PER_HOUR, Unit.METRE, List.of()));
    assertThrows(
        IllegalArgumentException.class,
        () -> new Spot(new CurvePoint(0, 1), Double.NaN, 0, true, List.of()));
  }
}
