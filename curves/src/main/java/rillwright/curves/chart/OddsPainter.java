package rillwright.curves.chart;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.stream.Stream;
import rillwright.curves.chart.Words.Anchor;
import rillwright.curves.chart.content.OddsChart;
import rillwright.curves.chart.layout.TextBlock;

/** Paints odds: the curves of chance on the left, what the spread comes from on the right. */
final class OddsPainter implements Painting {
  private static final double MARGIN = 44;
  private static final double TOP = 34;
  private static final double ABOVE_PLOT = 66;
  private static final double BELOW_PLOT = 92;
  private static final double BARS_WIDTH = 470;
  private static final double BETWEEN = 60;
  private static final int MOST_LINES = 2;

  private final OddsChart chart;

  OddsPainter(OddsChart chart) {
    this.chart = chart;
  }

  @Override
  public Description description() {
    return Description.of(
        chart.title(),
        Stream.of(
                Stream.of(chart.caption(), "Chance of at least a flow against the flow"),
                chart.falls().stream()
                    .flatMap(fall -> fall.wish().stream())
                    .map(wish -> String.join(", ", wish.labelLines())),
                chart.shares().stream().map(share -> share.name() + ": " + share.label()))
            .flatMap(sentences -> sentences));
  }

  @Override
  public void paint(Graphics2D g) {
    g.setColor(Ink.PAPER);
    g.fill(new Rectangle2D.Double(0, 0, WIDTH, HEIGHT));
    double wide = WIDTH - 2 * MARGIN;
    TextBlock title = TextBlock.wrapped(chart.title(), Ink.TITLE, wide, MOST_LINES);
    TextBlock caption = TextBlock.wrapped(chart.caption(), Ink.CAPTION, wide, MOST_LINES);
    Words.write(g, title, MARGIN, TOP, Anchor.START, Ink.TEXT);
    double captionTop = TOP + title.height() + 4;
    Words.write(g, caption, MARGIN, captionTop, Anchor.START, Ink.SOFT_TEXT);
    boolean hasBars = !chart.shares().isEmpty();
    Legend legend = new Legend(wide);
    ChancePlot.fill(legend, chart);
    double plotTop = captionTop + caption.height() + ABOVE_PLOT;
    double legendTop = HEIGHT - MARGIN / 2 - legend.height();
    double bottom = legendTop - BELOW_PLOT;
    double right = WIDTH - MARGIN - (hasBars ? BARS_WIDTH + BETWEEN : 0);
    new ChancePlot(chart, new Rectangle2D.Double(MARGIN, plotTop, right - MARGIN, bottom - plotTop))
        .paint(g);
    if (hasBars) {
      double left = WIDTH - MARGIN - BARS_WIDTH;
      heading(g, "What the spread comes from", left, plotTop - 50);
      new ShareBars(chart.shares())
          .paint(g, new Rectangle2D.Double(left, plotTop, BARS_WIDTH, bottom - plotTop));
    }
    legend.paint(g, MARGIN, legendTop);
  }

  private static void heading(Graphics2D g, String text, double x, double y) {
    TextBlock words = TextBlock.ofLines(List.of(text), Ink.AXIS_TITLE, BARS_WIDTH);
    Words.write(g, words, x, y, Anchor.START, Ink.TEXT);
  }
}
