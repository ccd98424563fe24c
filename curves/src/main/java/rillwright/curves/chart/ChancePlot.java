package rillwright.curves.chart;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import rillwright.curves.chart.content.OddsChart;
import rillwright.curves.chart.content.OddsChart.ChanceCurve;
import rillwright.curves.chart.content.OddsChart.Target;
import rillwright.curves.chart.layout.AxisRange;
import rillwright.curves.chart.layout.LabelPlacer;
import rillwright.curves.chart.layout.Obstacles;
import rillwright.curves.chart.layout.Polyline;
import rillwright.curves.chart.layout.TextBlock;
import rillwright.curves.chart.mark.Callout;
import rillwright.curves.chart.mark.Ink;
import rillwright.curves.chart.mark.MarkShape;
import rillwright.curves.chart.mark.Pen;
import rillwright.curves.chart.mark.RingMark;
import rillwright.curves.chart.mark.Words;
import rillwright.curves.chart.mark.Words.Anchor;
import rillwright.curves.chart.plot.PlotFrame;

/** How likely at least a flow is, against the flow: a falling curve for each fall. */
final class ChancePlot {
  private static final int FLOW_STEPS = 6;
  private static final AxisRange PER_CENT = new AxisRange(0, 5, 20);
  private static final double LEFT = 76;
  private static final double RIGHT = 30;
  private static final double TICK = 8;
  private static final double PAD = 10;
  private static final double WIDEST_BOX = 420;
  private static final RingMark TARGET = new RingMark(10);
  private static final RingMark TARGET_SAMPLE = new RingMark(8);
  private static final double QUANTILE_RADIUS = 7;

  /** Beyond these percentiles a sample tells little. */
  private static final int FIRST = 1;

  private static final int LAST = 99;
  private static final List<Integer> QUANTILES = List.of(5, 50, 95);
  private static final Pen TARGET_LINE = new Pen(Ink.SOFT_TEXT, 2, List.of(3f, 5f));

  private final OddsChart chart;
  private final PlotFrame frame;
  private final AxisRange flow;

  ChancePlot(OddsChart chart, Rectangle2D place) {
    this.chart = chart;
    this.flow = flowAxis(chart);
    Rectangle2D area =
        new Rectangle2D.Double(
            Math.rint(place.getX() + LEFT),
            Math.rint(place.getY()),
            Math.rint(place.getWidth() - LEFT - RIGHT),
            Math.rint(place.getHeight()));
    this.frame = new PlotFrame(area, flow, PER_CENT);
  }

  private static AxisRange flowAxis(OddsChart chart) {
    double least = Double.POSITIVE_INFINITY;
    double greatest = Double.NEGATIVE_INFINITY;
    for (ChanceCurve fall : chart.falls()) {
      List<Double> flows = new ArrayList<>(fall.percentilesM3PerS().subList(FIRST, LAST + 1));
      fall.target().ifPresent(target -> flows.add(target.flowM3PerS()));
      for (double flowM3PerS : flows) {
        least = Math.min(least, chart.flowUnit().fromSi(flowM3PerS));
        greatest = Math.max(greatest, chart.flowUnit().fromSi(flowM3PerS));
      }
    }
    return AxisRange.spanning(least, greatest, FLOW_STEPS);
  }

  static void fill(Legend legend, OddsChart chart) {
    for (int i = 0; i < chart.falls().size(); i++) {
      legend.add(chart.falls().get(i).name(), Pen.panel(i));
    }
    legend.add(
        "exceeded in 95, 50, 5 % of samples",
        (g, place) -> quantileMark(g, Legend.middle(place), Pen.panel(0)));
    if (chart.falls().stream().anyMatch(fall -> fall.target().isPresent())) {
      legend.add("target", (g, place) -> TARGET_SAMPLE.draw(g, Legend.middle(place)));
    }
  }

  private static void quantileMark(Graphics2D g, Point2D at, Pen pen) {
    MarkShape.SQUARE.draw(g, at, QUANTILE_RADIUS, pen.color(), Ink.PAPER);
  }

  void paint(Graphics2D g) {
    frame.paint(g);
    paintAxes(g);
    Obstacles obstacles = new Obstacles(frame.area());
    for (int i = 0; i < chart.falls().size(); i++) {
      Polyline line = line(chart.falls().get(i));
      Pen.panel(i).draw(g, line.path());
      obstacles.add(line);
    }
    for (int i = 0; i < chart.falls().size(); i++) {
      for (int below : QUANTILES) {
        quantileMark(g, at(chart.falls().get(i), below), Pen.panel(i));
      }
    }
    chart.falls().forEach(fall -> fall.target().ifPresent(target -> mark(g, target, obstacles)));
    LabelPlacer placer = new LabelPlacer(obstacles);
    chart.falls().forEach(fall -> fall.target().ifPresent(target -> label(g, target, placer)));
  }

  private Point2D at(ChanceCurve fall, int below) {
    return frame.at(chart.flowUnit().fromSi(fall.percentilesM3PerS().get(below)), 100.0 - below);
  }

  private Point2D at(Target target) {
    return frame.at(chart.flowUnit().fromSi(target.flowM3PerS()), 100 * target.chance());
  }

  private Polyline line(ChanceCurve fall) {
    List<Point2D> points = new ArrayList<>();
    for (int below = FIRST; below <= LAST; below++) {
      points.add(at(fall, below));
    }
    return new Polyline(points);
  }

  private void mark(Graphics2D g, Target target, Obstacles obstacles) {
    Point2D at = at(target);
    TARGET_LINE.draw(g, new Line2D.Double(at.getX(), at.getY(), at.getX(), frame.area().getMaxY()));
    TARGET.draw(g, at);
    TARGET.addTo(obstacles, at);
  }

  private void label(Graphics2D g, Target target, LabelPlacer placer) {
    if (Callout.of(target.labelLines(), WIDEST_BOX, PAD).paint(g, placer, at(target))) {
      TARGET.draw(g, at(target));
    }
  }

  private void paintAxes(Graphics2D g) {
    Rectangle2D area = frame.area();
    g.setStroke(new BasicStroke(1.8f));
    g.setColor(Ink.AXIS);
    g.draw(new Line2D.Double(area.getMinX(), area.getMinY(), area.getMinX(), area.getMaxY()));
    g.draw(new Line2D.Double(area.getMinX(), area.getMaxY(), area.getMaxX(), area.getMaxY()));
    flow.ticks()
        .forEach(
            tick -> {
              TextBlock words = TextBlock.ofLine(flow.label(tick), Ink.TICK);
              Words.write(g, words, frame.x(tick), area.getMaxY() + TICK, Anchor.MIDDLE, Ink.TEXT);
            });
    PER_CENT
        .ticks()
        .forEach(
            tick -> {
              TextBlock words = TextBlock.ofLine(PER_CENT.label(tick) + " %", Ink.TICK);
              double top = frame.y(tick) - words.lineHeight() / 2;
              Words.write(g, words, area.getMinX() - TICK, top, Anchor.END, Ink.TEXT);
            });
    Words.heading(g, "Chance of at least this flow", area.getMinX() - LEFT, area.getMinY() - 50);
    TextBlock across = TextBlock.ofLine("Flow, " + chart.flowUnit().symbol(), Ink.AXIS_TITLE);
    Words.write(g, across, area.getCenterX(), area.getMaxY() + 44, Anchor.MIDDLE, Ink.TEXT);
  }
}
