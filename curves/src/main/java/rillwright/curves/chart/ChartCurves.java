package rillwright.curves.chart;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import rillwright.curves.chart.content.CurvePoint;
import rillwright.curves.chart.content.CurveSeries;
import rillwright.curves.chart.content.OperatingChart;
import rillwright.curves.chart.content.OperatingPoint.Valves;
import rillwright.curves.chart.content.PumpCurveSeries;
import rillwright.curves.chart.layout.LabelPlacer;
import rillwright.curves.chart.layout.Obstacles;
import rillwright.curves.chart.layout.Polyline;
import rillwright.curves.chart.layout.TextBlock;
import rillwright.curves.chart.mark.CurveMark;
import rillwright.curves.chart.mark.EndLetters;
import rillwright.curves.chart.mark.Ink;
import rillwright.curves.chart.mark.Pen;
import rillwright.curves.chart.mark.RingMark;
import rillwright.curves.chart.mark.Words;
import rillwright.curves.chart.plot.Axes;
import rillwright.curves.chart.plot.PlotFrame;

/** The curves of a chart on their plot. */
final class ChartCurves {
  private static final String BEYOND = "beyond the data sheet";
  private static final double LONGEST_LABEL = 420;

  private final OperatingChart chart;
  private final PlotFrame frame;
  private final Axes axes;
  private final List<Stroke> strokes = new ArrayList<>();
  private final EndLetters letters = new EndLetters();

  /**
   * A visible piece of a curve.
   *
   * @param name to write beside it; empty for none
   * @param shares of its length at which to write, best first
   */
  private record Stroke(Polyline line, Pen pen, String name, List<Double> shares) {}

  ChartCurves(OperatingChart chart, PlotFrame frame, Axes axes) {
    this.chart = chart;
    this.frame = frame;
    this.axes = axes;
    chart.power().ifPresent(power -> addPower(power.name()));
    for (int i = 0; i < chart.systemCurves().size(); i++) {
      CurveSeries system = chart.systemCurves().get(i);
      Pen pen = Pen.system(i, chart.systemCurves().size());
      Polyline line = line(system.points());
      add(line, pen, system.name(), descending());
      List<Polyline> pieces = line.within(frame.area());
      if (chart.systemCurves().size() > 1 && !pieces.isEmpty()) {
        letters.add(i, pieces.get(pieces.size() - 1));
      }
    }
    for (int i = 0; i < chart.pumpCurves().size(); i++) {
      PumpCurveSeries pump = chart.pumpCurves().get(i);
      Pen pen = Pen.pump(i, chart.pumpCurves().size());
      if (pump.beyond().size() > 1) {
        add(line(pump.beyond()), pen.beyond(), "", List.of());
      }
      add(line(pump.published()), pen, pump.name(), ascending());
    }
  }

  private static List<Double> ascending() {
    return IntStream.range(3, 48).mapToObj(i -> i * 0.02).toList();
  }

  private static List<Double> descending() {
    return IntStream.range(5, 48).mapToObj(i -> 1 - i * 0.02).toList();
  }

  private void addPower(String name) {
    List<Point2D> points =
        chart.power().orElseThrow().points().stream()
            .map(
                point ->
                    frame.at(
                        chart.flowUnit().fromSi(point.flowM3PerS()),
                        axes.headBeside(point.powerW())))
            .toList();
    add(new Polyline(points), Pen.power(), name, ascending());
  }

  private Polyline line(List<CurvePoint> points) {
    return new Polyline(
        points.stream().map(point -> at(point.flowM3PerS(), point.headM())).toList());
  }

  /** Where a flow and a head are on the paper. */
  Point2D at(double flowM3PerS, double headM) {
    return frame.at(chart.flowUnit().fromSi(flowM3PerS), chart.headUnit().fromSi(headM));
  }

  private void add(Polyline line, Pen pen, String name, List<Double> shares) {
    for (Polyline piece : line.within(frame.area())) {
      strokes.add(new Stroke(piece, pen, name, shares));
    }
  }

  /** The legend's entries for the curves of a chart. */
  static void fill(Legend legend, OperatingChart chart) {
    int pumps = chart.pumpCurves().size();
    for (int i = 0; i < pumps; i++) {
      PumpCurveSeries pump = chart.pumpCurves().get(i);
      if (pump.sheetPoints().isEmpty()) {
        legend.add(pump.name(), Pen.pump(i, pumps));
      } else {
        legend.add(pump.name(), Pen.pump(i, pumps), CurveMark.pump(i, pumps));
      }
    }
    boolean goesBeyond = chart.pumpCurves().stream().anyMatch(it -> it.beyond().size() > 1);
    if (goesBeyond) {
      Pen pen = Pen.pump(0, pumps).beyond();
      legend.add(BEYOND, pumps == 1 ? pen : new Pen(Ink.SOFT_TEXT, pen.width(), pen.dash()));
    }
    fillSystems(legend, chart);
    chart.power().ifPresent(power -> legend.add(power.name() + " (right axis)", Pen.power()));
    for (Valves valves : Valves.values()) {
      boolean bare =
          chart.operatingPoints().stream()
              .anyMatch(point -> point.valves() == valves && point.labelLines().isEmpty());
      if (bare) {
        RingMark mark = ChartNotes.sample(valves);
        legend.add(valves.words(), (g, place) -> mark.draw(g, Legend.middle(place)));
      }
    }
  }

  /** Several have letters at their ends. */
  private static void fillSystems(Legend legend, OperatingChart chart) {
    int count = chart.systemCurves().size();
    for (int i = 0; i < count; i++) {
      String name = chart.systemCurves().get(i).name();
      Pen pen = Pen.system(i, count);
      if (count > 1) {
        legend.addLettered(name, pen, EndLetters.letter(i));
      } else {
        legend.add(name, pen);
      }
    }
  }

  void paint(Graphics2D g) {
    strokes.forEach(stroke -> stroke.pen().draw(g, stroke.line().path()));
    int pumps = chart.pumpCurves().size();
    for (int i = 0; i < pumps; i++) {
      CurveMark mark = CurveMark.pump(i, pumps);
      for (CurvePoint point : chart.pumpCurves().get(i).sheetPoints()) {
        Point2D place = at(point.flowM3PerS(), point.headM());
        if (frame.area().intersects(around(place, 1))) {
          mark.draw(g, place);
        }
      }
    }
  }

  /** What stands over all curves. */
  void paintLetters(Graphics2D g) {
    letters.paint(g);
  }

  private static Rectangle2D around(Point2D place, double radius) {
    return new Rectangle2D.Double(
        place.getX() - radius, place.getY() - radius, 2 * radius, 2 * radius);
  }

  void addTo(Obstacles obstacles) {
    strokes.forEach(stroke -> obstacles.add(stroke.line()));
    letters.addTo(obstacles);
  }

  /** Writes the curves' names beside them where there is room. */
  void label(Graphics2D g, LabelPlacer placer) {
    for (Stroke stroke : strokes) {
      for (Font font : List.of(Ink.LABEL, Ink.SMALL_LABEL)) {
        TextBlock words = TextBlock.ofLines(List.of(stroke.name()), font, LONGEST_LABEL);
        if (words.lines().isEmpty() || label(g, placer, stroke, words)) {
          break;
        }
      }
    }
  }

  private static boolean label(Graphics2D g, LabelPlacer placer, Stroke stroke, TextBlock words) {
    Optional<Rectangle2D> place =
        placer.beside(words.width(), words.height(), stroke.line(), stroke.shares());
    place.ifPresent(it -> Words.writeOnPaper(g, words, it, stroke.pen().textColor()));
    return place.isPresent();
  }
}
