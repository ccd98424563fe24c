package rillwright.curves.chart;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.ImageIO;
import javax.imageio.stream.ImageOutputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;
import rillwright.curves.chart.content.BandChart;
import rillwright.curves.chart.content.CausesChart;
import rillwright.curves.chart.content.Chart;
import rillwright.curves.chart.content.OddsChart;
import rillwright.curves.chart.content.OperatingChart;
import rillwright.curves.chart.content.PanelChart;
import rillwright.curves.chart.content.SectionChart;
import rillwright.curves.chart.content.SketchChart;
import rillwright.curves.chart.svg.Painting;
import rillwright.curves.chart.svg.SvgFile;

/** Draws charts as the bytes of a file; the same chart gives the same bytes. */
public final class ChartWriter {
  private ChartWriter() {}

  /** A PNG of 1600 by 1000 pixels, higher where plots stand in more than two rows. */
  public static byte[] png(Chart chart) {
    Painting painting = painting(chart);
    BufferedImage image =
        new BufferedImage(Painting.WIDTH, painting.height(), BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    g.setRenderingHint(
        RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    painting.paint(g);
    g.dispose();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ImageOutputStream inMemory = new MemoryCacheImageOutputStream(bytes)) {
      if (!ImageIO.write(image, "png", inMemory)) {
        throw new IllegalStateException("this Java cannot write PNG");
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  /** The same picture as SVG, its words as text, with a title and a description in it. */
  public static byte[] svg(Chart chart) {
    return SvgFile.of(painting(chart));
  }

  private static Painting painting(Chart chart) {
    if (chart instanceof OperatingChart operating) {
      return new ChartPainter(operating);
    } else if (chart instanceof BandChart bands) {
      return new BandPainter(bands);
    } else if (chart instanceof OddsChart odds) {
      return new OddsPainter(odds);
    } else if (chart instanceof PanelChart panels) {
      return new PanelPainter(panels);
    } else if (chart instanceof CausesChart causes) {
      return new CausesPainter(causes);
    } else if (chart instanceof SectionChart section) {
      return new SectionPainter(section);
    } else if (chart instanceof SketchChart sketch) {
      return new SketchPainter(sketch);
    }
    throw new IllegalArgumentException("no painter for " + chart.getClass());
  }
}
