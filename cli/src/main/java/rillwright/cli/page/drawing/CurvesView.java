package rillwright.cli.page.drawing;

import static rillwright.cli.page.drawing.DrawnLevels.px;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rillwright.cli.page.html.Html;
import rillwright.cli.report.picture.OperatingPicture;
import rillwright.cli.report.picture.OperatingPicture.Power;
import rillwright.cli.study.curve.Curves;
import rillwright.curves.chart.content.CurvePoint;
import rillwright.curves.chart.content.OperatingChart;
import rillwright.curves.chart.content.OperatingPoint;
import rillwright.curves.chart.layout.AxisRange;

/**
 * The operating point on a screen: the content of its picture for the width that is there, coloured
 * by the page's style, the curves distinguished by their dashes.
 */
public final class CurvesView {
  private static final int NARROWEST = 320;
  private static final int WIDEST = 640;
  private static final double HEIGHT = 230;
  private static final double LEFT = 40;
  private static final double BOTTOM = 40;
  private static final double TOP = 12;
  private static final double RIGHT = 14;
  private static final int STEPS = 4;

  private final OperatingChart chart;
  private final double width;
  private final AxisRange flows;
  private final AxisRange heads;
  private final Html svg = new Html();

  private CurvesView(OperatingChart chart, int widthPx) {
    this.chart = chart;
    this.width = Math.max(NARROWEST, Math.min(WIDEST, widthPx));
    List<CurvePoint> all = new ArrayList<>();
    chart.pumpCurves().forEach(pump -> all.addAll(pump.published()));
    chart.systemCurves().forEach(system -> all.addAll(system.points()));
    chart
        .operatingPoints()
        .forEach(point -> all.add(new CurvePoint(point.flowM3PerS(), point.headM())));
    double flow = all.stream().mapToDouble(CurvePoint::flowM3PerS).max().orElse(1e-4);
    double head =
        chart.pumpCurves().stream()
            .flatMap(it -> it.published().stream())
            .mapToDouble(CurvePoint::headM)
            .max()
            .orElseGet(() -> all.stream().mapToDouble(CurvePoint::headM).max().orElse(1));
    this.flows = AxisRange.covering(0, chart.flowUnit().fromSi(flow), STEPS);
    this.heads = AxisRange.covering(0, chart.headUnit().fromSi(Math.max(head, 0.1)), STEPS);
  }

  /** Draws it. */
  public static String of(Curves curves, int widthPx) {
    return new CurvesView(OperatingPicture.of(curves, Power.LEFT_OUT), widthPx).draw();
  }

  private String draw() {
    String said =
        chart.operatingPoints().stream()
            .map(point -> String.join(", ", point.labelLines()))
            .reduce((one, other) -> one + "; " + other)
            .orElse("no operating point");
    svg.open(
        "svg",
        "viewBox",
        "0 0 " + px(width) + " " + px(HEIGHT),
        "class",
        "curves",
        "role",
        "img",
        "aria-label",
        chart.caption() + ": " + said);
    axes();
    chart.systemCurves().forEach(system -> curve(system.points(), "system"));
    chart
        .pumpCurves()
        .forEach(
            pump -> {
              curve(pump.published(), "pump");
              curve(pump.beyond(), "beyond");
            });
    chart.operatingPoints().forEach(this::point);
    return svg.close().done();
  }

  private void axes() {
    flows
        .ticks()
        .forEach(
            tick -> {
              double x = x(chart.flowUnit().toSi(tick));
              line("grid", x, TOP, x, HEIGHT - BOTTOM);
              word(flows.label(tick), x, HEIGHT - BOTTOM + 15, "tick");
            });
    heads
        .ticks()
        .forEach(
            tick -> {
              double y = y(chart.headUnit().toSi(tick));
              line("grid", LEFT, y, width - RIGHT, y);
              word(heads.label(tick), LEFT - 6, y + 4, "tick end");
            });
    word("flow, " + chart.flowUnit().symbol(), (LEFT + width) / 2, HEIGHT - 6, "tick");
    word("head, " + chart.headUnit().symbol(), LEFT + 4, TOP + 10, "tick start");
  }

  private void curve(List<CurvePoint> points, String kind) {
    StringBuilder path = new StringBuilder();
    for (CurvePoint point : points) {
      boolean inside = chart.headUnit().fromSi(point.headM()) <= heads.max() && point.headM() >= 0;
      boolean begins = path.isEmpty() || path.charAt(path.length() - 1) == ' ';
      if (inside) {
        path.append(begins ? "M" : "L").append(px(x(point.flowM3PerS())));
        path.append(',').append(px(y(point.headM())));
      } else if (!begins) {
        path.append(' ');
      }
    }
    if (!path.isEmpty()) {
      svg.leaf("path", "", "class", kind, "d", path.toString());
    }
  }

  private void point(OperatingPoint point) {
    double x = x(point.flowM3PerS());
    double y = y(point.headM());
    svg.leaf("circle", "", "class", "runs", "cx", px(x), "cy", px(y), "r", "6");
    boolean leftOfIt = x > width * 0.6;
    double at = TOP + 26;
    for (String line : point.labelLines()) {
      word(line, leftOfIt ? x - 10 : x + 10, Math.max(at, y - 18), leftOfIt ? "said end" : "said");
      at += 15;
      y += 15;
    }
  }

  private void line(String kind, double x1, double y1, double x2, double y2) {
    svg.leaf("line", "", "class", kind, "x1", px(x1), "y1", px(y1), "x2", px(x2), "y2", px(y2));
  }

  private void word(String word, double x, double y, String kind) {
    svg.leaf("text", word, "class", kind, "x", px(x), "y", px(y));
  }

  private double x(double flowM3PerS) {
    double share = chart.flowUnit().fromSi(flowM3PerS) / flows.max();
    return LEFT + (width - LEFT - RIGHT) * share;
  }

  private double y(double headM) {
    double share = chart.headUnit().fromSi(headM) / heads.max();
    return HEIGHT - BOTTOM - (HEIGHT - BOTTOM - TOP) * share;
  }

  /** Which curve is which, in words and dashes. */
  public static Optional<String> legend(Curves curves) {
    return curves.pump().isPresent()
        ? Optional.of("Solid: pump curve. Dashed: system curve. Ring: operating point.")
        : Optional.empty();
  }
}
