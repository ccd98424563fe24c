package rillwright.curves.chart.section;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.List;
import rillwright.curves.chart.content.SectionChart.OpenWater;
import rillwright.curves.chart.content.SectionChart.Symbol;
import rillwright.curves.chart.layout.Polyline;

/** Ponds, chambers, boxes, pools and beds with the water in them. */
final class OpenWaterShapes {
  private static final double WALL = 7;

  /** How far from a step the water falls. */
  private static final double SHEET = 10;

  private OpenWaterShapes() {}

  static void paint(Graphics2D g, List<Cell> cells) {
    cells.forEach(cell -> cell.piece().water().ifPresent(water -> paint(g, cell, water)));
  }

  private static void paint(Graphics2D g, Cell cell, OpenWater water) {
    Symbol symbol = cell.piece().symbol();
    if (symbol == Symbol.REACH || symbol == Symbol.STEP) {
      bed(g, cell, water);
    } else {
      vessel(g, cell, water);
    }
  }

  /** A bed with the water on it; at a step the water falls in the middle. */
  private static void bed(Graphics2D g, Cell cell, OpenWater water) {
    boolean drops = cell.piece().symbol() == Symbol.STEP;
    Path2D bed = new Path2D.Double();
    bed.moveTo(cell.left(), cell.startY());
    if (drops) {
      bed.lineTo(cell.centerX(), cell.startY());
      bed.lineTo(cell.centerX(), cell.endY());
    }
    bed.lineTo(cell.right(), cell.endY());
    if (water.startM().isPresent() && water.endM().isPresent()) {
      double above = cell.y(water.startM().getAsDouble());
      double below = cell.y(water.endM().getAsDouble());
      Path2D surface = new Path2D.Double();
      surface.moveTo(cell.left(), above);
      if (drops) {
        double foot = Math.min(cell.right(), cell.centerX() + SHEET);
        surface.lineTo(cell.centerX(), above);
        surface.quadTo(foot, above, foot, below);
      }
      surface.lineTo(cell.right(), below);
      Path2D wet = new Path2D.Double(surface);
      wet.lineTo(cell.right(), cell.endY());
      if (drops) {
        wet.lineTo(cell.centerX(), cell.endY());
        wet.lineTo(cell.centerX(), cell.startY());
      }
      wet.lineTo(cell.left(), cell.startY());
      wet.closePath();
      fill(g, wet, SectionPens.WATER);
      SectionPens.SURFACE.draw(g, surface);
    }
    SectionPens.GROUND.draw(g, bed);
  }

  /** Upright walls up to the edge, water between them. */
  private static void vessel(Graphics2D g, Cell cell, OpenWater water) {
    boolean isPond = cell.piece().symbol() == Symbol.BASIN;
    boolean isPool = cell.piece().symbol() == Symbol.POOL;
    double inset = isPond || isPool ? 0 : WALL;
    double left = cell.left() + inset;
    double right = cell.waterRight() - inset;
    double bottom = cell.y(water.bottomM());
    double surface = water.startM().isPresent() ? cell.y(water.startM().getAsDouble()) : bottom;
    double edge = water.edgeM().isPresent() ? cell.y(water.edgeM().getAsDouble()) : surface - 8;
    double slope = isPond ? Math.min(16, (right - left) / 5) : 0;
    double wallLeft = isPond ? left + slope : left;
    double wallRight = isPond ? right - slope : right;
    if (water.startM().isPresent()) {
      Path2D wet = new Path2D.Double();
      wet.moveTo(wallLeft, surface);
      wet.lineTo(wallRight, surface);
      wet.lineTo(wallRight - slope, bottom);
      wet.lineTo(wallLeft + slope, bottom);
      wet.closePath();
      fill(g, wet, SectionPens.WATER);
      SectionPens.SURFACE.draw(g, new Line2D.Double(wallLeft, surface, wallRight, surface));
      levelSign(g, (wallLeft + wallRight) / 2, surface);
    }
    Path2D wall = new Path2D.Double();
    if (isPond) {
      wall.moveTo(left, edge);
    }
    lineOrMove(wall, isPond, wallLeft, edge);
    wall.lineTo(wallLeft + slope, bottom);
    wall.lineTo(wallRight - slope, bottom);
    wall.lineTo(wallRight, edge);
    if (isPond) {
      wall.lineTo(right, edge);
      hatch(g, left, wallLeft, edge);
      hatch(g, wallRight, right, edge);
    }
    SectionPens.GROUND.draw(g, wall);
  }

  private static void lineOrMove(Path2D path, boolean goesOn, double x, double y) {
    if (goesOn) {
      path.lineTo(x, y);
    } else {
      path.moveTo(x, y);
    }
  }

  /** Short strokes below a line that is ground. */
  private static void hatch(Graphics2D g, double from, double to, double y) {
    for (double x = from; x < to; x += 7) {
      SectionPens.EDGE.draw(g, new Line2D.Double(x + 5, y + 2, x, y + 9));
    }
  }

  /** The open triangle of a water level. */
  private static void levelSign(Graphics2D g, double x, double y) {
    Path2D sign =
        new Polyline(
                List.of(
                    new Point2D.Double(x - 8, y - 12),
                    new Point2D.Double(x + 8, y - 12),
                    new Point2D.Double(x, y - 1)))
            .path();
    sign.closePath();
    SectionPens.SURFACE.draw(g, sign);
  }

  private static void fill(Graphics2D g, Path2D shape, Color color) {
    g.setColor(color);
    g.fill(shape);
  }
}
