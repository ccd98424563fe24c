package rillwright.curves.chart;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import rillwright.curves.chart.content.OperatingChart;
import rillwright.curves.chart.layout.LabelPlacer;
import rillwright.curves.chart.layout.Obstacles;
import rillwright.curves.chart.plot.Axes;
import rillwright.curves.chart.plot.PlotFrame;
import rillwright.curves.chart.svg.Description;
import rillwright.curves.chart.svg.Painting;

/** Paints a whole chart on whatever takes strokes and words. */
final class ChartPainter implements Painting {
  private static final double ABOVE_PLOT = 66;
  private static final double BELOW_PLOT = 92;

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
    Legend legend = new Legend(Sheet.WIDE);
    ChartCurves.fill(legend, chart);
    Sheet sheet = Sheet.begin(g, chart, legend, height());
    Axes axes = Axes.of(chart);
    double plotTop = sheet.top() + ABOVE_PLOT;
    double plotLeft = Sheet.MARGIN + axes.leftWidth();
    Rectangle2D area =
        new Rectangle2D.Double(
            Math.rint(plotLeft),
            Math.rint(plotTop),
            Math.rint(WIDTH - Sheet.MARGIN - axes.rightWidth() - plotLeft),
            Math.rint(sheet.bottom() - BELOW_PLOT - plotTop));
    paintPlot(g, axes, new PlotFrame(area, axes.flow(), axes.head()));
    sheet.end(g);
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
