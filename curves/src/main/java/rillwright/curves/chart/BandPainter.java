package rillwright.curves.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import rillwright.curves.chart.content.BandChart;
import rillwright.curves.chart.content.BandChart.BandCurve;
import rillwright.curves.chart.content.BandChart.Spot;
import rillwright.curves.chart.content.CurvePoint;
import rillwright.curves.chart.layout.AxisRange;
import rillwright.curves.chart.layout.LabelPlacer;
import rillwright.curves.chart.layout.Obstacles;
import rillwright.curves.chart.layout.Polyline;
import rillwright.curves.chart.mark.Callout;
import rillwright.curves.chart.mark.CurveMark;
import rillwright.curves.chart.mark.Ink;
import rillwright.curves.chart.mark.MarkShape;
import rillwright.curves.chart.mark.Pen;
import rillwright.curves.chart.plot.Axes;
import rillwright.curves.chart.plot.PlotFrame;
import rillwright.curves.chart.svg.Description;
import rillwright.curves.chart.svg.Painting;

/** Paints curves with their bands, and over them what was read. */
final class BandPainter implements Painting {
  private static final double ABOVE_PLOT = 66;
  private static final double BELOW_PLOT = 92;
  private static final int STEPS = 8;
  private static final Color BAND = new Color(0, 0, 0, 34);
  private static final double RADIUS = 6;
  private static final double CAP = 7;
  private static final double PAD = 8;
  private static final double WIDEST_LABEL = 420;

  private final BandChart chart;

  BandPainter(BandChart chart) {
    this.chart = chart;
  }

  @Override
  public Description description() {
    return Description.of(
        chart.title(),
        Stream.concat(
            Stream.of(
                chart.caption(),
                "Head in %s against flow in %s"
                    .formatted(chart.headUnit().symbol(), chart.flowUnit().symbol())),
            chart.curves().stream()
                .flatMap(
                    curve ->
                        Stream.concat(
                            Stream.of(curve.name()),
                            curve.spots().stream()
                                .map(spot -> String.join(", ", spot.labelLines()))))));
  }

  @Override
  public void paint(Graphics2D g) {
    Legend legend = new Legend(Sheet.WIDE);
    fill(legend);
    Sheet sheet = Sheet.begin(g, chart, legend, height());
    Axes axes = axes();
    double top = Math.rint(sheet.top() + ABOVE_PLOT);
    double left = Math.rint(Sheet.MARGIN + axes.leftWidth());
    Rectangle2D area =
        new Rectangle2D.Double(
            left,
            top,
            Math.rint(WIDTH - Sheet.MARGIN - axes.rightWidth() - left),
            Math.rint(sheet.bottom() - BELOW_PLOT - top));
    PlotFrame frame = new PlotFrame(area, axes.flow(), axes.head());
    frame.paint(g);
    chart.curves().forEach(curve -> paintBand(g, frame, curve));
    axes.paint(g, frame);
    paintCurves(g, frame);
    sheet.end(g);
  }

  private Axes axes() {
    double flow = 0;
    double head = 0;
    for (BandCurve curve : chart.curves()) {
      for (CurvePoint point : curve.high()) {
        flow = Math.max(flow, point.flowM3PerS());
        head = Math.max(head, point.headM());
      }
      for (Spot spot : curve.spots()) {
        flow = Math.max(flow, spot.at().flowM3PerS() + spot.flowWithinM3PerS());
        head = Math.max(head, spot.at().headM() + spot.headWithinM());
      }
    }
    return new Axes(
        AxisRange.covering(0, chart.flowUnit().fromSi(flow), STEPS),
        AxisRange.covering(0, chart.headUnit().fromSi(1.04 * head), STEPS),
        Optional.empty(),
        "Flow, " + chart.flowUnit().symbol(),
        "Head, " + chart.headUnit().symbol());
  }

  private void fill(Legend legend) {
    for (int i = 0; i < chart.curves().size(); i++) {
      legend.add(chart.curves().get(i).name(), pen(i));
    }
    legend.add("nine of ten at each flow", BandPainter::sampleOfBand);
    if (hasSpots(true)) {
      legend.add("read, within its error", (g, place) -> mark(g, Legend.middle(place), 0, true));
    }
    if (hasSpots(false)) {
      legend.add(
          "head read, flow as expected", (g, place) -> mark(g, Legend.middle(place), 0, false));
    }
  }

  private boolean hasSpots(boolean isFlowRead) {
    return chart.curves().stream()
        .flatMap(curve -> curve.spots().stream())
        .anyMatch(spot -> spot.isFlowRead() == isFlowRead);
  }

  private static void sampleOfBand(Graphics2D g, Line2D place) {
    Rectangle2D box =
        new Rectangle2D.Double(
            place.getX1(), place.getY1() - 11, place.getX2() - place.getX1(), 22);
    g.setColor(BAND);
    g.fill(box);
    EDGE.draw(g, new Line2D.Double(place.getX1(), box.getMinY(), place.getX2(), box.getMinY()));
    EDGE.draw(g, new Line2D.Double(place.getX1(), box.getMaxY(), place.getX2(), box.getMaxY()));
  }

  private static final Pen EDGE = new Pen(Ink.SOFT_TEXT, 2, List.of(9f, 7f));

  private Pen pen(int number) {
    return Pen.pump(number, chart.curves().size());
  }

  private Point2D at(PlotFrame frame, double flowM3PerS, double headM) {
    return frame.at(chart.flowUnit().fromSi(flowM3PerS), chart.headUnit().fromSi(headM));
  }

  private Polyline line(PlotFrame frame, List<CurvePoint> points) {
    return new Polyline(points.stream().map(it -> at(frame, it.flowM3PerS(), it.headM())).toList());
  }

  private void paintBand(Graphics2D g, PlotFrame frame, BandCurve curve) {
    Polyline low = line(frame, curve.low());
    Polyline high = line(frame, curve.high());
    List<Point2D> around = new ArrayList<>(low.points());
    Collections.reverse(around);
    around.addAll(0, high.points());
    Path2D band = new Polyline(around).path();
    band.closePath();
    g.setColor(BAND);
    g.fill(band);
    EDGE.draw(g, low.path());
    EDGE.draw(g, high.path());
  }

  private void paintCurves(Graphics2D g, PlotFrame frame) {
    Obstacles obstacles = new Obstacles(frame.area());
    for (int i = 0; i < chart.curves().size(); i++) {
      BandCurve curve = chart.curves().get(i);
      pen(i).draw(g, line(frame, curve.middle()).path());
      for (Function<BandCurve, List<CurvePoint>> edge :
          List.<Function<BandCurve, List<CurvePoint>>>of(
              BandCurve::low, BandCurve::middle, BandCurve::high)) {
        obstacles.add(line(frame, edge.apply(curve)));
      }
    }
    LabelPlacer placer = new LabelPlacer(obstacles);
    for (int i = 0; i < chart.curves().size(); i++) {
      for (Spot spot : chart.curves().get(i).spots()) {
        obstacles.add(place(frame, spot), RADIUS + 4);
        paintErrors(g, frame, spot);
      }
    }
    for (int i = 0; i < chart.curves().size(); i++) {
      for (Spot spot : chart.curves().get(i).spots()) {
        Callout.of(spot.labelLines(), WIDEST_LABEL, PAD).paint(g, placer, place(frame, spot));
      }
    }
    for (int i = 0; i < chart.curves().size(); i++) {
      for (Spot spot : chart.curves().get(i).spots()) {
        mark(g, place(frame, spot), i, spot.isFlowRead());
      }
    }
  }

  private Point2D place(PlotFrame frame, Spot spot) {
    return at(frame, spot.at().flowM3PerS(), spot.at().headM());
  }

  private static void mark(Graphics2D g, Point2D at, int number, boolean isFlowRead) {
    MarkShape[] shapes = MarkShape.values();
    MarkShape shape = shapes[number % shapes.length];
    new CurveMark(shape, RADIUS, Ink.BLACK, isFlowRead ? Ink.BLACK : Ink.PAPER).draw(g, at);
  }

  private void paintErrors(Graphics2D g, PlotFrame frame, Spot spot) {
    double flow = spot.at().flowM3PerS();
    double head = spot.at().headM();
    g.setColor(Ink.BLACK);
    g.setStroke(new BasicStroke(2.2f));
    Point2D low = at(frame, flow, head - spot.headWithinM());
    Point2D high = at(frame, flow, head + spot.headWithinM());
    g.draw(new Line2D.Double(low, high));
    cap(g, low, CAP, 0);
    cap(g, high, CAP, 0);
    if (spot.flowWithinM3PerS() > 0) {
      Point2D less = at(frame, Math.max(0, flow - spot.flowWithinM3PerS()), head);
      Point2D more = at(frame, flow + spot.flowWithinM3PerS(), head);
      g.draw(new Line2D.Double(less, more));
      cap(g, less, 0, CAP);
      cap(g, more, 0, CAP);
    }
  }

  private static void cap(Graphics2D g, Point2D at, double across, double up) {
    g.draw(
        new Line2D.Double(at.getX() - across, at.getY() - up, at.getX() + across, at.getY() + up));
  }
}
