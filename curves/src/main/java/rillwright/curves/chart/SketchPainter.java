package rillwright.curves.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rillwright.curves.chart.content.SketchChart;
import rillwright.curves.chart.content.SketchChart.Kind;
import rillwright.curves.chart.content.SketchChart.Link;
import rillwright.curves.chart.content.SketchChart.Node;
import rillwright.curves.chart.layout.AxisRange;
import rillwright.curves.chart.layout.LabelPlacer;
import rillwright.curves.chart.layout.Obstacles;
import rillwright.curves.chart.layout.TextBlock;
import rillwright.curves.chart.mark.Callout;
import rillwright.curves.chart.mark.Ink;
import rillwright.curves.chart.mark.LetterMark;
import rillwright.curves.chart.mark.MarkShape;
import rillwright.curves.chart.mark.Words;
import rillwright.curves.chart.mark.Words.Anchor;
import rillwright.curves.chart.sketch.Places;
import rillwright.curves.chart.sketch.SketchLine;
import rillwright.curves.chart.svg.Description;
import rillwright.curves.chart.svg.Painting;

/** Paints a sketch of a network, its lines numbered and listed below. */
final class SketchPainter implements Painting {
  private static final double SCALE_WIDTH = 66;
  private static final double ABOVE_PLOT = 40;
  private static final double PLOT = 560;
  private static final double MORE_PLOT = 16;
  private static final double RADIUS = 11;
  private static final double WIDEST = 300;
  private static final double PAD = 8;
  private static final int STEPS = 6;

  /** Lines that are listed in one column; more take two. */
  private static final int FEW = 6;

  private static final double ROW = 34;
  private static final double BEFORE_WORDS = 48;
  private static final Color WATER = new Color(0x9CC7E4);

  private final SketchChart chart;
  private final AxisRange levels;
  private final Legend legend = new Legend(Sheet.WIDE);

  SketchPainter(SketchChart chart) {
    this.chart = chart;
    double[] heights =
        chart.nodes().stream()
            .map(Node::heightM)
            .flatMapToDouble(OptionalDouble::stream)
            .map(chart.levelUnit()::fromSi)
            .sorted()
            .toArray();
    this.levels =
        heights.length == 0
            ? AxisRange.spanning(0, 1, STEPS)
            : AxisRange.spanning(heights[0], heights[heights.length - 1], STEPS);
    for (Kind kind : Kind.values()) {
      if (chart.nodes().stream().anyMatch(node -> node.kind() == kind && isPlain(node))) {
        String name = kind.name().toLowerCase(Locale.ROOT).replace('_', ' ');
        legend.add(name, (g, at) -> mark(g, kind, true, Legend.middle(at)));
      }
    }
    if (chart.nodes().stream().anyMatch(node -> node.heightM().isEmpty())) {
      legend.add(
          "height not given: drawn between its neighbors",
          (g, at) -> mark(g, Kind.TEE, false, Legend.middle(at)));
    }
    if (chart.links().stream().anyMatch(link -> !link.flows())) {
      legend.add("no flow", SketchLine.DRY);
    }
  }

  /** Whether it looks as its kind does. */
  private static boolean isPlain(Node node) {
    return node.kind() != Kind.TEE || node.heightM().isPresent();
  }

  private double plotHeight() {
    return PLOT + MORE_PLOT * Math.max(0, chart.nodes().size() - 8);
  }

  private int columns() {
    return chart.links().size() <= FEW ? 1 : 2;
  }

  private int listRows() {
    return (chart.links().size() + columns() - 1) / columns();
  }

  @Override
  public int height() {
    double listed = listRows() * ROW + ABOVE_PLOT;
    return (int)
        Math.ceil(
            Sheet.headHeight(chart)
                + ABOVE_PLOT
                + plotHeight()
                + listed
                + legend.height()
                + Sheet.MARGIN);
  }

  @Override
  public Description description() {
    return Description.of(
        chart.title(),
        Stream.of(
                Stream.of(chart.caption()),
                chart.nodes().stream().map(node -> String.join(", ", node.words())),
                chart.links().stream().map(SketchPainter::sentence))
            .flatMap(sentences -> sentences));
  }

  private static String sentence(Link link) {
    List<String> figures = link.words().subList(1, link.words().size());
    return link.words().get(0) + (figures.isEmpty() ? "" : ": " + String.join(", ", figures));
  }

  @Override
  public void paint(Graphics2D g) {
    Sheet sheet = Sheet.begin(g, chart, legend, height());
    Rectangle2D area =
        new Rectangle2D.Double(
            Sheet.MARGIN + SCALE_WIDTH,
            Math.rint(sheet.top() + ABOVE_PLOT),
            Sheet.WIDE - SCALE_WIDTH,
            plotHeight());
    paintScale(g, area);
    List<Point2D> places = Places.of(chart, inside(area), levels);
    Obstacles obstacles = new Obstacles(area);
    List<SketchLine> lines = SketchLine.list(chart, places);
    for (SketchLine line : lines) {
      line.paint(g);
      obstacles.add(line.path());
    }
    places.forEach(place -> obstacles.add(place, RADIUS));
    lines.forEach(line -> line.paintNumber(g, obstacles));
    LabelPlacer placer = new LabelPlacer(obstacles);
    for (int i = 0; i < places.size(); i++) {
      Node node = chart.nodes().get(i);
      if (!callout(node.words()).paint(g, placer, places.get(i))) {
        callout(node.words().subList(0, 1)).paint(g, placer, places.get(i));
      }
    }
    for (int i = 0; i < places.size(); i++) {
      Node node = chart.nodes().get(i);
      mark(g, node.kind(), node.heightM().isPresent(), places.get(i));
    }
    paintList(g, area.getMaxY() + ABOVE_PLOT);
    sheet.end(g);
  }

  private static Callout callout(List<String> words) {
    return new Callout(TextBlock.ofLines(words, Ink.SMALL, WIDEST), PAD);
  }

  /** Room for marks at the edge. */
  private static Rectangle2D inside(Rectangle2D area) {
    return new Rectangle2D.Double(
        area.getX(), area.getY() + 24, area.getWidth(), area.getHeight() - 48);
  }

  private void paintScale(Graphics2D g, Rectangle2D area) {
    levels
        .ticks()
        .forEach(
            tick -> {
              double y = Places.y(inside(area), levels, tick);
              g.setColor(Ink.GRID);
              g.setStroke(new BasicStroke(1));
              g.draw(new Line2D.Double(area.getX(), y, area.getMaxX(), y));
              TextBlock words = TextBlock.ofLine(levels.label(tick), Ink.SMALL);
              double top = y - words.lineHeight() / 2;
              Words.write(g, words, area.getX() - PAD, top, Anchor.END, Ink.TEXT);
            });
  }

  private static void mark(Graphics2D g, Kind kind, boolean known, Point2D at) {
    switch (kind) {
      case OPEN_WATER -> MarkShape.SQUARE.draw(g, at, RADIUS, Ink.TEXT, WATER);
      case CHAMBER -> MarkShape.SQUARE.draw(g, at, RADIUS, Ink.TEXT, Ink.PAPER);
      case FALL -> MarkShape.TRIANGLE_DOWN.draw(g, at, RADIUS, Ink.TEXT, WATER);
      case OUTLET -> MarkShape.DIAMOND.draw(g, at, RADIUS, Ink.TEXT, WATER);
      default -> MarkShape.DISC.draw(g, at, 8, Ink.TEXT, known ? Ink.TEXT : Ink.PAPER);
    }
  }

  private void paintList(Graphics2D g, double top) {
    double wide = Sheet.WIDE / columns();
    IntStream.range(0, chart.links().size())
        .forEach(
            i -> {
              int column = i / listRows();
              double left = Sheet.MARGIN + column * wide;
              double y = top + (i - column * listRows()) * ROW;
              String number = Integer.toString(i + 1);
              double half = LetterMark.halfWidth(number.length());
              LetterMark.draw(g, number, new Point2D.Double(left + half, y + ROW / 2));
              TextBlock words =
                  TextBlock.ofLines(
                      List.of(sentence(chart.links().get(i))),
                      Ink.SMALL,
                      wide - BEFORE_WORDS - half);
              double textTop = y + (ROW - words.lineHeight()) / 2;
              Words.write(
                  g, words, left + half + BEFORE_WORDS / 2, textTop, Anchor.START, Ink.TEXT);
            });
  }
}
