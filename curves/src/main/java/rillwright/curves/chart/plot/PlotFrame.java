package rillwright.curves.chart.plot;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.style.XYStyler;
import org.knowm.xchart.style.lines.SeriesLines;
import org.knowm.xchart.style.markers.SeriesMarkers;
import rillwright.curves.chart.layout.AxisRange;
import rillwright.curves.chart.mark.Ink;

/** The ground of the plot with its grid, drawn by XChart, and its scale. */
public final class PlotFrame {
  private final Rectangle2D area;
  private final AxisRange flow;
  private final AxisRange head;
  private final XYChart ground;

  /**
   * A plot.
   *
   * @param area on the paper
   * @param flow of the axis across, in the unit shown
   * @param head of the axis up, in the unit shown
   */
  public PlotFrame(Rectangle2D area, AxisRange flow, AxisRange head) {
    this.area = area;
    this.flow = flow;
    this.head = head;
    this.ground = new XYChart((int) area.getWidth(), (int) area.getHeight());
    XYStyler styler = ground.getStyler();
    styler
        .setChartBackgroundColor(Ink.PAPER)
        .setPlotBackgroundColor(Ink.PAPER)
        .setPlotBorderColor(Ink.GRID)
        .setChartTitleVisible(false)
        .setLegendVisible(false)
        .setPlotContentSize(1)
        .setChartPadding(0);
    styler
        .setAxisTitlesVisible(false)
        .setAxisTicksVisible(false)
        .setAxisTitlePadding(0)
        .setPlotMargin(0)
        .setPlotGridLinesColor(Ink.GRID)
        .setPlotGridLinesStroke(new BasicStroke(1.4f))
        .setXAxisMin(flow.min())
        .setXAxisMax(flow.max())
        .setYAxisMin(head.min())
        .setYAxisMax(head.max())
        .setXAxisTickMarkSpacingHint(pixelsAStep(area.getWidth(), flow))
        .setYAxisTickMarkSpacingHint(pixelsAStep(area.getHeight(), head));
    ground
        .addSeries("extent", extent(flow), extent(head))
        .setMarker(SeriesMarkers.NONE)
        .setLineStyle(SeriesLines.NONE);
  }

  /** Unevenly spaced, because XChart draws its grid through evenly spaced points only. */
  private static double[] extent(AxisRange axis) {
    return new double[] {axis.min(), axis.min() + axis.step() / 3, axis.max()};
  }

  private static int pixelsAStep(double pixels, AxisRange axis) {
    return (int) (pixels / (axis.lastStep() - axis.firstStep()));
  }

  public void paint(Graphics2D g) {
    g.translate(area.getX(), area.getY());
    ground.paint(g, (int) area.getWidth(), (int) area.getHeight());
    g.translate(-area.getX(), -area.getY());
  }

  public Rectangle2D area() {
    return area;
  }

  /** The place of a flow, in the unit shown; beyond the plot where the flow is beyond the axis. */
  public double x(double shown) {
    return area.getX() + area.getWidth() * (shown - flow.min()) / (flow.max() - flow.min());
  }

  /** The place of a head, in the unit shown. */
  public double y(double shown) {
    return area.getMaxY() - area.getHeight() * (shown - head.min()) / (head.max() - head.min());
  }

  public Point2D at(double flowShown, double headShown) {
    return new Point2D.Double(x(flowShown), y(headShown));
  }
}
