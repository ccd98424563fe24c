package rillwright.curves.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import rillwright.curves.chart.content.CausesChart;
import rillwright.curves.chart.content.CausesChart.Mark;
import rillwright.curves.chart.content.CausesChart.Strip;
import rillwright.curves.chart.layout.TextBlock;
import rillwright.curves.chart.mark.Ink;
import rillwright.curves.chart.mark.LetterMark;
import rillwright.curves.chart.mark.MarkGroup;
import rillwright.curves.chart.mark.ValueLabels;
import rillwright.curves.chart.mark.Words;
import rillwright.curves.chart.mark.Words.Anchor;

/**
 * A strip for each reading: a band for what was read, within its error, and marks for what causes
 * and the job as built predict, each strip on a scale of its own.
 */
final class PredictionStrips {
  private static final double TALLEST_ROW = 150;
  private static final double BAND_HEIGHT = 30;
  private static final double BELOW_BAND = 2;

  /** From the top of a row to its line where rows are as low as they can be, and that height. */
  private static final double LINE_AT = 48;

  private static final double LOWEST_ROW = 104;

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
    legend.add("by the file", (g, place) -> MarkGroup.diamond(g, Legend.middle(place)));
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
    double spare = Math.max(0, area.getHeight() - LOWEST_ROW);
    double y = area.getY() + LINE_AT + spare / 4;
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
    List<Mark> marks = new ArrayList<>(strip.marks());
    strip.asBuilt().ifPresent(marks::add);
    List<MarkGroup> groups = MarkGroup.list(marks, scale::x);
    groups.forEach(group -> group.draw(g, y));
    ValueLabels.of(groups, scale::x)
        .write(g, area.getX(), area.getMaxX(), y + BAND_HEIGHT / 2 + BELOW_BAND);
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
