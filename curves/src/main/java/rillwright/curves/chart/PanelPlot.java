package rillwright.curves.chart;

import java.awt.Graphics2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rillwright.curves.chart.content.Panel;
import rillwright.curves.chart.layout.AxisRange;
import rillwright.curves.chart.layout.LabelPlacer;
import rillwright.curves.chart.layout.Obstacles;
import rillwright.curves.chart.layout.Polyline;
import rillwright.curves.chart.layout.TextBlock;
import rillwright.curves.chart.mark.Ink;
import rillwright.curves.chart.mark.Pen;
import rillwright.curves.chart.mark.RingMark;
import rillwright.curves.chart.mark.Words;
import rillwright.curves.chart.plot.Axes;
import rillwright.curves.chart.plot.PlotFrame;

/** One plot of several. */
final class PanelPlot {
  private static final int ACROSS_STEPS = 8;
  private static final int UP_STEPS = 6;
  private static final RingMark SPOT = new RingMark(8);
  private static final double WIDEST_LABEL = 480;
  private static final double LAST_PLACE = 0.99;

  /** What is no more than this is nothing: an axis of its own size would read 0 at every step. */
  private static final double NOTHING = 1e-4;

  private static final double BETWEEN_PLACES = 0.14;
  private static final Pen LEVEL = new Pen(Ink.AXIS, 2, List.of(2f, 7f));
  private static final Pen PLACE = new Pen(Ink.SOFT_TEXT, 2.4f, List.of(3f, 5f));
  private static final List<Double> ALONG =
      IntStream.range(1, 49).mapToObj(i -> 1 - i * 0.02).toList();

  private final Panel panel;
  private final List<String> names;
  private final Axes axes;

  /**
   * A plot.
   *
   * @param names of all curves of the chart: a curve's place among them decides how it looks
   */
  PanelPlot(Panel panel, List<String> names) {
    this.panel = panel;
    this.names = names;
    DoubleStream across =
        DoubleStream.concat(
            points().mapToDouble(Panel.Spot::across),
            panel.places().stream().mapToDouble(Panel.Mark::at));
    AxisRange acrossRange = AxisRange.covering(0, across.max().orElse(1), ACROSS_STEPS);
    double[] up =
        DoubleStream.concat(
                points().mapToDouble(Panel.Spot::up),
                panel.levels().stream().mapToDouble(Panel.Mark::at))
            .sorted()
            .toArray();
    boolean nothing = Math.max(-up[0], up[up.length - 1]) < NOTHING;
    AxisRange upRange = AxisRange.covering(up[0], nothing ? 1 : up[up.length - 1], UP_STEPS);
    this.axes =
        new Axes(acrossRange, upRange, Optional.empty(), panel.acrossTitle(), panel.upTitle());
  }

  private Stream<Panel.Spot> points() {
    return panel.curves().stream().flatMap(curve -> curve.points().stream());
  }

  Axes axes() {
    return axes;
  }

  /** Paints it, the words of its axes outside the area. */
  void paint(Graphics2D g, Rectangle2D area) {
    PlotFrame frame = new PlotFrame(area, axes.flow(), axes.head());
    frame.paint(g);
    axes.paint(g, frame);
    Obstacles obstacles = new Obstacles(area);
    List<Polyline> levels = new ArrayList<>();
    panel.levels().forEach(level -> levels.add(across(frame, level.at())));
    List<Polyline> places = new ArrayList<>();
    panel.places().forEach(place -> places.add(upright(frame, place.at())));
    levels.forEach(line -> LEVEL.draw(g, line.path()));
    places.forEach(line -> PLACE.draw(g, line.path()));
    levels.forEach(obstacles::add);
    if (axes.head().firstStep() < 0) {
      obstacles.add(across(frame, 0));
    }
    places.forEach(obstacles::add);
    for (Panel.Curve curve : panel.curves()) {
      Polyline whole = new Polyline(curve.points().stream().map(spot -> at(frame, spot)).toList());
      for (Polyline piece : whole.within(area)) {
        Pen.panel(names.indexOf(curve.name())).draw(g, piece.path());
        obstacles.add(piece);
      }
    }
    for (Panel.Spot spot : panel.spots()) {
      Point2D at = at(frame, spot);
      SPOT.addTo(obstacles, at);
      SPOT.draw(g, at);
    }
    LabelPlacer placer = new LabelPlacer(obstacles);
    label(g, placer, panel.places(), places);
    label(g, placer, panel.levels(), levels);
  }

  private static Point2D at(PlotFrame frame, Panel.Spot spot) {
    return frame.at(spot.across(), spot.up());
  }

  private static Polyline across(PlotFrame frame, double up) {
    Rectangle2D area = frame.area();
    return new Polyline(
        List.of(
            new Point2D.Double(area.getMinX(), frame.y(up)),
            new Point2D.Double(area.getMaxX(), frame.y(up))));
  }

  private static Polyline upright(PlotFrame frame, double across) {
    Rectangle2D area = frame.area();
    return new Polyline(
        List.of(
            new Point2D.Double(frame.x(across), area.getMinY()),
            new Point2D.Double(frame.x(across), area.getMaxY())));
  }

  private static void label(
      Graphics2D g, LabelPlacer placer, List<Panel.Mark> marks, List<Polyline> lines) {
    for (int i = 0; i < marks.size(); i++) {
      TextBlock words = TextBlock.wrapped(marks.get(i).label(), Ink.NOTE, WIDEST_LABEL, 2);
      if (!words.lines().isEmpty()) {
        Rectangle2D place =
            placer
                .beside(words.width(), words.height(), lines.get(i), ALONG)
                .orElse(onTheLine(words, lines.get(i), i));
        Words.writeOnPaper(g, words, place, Ink.SOFT_TEXT);
      }
    }
  }

  /** Where there is no room beside a line its words stand on it, each farther in. */
  private static Rectangle2D onTheLine(TextBlock words, Polyline line, int number) {
    Point2D at = line.at(Math.max(0.1, LAST_PLACE - number * BETWEEN_PLACES));
    return new Rectangle2D.Double(
        at.getX() - words.width(), at.getY() - words.height() / 2, words.width(), words.height());
  }
}
