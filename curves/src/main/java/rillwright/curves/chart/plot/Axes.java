package rillwright.curves.chart.plot;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.util.List;
import java.util.Optional;
import rillwright.curves.chart.content.CurvePoint;
import rillwright.curves.chart.content.CurveSeries;
import rillwright.curves.chart.content.FlowMark;
import rillwright.curves.chart.content.HeadMark;
import rillwright.curves.chart.content.OperatingChart;
import rillwright.curves.chart.content.OperatingPoint;
import rillwright.curves.chart.content.PowerSeries;
import rillwright.curves.chart.content.PowerSeries.PowerPoint;
import rillwright.curves.chart.content.PumpCurveSeries;
import rillwright.curves.chart.layout.AxisRange;
import rillwright.curves.chart.layout.TextBlock;
import rillwright.curves.chart.mark.Ink;
import rillwright.curves.chart.mark.Pen;
import rillwright.curves.chart.mark.Words;
import rillwright.curves.chart.mark.Words.Anchor;

/**
 * The axes of a chart, in the units shown.
 *
 * @param flow across
 * @param head up, on the left
 * @param power up, on the right, on the same grid lines
 * @param flowTitle below the axis
 * @param headTitle above the axis
 */
public record Axes(
    AxisRange flow, AxisRange head, Optional<AxisRange> power, String flowTitle, String headTitle) {
  private static final int FLOW_STEPS = 8;
  private static final int HEAD_STEPS = 7;

  /** A limit farther out than this, in greatest flows, would only make the picture small. */
  private static final double FAR_LIMIT = 1.4;

  private static final double TICK = 8;
  private static final String POWER_TITLE = "Power, W";

  public static Axes of(OperatingChart chart) {
    AxisRange flow =
        AxisRange.covering(0, chart.flowUnit().fromSi(greatestFlow(chart)), FLOW_STEPS);
    AxisRange head =
        AxisRange.covering(
            chart.headUnit().fromSi(leastHead(chart)),
            chart.headUnit().fromSi(greatestHead(chart)),
            HEAD_STEPS);
    return new Axes(
        flow,
        head,
        chart.power().map(power -> head.alongside(greatestPower(power))),
        "Flow, " + chart.flowUnit().symbol(),
        "Head, " + chart.headUnit().symbol());
  }

  /** So much that the ranges of all data sheets and what stands out beyond them are seen. */
  private static double greatestFlow(OperatingChart chart) {
    double greatest = 0;
    for (PumpCurveSeries pump : chart.pumpCurves()) {
      double last = last(pump.published()).flowM3PerS();
      greatest = Math.max(greatest, pump.beyond().isEmpty() ? last : 1.1 * last);
    }
    for (OperatingPoint point : chart.operatingPoints()) {
      greatest = Math.max(greatest, 1.1 * point.flowM3PerS());
    }
    if (chart.pumpCurves().isEmpty()) {
      for (CurveSeries system : chart.systemCurves()) {
        greatest = Math.max(greatest, last(system.points()).flowM3PerS());
      }
    }
    double limit = 1.05 * chart.flowLimit().map(FlowMark::flowM3PerS).orElse(0.0);
    return limit <= FAR_LIMIT * greatest ? Math.max(greatest, limit) : greatest;
  }

  private static double greatestHead(OperatingChart chart) {
    double greatest = chart.staticHead().map(HeadMark::headM).orElse(0.0);
    for (PumpCurveSeries pump : chart.pumpCurves()) {
      for (CurvePoint point : pump.published()) {
        greatest = Math.max(greatest, point.headM());
      }
    }
    for (OperatingPoint point : chart.operatingPoints()) {
      greatest = Math.max(greatest, point.headM());
    }
    for (CurveSeries system : chart.systemCurves()) {
      List<CurvePoint> points = system.points();
      CurvePoint seen = chart.pumpCurves().isEmpty() ? last(points) : points.get(0);
      greatest = Math.max(greatest, seen.headM());
    }
    return 1.04 * greatest;
  }

  private static double leastHead(OperatingChart chart) {
    double least = chart.staticHead().map(HeadMark::headM).orElse(0.0);
    for (CurveSeries system : chart.systemCurves()) {
      for (CurvePoint point : system.points()) {
        least = Math.min(least, point.headM());
      }
    }
    return least;
  }

  private static double greatestPower(PowerSeries power) {
    return 1.04 * power.points().stream().mapToDouble(PowerPoint::powerW).max().orElseThrow();
  }

  private static CurvePoint last(List<CurvePoint> points) {
    return points.get(points.size() - 1);
  }

  /** Room that the words on the left need. */
  public double leftWidth() {
    return widestLabel(head) + TICK + 8;
  }

  /** Room that the words on the right need. */
  public double rightWidth() {
    double lastFlowLabel = words(flow.label(flow.max())).width() / 2;
    return Math.max(lastFlowLabel, power.map(axis -> widestLabel(axis) + TICK + 8).orElse(0.0));
  }

  private static double widestLabel(AxisRange axis) {
    return axis.ticks().map(tick -> words(axis.label(tick)).width()).max().orElseThrow();
  }

  private static TextBlock words(String text) {
    return TextBlock.ofLine(text, Ink.TICK);
  }

  /** Draws lines, ticks and words around the plot. */
  public void paint(Graphics2D g, PlotFrame frame) {
    double left = frame.area().getMinX();
    double right = frame.area().getMaxX();
    double bottom = frame.area().getMaxY();
    double top = frame.area().getMinY();
    g.setStroke(new BasicStroke(1.8f));
    g.setColor(Ink.AXIS);
    g.draw(new Line2D.Double(left, top, left, bottom));
    g.draw(new Line2D.Double(left, frame.y(0), right, frame.y(0)));
    flow.ticks()
        .forEach(
            tick ->
                tick(g, frame.x(tick), bottom, 0, TICK, words(flow.label(tick)), Anchor.MIDDLE));
    head.ticks()
        .forEach(
            tick -> tick(g, left, frame.y(tick), -TICK, 0, words(head.label(tick)), Anchor.END));
    title(g, flowTitle, (left + right) / 2, bottom + 44, Anchor.MIDDLE, Ink.TEXT);
    title(g, headTitle, left - leftWidth(), top - 50, Anchor.START, Ink.TEXT);
    power.ifPresent(axis -> paintPower(g, axis, frame));
  }

  private void paintPower(Graphics2D g, AxisRange axis, PlotFrame frame) {
    double right = frame.area().getMaxX();
    g.setColor(Ink.AXIS);
    g.draw(new Line2D.Double(right, frame.area().getMinY(), right, frame.area().getMaxY()));
    axis.ticks()
        .filter(tick -> tick >= 0)
        .forEach(
            tick ->
                tick(
                    g,
                    right,
                    frame.y(tick / axis.step() * head.step()),
                    TICK,
                    0,
                    words(axis.label(tick)),
                    Anchor.START));
    Color color = Pen.power().textColor();
    title(g, POWER_TITLE, right + rightWidth(), frame.area().getMinY() - 50, Anchor.END, color);
  }

  private static void tick(
      Graphics2D g, double x, double y, double dx, double dy, TextBlock label, Anchor anchor) {
    g.setColor(Ink.AXIS);
    g.draw(new Line2D.Double(x, y, x + dx, y + dy));
    boolean isBelow = dy > 0;
    double textX = x + dx + Math.signum(dx) * 6;
    double textY = isBelow ? y + dy + 2 : y - label.lineHeight() / 2;
    Words.write(g, label, textX, textY, anchor, Ink.TEXT);
  }

  private static void title(
      Graphics2D g, String text, double x, double y, Anchor anchor, Color color) {
    TextBlock block = TextBlock.ofLine(text, Ink.AXIS_TITLE);
    Words.write(g, block, x, y, anchor, color);
  }

  /** The head, as the left axis shows it, at the height of a power on the right axis. */
  public double headBeside(double powerW) {
    return powerW / power.orElseThrow().step() * head.step();
  }
}
