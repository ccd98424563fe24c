package rillwright.curves.chart.section;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import rillwright.curves.chart.content.SectionChart.Piece;
import rillwright.curves.chart.content.SectionChart.Side;
import rillwright.curves.chart.content.SectionChart.Symbol;
import rillwright.curves.chart.layout.TextBlock;
import rillwright.curves.chart.mark.Ink;
import rillwright.curves.chart.mark.Pen;
import rillwright.curves.chart.mark.Words;
import rillwright.curves.chart.mark.Words.Anchor;

/** A strip at its place on the paper. */
final class Profile {
  private static final double BELOW = 10;
  private static final double TICK = 8;
  private static final double NAME = 42;

  private final Strip strip;
  private final double left;
  private final double top;
  private final double bottom;
  private final LevelScale scale;
  private final List<Cell> cells = new ArrayList<>();

  Profile(
      Strip strip, List<Double> widths, double left, double top, double height, LevelScale scale) {
    this.strip = strip;
    this.left = left;
    this.top = top;
    this.bottom = top + height;
    this.scale = scale;
    double x = left;
    for (int i = 0; i < widths.size(); i++) {
      Piece piece = strip.columns().get(i).piece();
      boolean inChamber = piece.symbol() == Symbol.PUMP && i > 0 && symbol(i - 1) == Symbol.CHAMBER;
      cells.add(new Cell(piece, x, x + widths.get(i), inChamber, scale));
      if (inChamber) {
        cells.get(i - 1).widenTo(x + widths.get(i));
      }
      if (i > 0) {
        cells.get(i).join(cells.get(i - 1));
      }
      x += widths.get(i);
    }
  }

  private Symbol symbol(int column) {
    return strip.columns().get(column).piece().symbol();
  }

  double width() {
    return cells.get(cells.size() - 1).right() - left;
  }

  /** Paints all of it. */
  void paint(Graphics2D g) {
    paintScale(g);
    for (Cell cell : cells) {
      double x = cell.centerX();
      SectionPens.DROP.draw(g, new Line2D.Double(x, cell.lowestY(), x, bottom + BELOW - 3));
    }
    OpenWaterShapes.paint(g, cells);
    cells.forEach(cell -> SymbolShapes.paintMouth(g, cell));
    paintPipes(g);
    line(g, SectionPens.REST, Side::restHeadM);
    line(g, SectionPens.SHUT_OFF, Side::shutOffHeadM);
    line(g, SectionPens.GAUGE_HEAD, Side::gaugeHeadM);
    line(g, SectionPens.HEAD, Side::headM);
    cells.forEach(cell -> SymbolShapes.paint(g, cell));
    for (int i = 0; i < cells.size(); i++) {
      strip.columns().get(i).write(g, cells.get(i).centerX(), bottom + BELOW);
    }
  }

  private void paintScale(Graphics2D g) {
    scale
        .ticksM()
        .filter(level -> scale.y(level) >= top && scale.y(level) <= bottom)
        .forEach(
            level -> {
              double y = scale.y(level);
              g.setColor(Ink.GRID);
              g.setStroke(new BasicStroke(1));
              g.draw(new Line2D.Double(left, y, left + width(), y));
              TextBlock words = TextBlock.ofLine(scale.label(level), Ink.SMALL);
              double wordsTop = y - words.lineHeight() / 2;
              Words.write(g, words, left - TICK, wordsTop, Anchor.END, Ink.TEXT);
            });
    g.setColor(Ink.AXIS);
    g.draw(new Line2D.Double(left, top, left, bottom));
    TextBlock name = TextBlock.ofLines(List.of(strip.name()), Ink.AXIS_TITLE, width());
    Words.write(g, name, left, top - NAME, Anchor.START, Ink.TEXT);
  }

  private void paintPipes(Graphics2D g) {
    Path2D assumed = pipes(false);
    Path2D sure = pipes(true);
    SectionPens.ASSUMED_PIPE.draw(g, assumed);
    SectionPens.PIPE.draw(g, sure);
    SectionPens.BORE.draw(g, assumed);
    SectionPens.BORE.draw(g, sure);
    cells.stream()
        .flatMap(cell -> cell.suction().stream())
        .forEach(stretch -> SectionPens.SUCTION.draw(g, stretch));
  }

  private Path2D pipes(boolean sure) {
    Path2D pipes = new Path2D.Double();
    boolean on = false;
    for (Cell cell : cells) {
      on = cell.addPipe(pipes, sure, on);
    }
    return pipes;
  }

  private void line(Graphics2D g, Pen pen, Function<Side, OptionalDouble> head) {
    Path2D path = new Path2D.Double();
    boolean on = false;
    for (Cell cell : cells) {
      OptionalDouble start = head.apply(cell.piece().start());
      OptionalDouble end = head.apply(cell.piece().end());
      on = to(path, on, cell.left(), start);
      if (cell.piece().symbol() == Symbol.PUMP) {
        on = to(path, on, cell.centerX(), start);
        on = to(path, on, cell.centerX(), end);
      }
      on = to(path, on, cell.right(), end);
    }
    pen.draw(g, path);
  }

  /** Draws on to a head, if it is known. */
  private boolean to(Path2D path, boolean on, double x, OptionalDouble headM) {
    if (headM.isEmpty()) {
      return false;
    }
    double y = scale.y(headM.getAsDouble());
    if (on) {
      path.lineTo(x, y);
    } else {
      path.moveTo(x, y);
    }
    return true;
  }
}
