package rillwright.curves.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import rillwright.curves.chart.Words.Anchor;
import rillwright.curves.chart.content.CausesChart;
import rillwright.curves.chart.content.CausesChart.Mark;
import rillwright.curves.chart.content.CausesChart.Strip;
import rillwright.curves.chart.layout.TextBlock;

/**
 * A strip for each reading: a band for what was read, within its error, and marks for what causes
 * and the job as built predict, each strip on a scale of its own.
 */
final class PredictionStrips {
  private static final double TALLEST_ROW = 150;
  private static final double AXIS_AT = 0.62;
  private static final double BAND_HEIGHT = 34;
  private static final double DIAMOND = 10;
  private static final double ROOM = 0.08;
  private static final Color BAND = new Color(0xBFD7EA);

  private final List<Strip> strips;

  PredictionStrips(List<Strip> strips) {
    this.strips = strips;
  }

  static void fill(Legend legend, CausesChart chart) {
    if (chart.strips().stream().anyMatch(strip -> strip.read().isPresent())) {
      legend.add("read, within its error", (g, place) -> band(g, place));
    }
    legend.add("as built", (g, place) -> diamond(g, Legend.middle(place)));
    legend.add("by a cause", (g, place) -> LetterMark.draw(g, "A", Legend.middle(place)));
  }

  private static void band(Graphics2D g, Line2D place) {
    double height = 0.7 * BAND_HEIGHT;
    Rectangle2D box =
        new Rectangle2D.Double(
            place.getX1(), place.getY1() - height / 2, place.getX2() - place.getX1(), height);
    paintBand(g, box, (place.getX1() + place.getX2()) / 2);
  }

  private static void paintBand(Graphics2D g, Rectangle2D box, double middle) {
    g.setColor(BAND);
    g.fill(box);
    g.setColor(Ink.BLUE);
    g.setStroke(new BasicStroke(3.4f));
    g.draw(new Line2D.Double(middle, box.getMinY(), middle, box.getMaxY()));
  }

  private static void diamond(Graphics2D g, Point2D at) {
    rillwright.curves.chart.Mark.DIAMOND.draw(g, at, DIAMOND, Ink.TEXT, Ink.PAPER);
  }

  void paint(Graphics2D g, Rectangle2D area) {
    double row = Math.min(TALLEST_ROW, area.getHeight() / strips.size());
    for (int i = 0; i < strips.size(); i++) {
      paint(
          g,
          strips.get(i),
          new Rectangle2D.Double(area.getX(), area.getY() + i * row, area.getWidth(), row));
    }
  }

  private static void paint(Graphics2D g, Strip strip, Rectangle2D area) {
    String read = strip.read().map(band -> "read " + band.label()).orElse("");
    TextBlock value = TextBlock.ofLines(List.of(read), Ink.LABEL, area.getWidth() / 2);
    TextBlock name =
        TextBlock.ofLines(List.of(strip.name()), Ink.NOTE, area.getWidth() - value.width() - 20);
    Words.write(g, name, area.getX(), area.getY(), Anchor.START, Ink.TEXT);
    Words.write(g, value, area.getMaxX(), area.getY(), Anchor.END, Ink.BLUE.darker());
    Scale scale = Scale.of(strip, area);
    double y = area.getY() + AXIS_AT * area.getHeight();
    strip
        .read()
        .ifPresent(
            band -> {
              double low = scale.x(band.value() - band.halfWidth());
              double high = scale.x(band.value() + band.halfWidth());
              paintBand(
                  g,
                  new Rectangle2D.Double(low, y - BAND_HEIGHT / 2, high - low, BAND_HEIGHT),
                  scale.x(band.value()));
            });
    g.setColor(Ink.AXIS);
    g.setStroke(new BasicStroke(1.8f));
    g.draw(new Line2D.Double(area.getX(), y, area.getMaxX(), y));
    marks(g, strip, scale, y);
    ends(g, strip, scale, y);
  }

  /** Marks that would cover each other share one ring, their letters side by side. */
  private static void marks(Graphics2D g, Strip strip, Scale scale, double y) {
    strip.asBuilt().ifPresent(built -> diamond(g, new Point2D.Double(scale.x(built.value()), y)));
    List<Mark> sorted = new ArrayList<>(strip.marks());
    sorted.sort(Comparator.comparingDouble(Mark::value));
    List<Mark> group = new ArrayList<>();
    for (Mark mark : sorted) {
      if (!group.isEmpty() && scale.x(mark.value()) - middle(group, scale) > reach(group)) {
        ring(g, group, scale, y);
        group.clear();
      }
      group.add(mark);
    }
    if (!group.isEmpty()) {
      ring(g, group, scale, y);
    }
  }

  private static double middle(List<Mark> group, Scale scale) {
    return group.stream().mapToDouble(mark -> scale.x(mark.value())).average().orElseThrow();
  }

  private static double reach(List<Mark> group) {
    return LetterMark.halfWidth(group.size()) + LetterMark.RADIUS + 2;
  }

  private static void ring(Graphics2D g, List<Mark> group, Scale scale, double y) {
    String letters = group.stream().map(Mark::letter).sorted().collect(Collectors.joining());
    LetterMark.draw(g, letters, new Point2D.Double(middle(group, scale), y));
  }

  /** The least and the greatest prediction in words, below the line. */
  private static void ends(Graphics2D g, Strip strip, Scale scale, double y) {
    List<Mark> all = new ArrayList<>(strip.marks());
    strip.asBuilt().ifPresent(all::add);
    if (all.isEmpty()) {
      return;
    }
    all.sort(Comparator.comparingDouble(Mark::value));
    Mark least = all.get(0);
    Mark greatest = all.get(all.size() - 1);
    under(g, least, scale, y);
    if (scale.x(greatest.value()) - scale.x(least.value()) > 150) {
      under(g, greatest, scale, y);
    }
  }

  private static void under(Graphics2D g, Mark mark, Scale scale, double y) {
    TextBlock words = TextBlock.ofLine(mark.label(), Ink.SMALL_LABEL);
    Words.write(
        g, words, scale.x(mark.value()), y + BAND_HEIGHT / 2 + 2, Anchor.MIDDLE, Ink.SOFT_TEXT);
  }

  /** Where values lie on a strip. */
  private record Scale(double from, double to, double left, double width) {
    static Scale of(Strip strip, Rectangle2D area) {
      double low = Double.POSITIVE_INFINITY;
      double high = Double.NEGATIVE_INFINITY;
      List<Double> values = new ArrayList<>();
      strip.marks().forEach(mark -> values.add(mark.value()));
      strip.asBuilt().ifPresent(mark -> values.add(mark.value()));
      strip
          .read()
          .ifPresent(
              band -> {
                values.add(band.value() - band.halfWidth());
                values.add(band.value() + band.halfWidth());
              });
      for (double value : values) {
        low = Math.min(low, value);
        high = Math.max(high, value);
      }
      double least = Math.max(1e-12, 1e-6 * Math.abs(high));
      double room = Math.max(least, ROOM * (high - low));
      return new Scale(low - room, high + room, area.getX(), area.getWidth());
    }

    double x(double value) {
      return left + width * (value - from) / (to - from);
    }
  }
}
