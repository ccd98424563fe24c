package rillwright.curves.chart.section;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import rillwright.curves.chart.content.SectionChart.Symbol;
import rillwright.curves.chart.layout.TextBlock;
import rillwright.curves.chart.mark.Ink;
import rillwright.curves.chart.mark.Words;
import rillwright.curves.chart.mark.Words.Anchor;

/**
 * Signs of what stands in a pipe, after the general shapes of ISO 10628-2 (from memory): a ring
 * with a triangle is a pump, two triangles a valve, one of them full a check valve, a frame with a
 * dashed line a filter, a ring above the pipe an instrument. The others are plain shapes.
 */
final class SymbolShapes {
  private static final double R = 13;

  /** How far a skimmer's mouth cuts into the pond's bank. */
  private static final double BANK = 20;

  private static final double SILL = 22;

  private SymbolShapes() {}

  /** What lies under the head lines: the mouths of skimmers. */
  static void paintMouth(Graphics2D g, Cell cell) {
    if (cell.piece().symbol() == Symbol.SKIMMER) {
      skimmer(g, cell);
    }
  }

  static void paint(Graphics2D g, Cell cell) {
    double x = cell.centerX();
    double y = cell.symbolY();
    switch (cell.piece().symbol()) {
      case PUMP -> pump(g, x, y);
      case VALVE -> valve(g, x, y, Ink.PAPER);
      case CHECK_VALVE -> valve(g, x, y, Ink.TEXT);
      case GAUGE -> gauge(g, x, y);
      case FILTER -> filter(g, x, y);
      case LOSS -> both(g, new Rectangle2D.Double(x - R, y - 8, 2 * R, 16), Ink.PAPER);
      case FITTINGS -> fittings(g, x, y);
      case TEE, OUTLET -> both(g, new Ellipse2D.Double(x - 7, y - 7, 14, 14), Ink.TEXT);
      case HIGH_POINT -> both(g, triangle(x, y - 6, 9, -14), Ink.PAPER);
      case FALLING -> falling(g, cell);
      default -> {}
    }
  }

  private static void both(Graphics2D g, Shape shape, Color fill) {
    g.setColor(fill);
    g.fill(shape);
    SectionPens.EDGE.draw(g, shape);
  }

  /** Its point lies a height below its base. */
  private static Path2D triangle(double x, double baseY, double half, double height) {
    Path2D path = new Path2D.Double();
    path.moveTo(x - half, baseY);
    path.lineTo(x + half, baseY);
    path.lineTo(x, baseY + height);
    path.closePath();
    return path;
  }

  private static void pump(Graphics2D g, double x, double y) {
    both(g, new Ellipse2D.Double(x - R - 2, y - R - 2, 2 * R + 4, 2 * R + 4), Ink.PAPER);
    Path2D path = new Path2D.Double();
    path.moveTo(x - 7, y - R);
    path.lineTo(x + R + 2, y);
    path.lineTo(x - 7, y + R);
    SectionPens.EDGE.draw(g, path);
  }

  private static void valve(Graphics2D g, double x, double y, Color right) {
    both(g, side(x, y, -1), Ink.PAPER);
    both(g, side(x, y, 1), right);
  }

  private static Path2D side(double x, double y, int way) {
    Path2D path = new Path2D.Double();
    path.moveTo(x, y);
    path.lineTo(x + way * R, y - 9);
    path.lineTo(x + way * R, y + 9);
    path.closePath();
    return path;
  }

  private static void gauge(Graphics2D g, double x, double y) {
    SectionPens.EDGE.draw(g, new Line2D.Double(x, y, x, y - 12));
    both(g, new Ellipse2D.Double(x - 11, y - 34, 22, 22), Ink.PAPER);
    TextBlock letter = TextBlock.ofLine("P", Ink.SMALL);
    Words.write(g, letter, x, y - 23 - letter.lineHeight() / 2, Anchor.MIDDLE, Ink.TEXT);
  }

  private static void filter(Graphics2D g, double x, double y) {
    both(g, new Rectangle2D.Double(x - R, y - R, 2 * R, 2 * R), Ink.PAPER);
    SectionPens.DASHED.draw(g, new Line2D.Double(x, y - R, x, y + R));
  }

  private static void fittings(Graphics2D g, double x, double y) {
    Path2D bend = new Path2D.Double();
    bend.moveTo(x - 7, y + 7);
    bend.lineTo(x - 7, y - 7);
    bend.lineTo(x + 7, y - 7);
    both(g, new Rectangle2D.Double(x - 11, y - 11, 22, 22), Ink.PAPER);
    SectionPens.GROUND.draw(g, bend);
  }

  /** A mouth in the bank: water over its sill. */
  private static void skimmer(Graphics2D g, Cell cell) {
    double left = cell.left() - BANK;
    double wide = cell.right() + BANK / 2 - left;
    double sill = cell.startY();
    g.setColor(SectionPens.EARTH);
    g.fill(new Rectangle2D.Double(left, sill, wide, SILL));
    cell.piece()
        .start()
        .headM()
        .ifPresent(
            head -> {
              double level = cell.y(head);
              g.setColor(SectionPens.WATER);
              g.fill(new Rectangle2D.Double(left, level, wide, Math.max(0, sill - level)));
            });
    SectionPens.GROUND.draw(g, new Line2D.Double(left, sill, left + wide, sill));
    SectionPens.EDGE.draw(
        g, new Line2D.Double(cell.centerX(), sill - 6, cell.centerX() - 9, sill - 24));
  }

  private static void falling(Graphics2D g, Cell cell) {
    double top = cell.startY();
    double foot = cell.endY();
    Path2D path = new Path2D.Double();
    path.moveTo(cell.left(), top);
    path.quadTo(cell.centerX(), top, cell.centerX(), foot);
    SectionPens.FALLING.draw(g, path);
  }
}
