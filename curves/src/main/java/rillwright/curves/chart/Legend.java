package rillwright.curves.chart;

import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;
import rillwright.curves.chart.layout.TextBlock;
import rillwright.curves.chart.mark.CurveMark;
import rillwright.curves.chart.mark.Ink;
import rillwright.curves.chart.mark.LetterMark;
import rillwright.curves.chart.mark.Pen;
import rillwright.curves.chart.mark.Words;
import rillwright.curves.chart.mark.Words.Anchor;

/** The names of the curves, each beside a sample, in rows below the plot. */
final class Legend {
  private static final double SAMPLE = 66;
  private static final double GAP = 12;
  private static final double BETWEEN = 36;
  private static final double ROW = 36;

  private final double width;
  private final List<Entry> entries = new ArrayList<>();
  private double sampleWidth = SAMPLE;

  /** A line of the legend: a name with the sample drawn before it. */
  record Entry(String name, Sample sample) {}

  /** Draws a sample of a curve. */
  interface Sample {
    void draw(Graphics2D g, Line2D place);
  }

  /**
   * An empty legend.
   *
   * @param width that it may take
   */
  Legend(double width) {
    this.width = width;
  }

  void add(String name, Sample sample) {
    entries.add(new Entry(name, sample));
  }

  void add(String name, Pen pen) {
    add(name, pen::draw);
  }

  /**
   * A curve with a letter at its end; its sample is longer, to show all dashes before the letter.
   */
  void addLettered(String name, Pen pen, String letter) {
    sampleWidth = SAMPLE + 2 * LetterMark.RADIUS;
    add(
        name,
        (g, place) -> {
          pen.draw(g, place);
          double x = place.getX2() - LetterMark.RADIUS;
          LetterMark.draw(g, letter, new Point2D.Double(x, place.getY2()));
        });
  }

  void add(String name, Pen pen, CurveMark mark) {
    add(
        name,
        (g, place) -> {
          pen.draw(g, place);
          mark.draw(g, middle(place));
        });
  }

  static Point2D middle(Line2D place) {
    return new Point2D.Double((place.getX1() + place.getX2()) / 2, place.getY1());
  }

  private TextBlock words(Entry entry) {
    return TextBlock.ofLines(
        List.of(entry.name()), Ink.LEGEND, width / 2 - sampleWidth - GAP - BETWEEN);
  }

  private double widthOf(Entry entry) {
    return sampleWidth + GAP + words(entry).width() + BETWEEN;
  }

  /** Widths of the columns, as many columns as there is room for; filled from top to bottom. */
  private List<Double> columns() {
    for (int count = entries.size(); count > 1; count--) {
      List<Double> widths = columnsOf((entries.size() + count - 1) / count);
      if (widths.stream().mapToDouble(Double::doubleValue).sum() - BETWEEN <= width) {
        return widths;
      }
    }
    return columnsOf(entries.size());
  }

  private List<Double> columnsOf(int rows) {
    List<Double> widths = new ArrayList<>();
    for (int first = 0; first < entries.size(); first += rows) {
      List<Entry> column = entries.subList(first, Math.min(entries.size(), first + rows));
      widths.add(column.stream().mapToDouble(this::widthOf).max().orElseThrow());
    }
    return widths;
  }

  private int rows() {
    int columns = Math.max(1, columns().size());
    return (entries.size() + columns - 1) / columns;
  }

  double height() {
    return rows() * ROW;
  }

  void paint(Graphics2D g, double left, double top) {
    int rows = rows();
    double x = left;
    int next = 0;
    for (double columnWidth : columns()) {
      int end = Math.min(entries.size(), next + rows);
      for (int row = 0; next < end; row++, next++) {
        paint(g, entries.get(next), x, top + row * ROW);
      }
      x += columnWidth;
    }
  }

  private void paint(Graphics2D g, Entry entry, double x, double y) {
    entry.sample().draw(g, new Line2D.Double(x, y + ROW / 2, x + sampleWidth, y + ROW / 2));
    TextBlock words = words(entry);
    double textTop = y + (ROW - words.lineHeight()) / 2;
    Words.write(g, words, x + sampleWidth + GAP, textTop, Anchor.START, Ink.TEXT);
  }
}
