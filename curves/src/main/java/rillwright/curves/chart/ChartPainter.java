package rillwright.curves.chart;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import rillwright.curves.chart.Words.Anchor;
import rillwright.curves.chart.content.OperatingChart;
import rillwright.curves.chart.layout.LabelPlacer;
import rillwright.curves.chart.layout.Obstacles;
import rillwright.curves.chart.layout.TextBlock;

/** Paints a whole chart on whatever takes strokes and words. */
final class ChartPainter implements Painting {
  private static final double MARGIN = 44;
  private static final double TOP = 34;
  private static final double ABOVE_PLOT = 66;
  private static final double BELOW_PLOT = 92;
  private static final int MOST_LINES = 2;

  private final OperatingChart chart;

  ChartPainter(OperatingChart chart) {
    this.chart = chart;
  }

  @Override
  public Description description() {
    return Description.of(chart);
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
    Legend legend = new Legend(wide);
    ChartCurves.fill(legend, chart);
    Axes axes = Axes.of(chart);
    double plotTop = captionTop + caption.height() + ABOVE_PLOT;
    double legendTop = HEIGHT - MARGIN / 2 - legend.height();
    double plotLeft = MARGIN + axes.leftWidth();
    Rectangle2D area =
        new Rectangle2D.Double(
            Math.rint(plotLeft),
            Math.rint(plotTop),
            Math.rint(WIDTH - MARGIN - axes.rightWidth() - plotLeft),
            Math.rint(legendTop - BELOW_PLOT - plotTop));
    paintPlot(g, axes, new PlotFrame(area, axes.flow(), axes.head()));
    legend.paint(g, MARGIN, legendTop);
  }

  private void paintPlot(Graphics2D g, Axes axes, PlotFrame frame) {
    frame.paint(g);
    ChartNotes notes = new ChartNotes(chart, frame);
    ChartCurves curves = new ChartCurves(chart, frame, axes);
    notes.paintGround(g);
    axes.paint(g, frame);
    curves.paint(g);
    curves.paintLetters(g);
    Obstacles obstacles = new Obstacles(frame.area());
    curves.addTo(obstacles);
    notes.addTo(obstacles);
    LabelPlacer placer = new LabelPlacer(obstacles);
    notes.paintPoints(g, placer);
    curves.label(g, placer);
    notes.label(g, placer);
  }
}
