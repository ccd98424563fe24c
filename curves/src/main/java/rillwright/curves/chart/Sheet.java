package rillwright.curves.chart;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import rillwright.curves.chart.content.Chart;
import rillwright.curves.chart.layout.TextBlock;
import rillwright.curves.chart.mark.Ink;
import rillwright.curves.chart.mark.Words;
import rillwright.curves.chart.mark.Words.Anchor;
import rillwright.curves.chart.svg.Painting;

/**
 * The paper of a picture: title and caption at its head, a legend at its foot, room between.
 *
 * @param legend with all its entries
 * @param top of the room
 * @param bottom of the room, where the legend begins
 */
record Sheet(Legend legend, double top, double bottom) {
  static final double MARGIN = 44;

  /** Between the margins. */
  static final double WIDE = Painting.WIDTH - 2 * MARGIN;

  private static final double TITLE_TOP = 34;
  private static final double BELOW_TITLE = 4;
  private static final int MOST_LINES = 2;

  /** Clears the paper and writes the head. */
  static Sheet begin(Graphics2D g, Chart chart, Legend legend, int height) {
    g.setColor(Ink.PAPER);
    g.fill(new Rectangle2D.Double(0, 0, Painting.WIDTH, height));
    TextBlock title = title(chart);
    TextBlock caption = caption(chart);
    Words.write(g, title, MARGIN, TITLE_TOP, Anchor.START, Ink.TEXT);
    double captionTop = TITLE_TOP + title.height() + BELOW_TITLE;
    Words.write(g, caption, MARGIN, captionTop, Anchor.START, Ink.SOFT_TEXT);
    return new Sheet(legend, captionTop + caption.height(), height - MARGIN / 2 - legend.height());
  }

  private static TextBlock title(Chart chart) {
    return TextBlock.wrapped(chart.title(), Ink.TITLE, WIDE, MOST_LINES);
  }

  private static TextBlock caption(Chart chart) {
    return TextBlock.wrapped(chart.caption(), Ink.CAPTION, WIDE, MOST_LINES);
  }

  /** What the head of a picture takes. */
  static double headHeight(Chart chart) {
    return TITLE_TOP + title(chart).height() + BELOW_TITLE + caption(chart).height();
  }

  /** Draws the legend, over whatever stands in the room. */
  void end(Graphics2D g) {
    legend.paint(g, MARGIN, bottom);
  }
}
