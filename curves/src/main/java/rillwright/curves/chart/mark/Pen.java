package rillwright.curves.chart.mark;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.util.List;

/**
 * How a curve is drawn.
 *
 * @param color of the line
 * @param width of the line
 * @param dash lengths of dashes and gaps in turn; empty is solid
 */
public record Pen(Color color, float width, List<Float> dash) {
  private static final List<Color> PUMP_COLORS = List.of(Ink.BLUE, Ink.GREEN, Ink.BLACK);
  private static final List<Color> SYSTEM_COLORS =
      List.of(Ink.VERMILION, Ink.BLACK, Ink.GREEN, Ink.VERMILION, Ink.BLUE);
  private static final List<Color> PANEL_COLORS =
      List.of(Ink.BLUE, Ink.VERMILION, Ink.GREEN, Ink.BLACK);
  private static final List<List<Float>> SYSTEM_DASHES =
      List.of(
          List.of(26f, 9f),
          List.of(26f, 8f, 5f, 8f),
          List.of(12f, 7f),
          List.of(26f, 8f, 5f, 8f, 5f, 8f),
          List.of(40f, 12f),
          List.of(5f, 5f),
          List.of(40f, 8f, 14f, 8f),
          List.of(14f, 5f, 3f, 5f, 3f, 5f, 3f, 5f));
  private static final List<Float> BEYOND = List.of(9f, 8f);

  public Pen {
    dash = List.copyOf(dash);
  }

  /** Of the pump curve of a number, from 0; the more there are, the thinner. */
  public static Pen pump(int number, int count) {
    Color color = PUMP_COLORS.get(number % PUMP_COLORS.size());
    return new Pen(color, count > 1 ? 3 : 4.4f, List.of());
  }

  /** Of the system curve of a number, from 0. */
  public static Pen system(int number, int count) {
    return new Pen(
        SYSTEM_COLORS.get(number % SYSTEM_COLORS.size()),
        count > 1 ? 3 : 3.6f,
        SYSTEM_DASHES.get(number % SYSTEM_DASHES.size()));
  }

  /** Of the curve of a number, from 0, in a chart of several plots. */
  public static Pen panel(int number) {
    return number == 0
        ? new Pen(Ink.BLUE, 3.6f, List.of())
        : new Pen(
            PANEL_COLORS.get(number % PANEL_COLORS.size()),
            3.6f,
            SYSTEM_DASHES.get(number % SYSTEM_DASHES.size()));
  }

  public static Pen power() {
    return new Pen(Ink.GREEN, 2.6f, List.of(20f, 6f, 3f, 6f, 3f, 6f));
  }

  /** The same past the data sheet. */
  public Pen beyond() {
    return new Pen(color, 0.8f * width, BEYOND);
  }

  /** A darker shade of its colour, for words. */
  public Color textColor() {
    return color.equals(Ink.BLACK) ? color : color.darker();
  }

  public void draw(Graphics2D g, Shape line) {
    g.setColor(color);
    g.setStroke(stroke());
    g.draw(line);
  }

  private BasicStroke stroke() {
    if (dash.isEmpty()) {
      return new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
    }
    float[] lengths = new float[dash.size()];
    for (int i = 0; i < lengths.length; i++) {
      lengths[i] = dash.get(i);
    }
    return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, lengths, 0);
  }
}
