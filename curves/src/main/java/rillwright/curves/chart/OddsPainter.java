package rillwright.curves.chart;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.stream.Stream;
import rillwright.curves.chart.content.OddsChart;
import rillwright.curves.chart.mark.Words;
import rillwright.curves.chart.svg.Description;
import rillwright.curves.chart.svg.Painting;

/** Paints odds: the curves of chance on the left, the shares of variance on the right. */
final class OddsPainter implements Painting {
  private static final double ABOVE_PLOT = 66;
  private static final double BELOW_PLOT = 92;
  private static final double BARS_WIDTH = 470;
  private static final double BETWEEN = 60;

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
                    .flatMap(fall -> fall.target().stream())
                    .map(target -> String.join(", ", target.labelLines())),
                chart.shares().stream().map(share -> share.name() + ": " + share.label()))
            .flatMap(sentences -> sentences));
  }

  @Override
  public void paint(Graphics2D g) {
    boolean hasBars = !chart.shares().isEmpty();
    Legend legend = new Legend(Sheet.WIDE);
    ChancePlot.fill(legend, chart);
    Sheet sheet = Sheet.begin(g, chart, legend, height());
    double plotTop = sheet.top() + ABOVE_PLOT;
    double bottom = sheet.bottom() - BELOW_PLOT;
    double right = WIDTH - Sheet.MARGIN - (hasBars ? BARS_WIDTH + BETWEEN : 0);
    new ChancePlot(
            chart,
            new Rectangle2D.Double(Sheet.MARGIN, plotTop, right - Sheet.MARGIN, bottom - plotTop))
        .paint(g);
    if (hasBars) {
      double left = WIDTH - Sheet.MARGIN - BARS_WIDTH;
      Words.heading(g, "Share of variance", left, plotTop - 50);
      Bars.ofShares(chart.shares())
          .paint(g, new Rectangle2D.Double(left, plotTop, BARS_WIDTH, bottom - plotTop));
    }
    sheet.end(g);
  }
}
