package rillwright.curves.chart;

import java.awt.Graphics2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import rillwright.curves.chart.content.FlowMark;
import rillwright.curves.chart.content.HeadMark;
import rillwright.curves.chart.content.OperatingChart;
import rillwright.curves.chart.content.OperatingPoint;
import rillwright.curves.chart.content.OperatingPoint.Valves;
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
import rillwright.curves.chart.plot.PlotFrame;

/** What is noted on the plot besides curves: operating points, the flow limit, the lift. */
final class ChartNotes {
  private static final double PAD = 12;
  private static final double WIDEST_BOX = 520;
  private static final double WIDEST_NOTE = 300;
  private static final double MAIN = 11;
  private static final double OTHER = 7.5;
  private static final Pen LIMIT = new Pen(Ink.SOFT_TEXT, 2.4f, List.of(3f, 5f));
  private static final Pen LIFT = new Pen(Ink.AXIS, 2, List.of(2f, 7f));

  private static final List<Double> FROM_TOP = List.of(0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9);
  private static final List<Double> FROM_RIGHT =
      List.of(
          0.9, 0.85, 0.8, 0.75, 0.7, 0.65, 0.6, 0.55, 0.5, 0.45, 0.4, 0.35, 0.3, 0.25, 0.2, 0.1);

  private final OperatingChart chart;
  private final PlotFrame frame;
  private final Optional<Polyline> limitLine;
  private final Optional<Polyline> liftLine;

  ChartNotes(OperatingChart chart, PlotFrame frame) {
    this.chart = chart;
    this.frame = frame;
    this.limitLine = chart.flowLimit().map(this::line).filter(this::isOnPlot);
    this.liftLine = chart.staticHead().map(this::line).filter(this::isOnPlot);
  }

  /** What lies under the curves. */
  void paintGround(Graphics2D g) {
    limitLine.ifPresent(line -> paintOutOfReach(g, line));
    liftLine.ifPresent(line -> LIFT.draw(g, line.path()));
  }

  private void paintOutOfReach(Graphics2D g, Polyline line) {
    Rectangle2D area = frame.area();
    double x = line.points().get(0).getX();
    g.setColor(Ink.OUT_OF_REACH);
    g.fill(new Rectangle2D.Double(x, area.getY(), area.getMaxX() - x, area.getHeight()));
    LIMIT.draw(g, line.path());
  }

  private Polyline line(FlowMark limit) {
    double x = frame.x(chart.flowUnit().fromSi(limit.flowM3PerS()));
    return new Polyline(
        List.of(
            new Point2D.Double(x, frame.area().getMinY()),
            new Point2D.Double(x, frame.area().getMaxY())));
  }

  private Polyline line(HeadMark lift) {
    double y = frame.y(chart.headUnit().fromSi(lift.headM()));
    return new Polyline(
        List.of(
            new Point2D.Double(frame.area().getMinX(), y),
            new Point2D.Double(frame.area().getMaxX(), y)));
  }

  private boolean isOnPlot(Polyline line) {
    return !line.within(frame.area()).isEmpty();
  }

  void addTo(Obstacles obstacles) {
    limitLine.ifPresent(obstacles::add);
    liftLine.ifPresent(obstacles::add);
    for (OperatingPoint point : chart.operatingPoints()) {
      mark(point).addTo(obstacles, place(point));
    }
  }

  private RingMark mark(OperatingPoint point) {
    boolean isMain = chart.operatingPoints().size() == 1 || !point.labelLines().isEmpty();
    return new RingMark(shape(point.valves()), isMain ? MAIN : OTHER);
  }

  /** How a point is drawn in the legend. */
  static RingMark sample(Valves valves) {
    return new RingMark(shape(valves), OTHER);
  }

  private static MarkShape shape(Valves valves) {
    return valves == Valves.THROTTLED ? MarkShape.SQUARE : MarkShape.DISC;
  }

  private Point2D place(OperatingPoint point) {
    return frame.at(
        chart.flowUnit().fromSi(point.flowM3PerS()), chart.headUnit().fromSi(point.headM()));
  }

  /** Operating points with their numbers. */
  void paintPoints(Graphics2D g, LabelPlacer placer) {
    for (OperatingPoint point : chart.operatingPoints()) {
      Callout.of(point.labelLines(), WIDEST_BOX, PAD).paint(g, placer, place(point));
    }
    for (OperatingPoint point : chart.operatingPoints()) {
      mark(point).draw(g, place(point));
    }
  }

  /** The words of limit and lift, where there is room. */
  void label(Graphics2D g, LabelPlacer placer) {
    String limit = chart.flowLimit().map(FlowMark::label).orElse("");
    TextBlock limitWords = TextBlock.wrapped(limit, Ink.NOTE, WIDEST_NOTE, 3);
    limitLine.ifPresent(line -> label(g, placer, limitWords, line, FROM_TOP));
    String lift = chart.staticHead().map(HeadMark::label).orElse("");
    TextBlock liftWords = TextBlock.wrapped(lift, Ink.NOTE, WIDEST_BOX, 2);
    liftLine.ifPresent(line -> label(g, placer, liftWords, line, FROM_RIGHT));
  }

  private static void label(
      Graphics2D g, LabelPlacer placer, TextBlock words, Polyline line, List<Double> shares) {
    if (!words.lines().isEmpty()) {
      placer
          .beside(words.width(), words.height(), line, shares)
          .ifPresent(place -> Words.writeOnPaper(g, words, place, Ink.SOFT_TEXT));
    }
  }
}
