package rillwright.curves.chart.mark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Shape;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The geometry of marks: where they lie, how large they are, how many corners they have. */
class MarkShapeTest {
  private static final double X = 120;
  private static final double Y = 80;
  private static final double R = 10;

  @ParameterizedTest
  @EnumSource
  void liesAroundItsPoint(MarkShape mark) {
    Shape shape = mark.at(X, Y, R);
    assertTrue(shape.contains(X, Y), mark + " holds its point");
    Rectangle2D box = shape.getBounds2D();
    assertEquals(X, box.getCenterX(), 1e-9, mark + " is even to both sides");
    for (double side : new double[] {X - box.getMinX(), Y - box.getMinY(), box.getMaxY() - Y}) {
      assertTrue(side > 0.5 * R && side < 1.6 * R, mark + ": " + side);
    }
  }

  /** So that no curve looks more important: areas by the formulas of regular polygons. */
  @ParameterizedTest
  @CsvSource({
    "SQUARE, 3.24", // (2 · 0.9)²
    "TRIANGLE, 2.029747040", // 3 √3/4 · 1.25²
    "TRIANGLE_DOWN, 2.029747040",
    "DIAMOND, 3.38", // 2 · 1.3²
    "STAR, 2.975662840", // 5 · 1.5 · 0.45 · 1.5 · sin 36°
  })
  void hasTheAreaOfItsFormula(MarkShape mark, double areaByRadiusSquared) {
    assertEquals(areaByRadiusSquared * R * R, area(mark.at(X, Y, R)), 1e-6 * R * R);
  }

  @ParameterizedTest
  @CsvSource({"SQUARE, 4", "TRIANGLE, 3", "TRIANGLE_DOWN, 3", "DIAMOND, 4", "STAR, 10"})
  void hasItsCorners(MarkShape mark, int corners) {
    assertEquals(corners, corners(mark.at(X, Y, R)));
  }

  @Test
  void trianglesPointUpAndDown() {
    Rectangle2D up = MarkShape.TRIANGLE.at(X, Y, R).getBounds2D();
    Rectangle2D down = MarkShape.TRIANGLE_DOWN.at(X, Y, R).getBounds2D();
    assertEquals(Y - 1.25 * R, up.getMinY(), 1e-9);
    assertEquals(Y + 1.25 * R, down.getMaxY(), 1e-9);
  }

  /** Gauss's formula for polygons. */
  private static double area(Shape polygon) {
    double sum = 0;
    double[] start = new double[6];
    double[] before = new double[6];
    for (PathIterator path = polygon.getPathIterator(null); !path.isDone(); path.next()) {
      double[] at = new double[6];
      int kind = path.currentSegment(at);
      if (kind == PathIterator.SEG_MOVETO) {
        start = at;
      } else {
        double[] to = kind == PathIterator.SEG_CLOSE ? start : at;
        sum += before[0] * to[1] - to[0] * before[1];
      }
      before = kind == PathIterator.SEG_CLOSE ? start : at;
    }
    return Math.abs(sum) / 2;
  }

  private static int corners(Shape polygon) {
    int corners = 0;
    double[] at = new double[6];
    double[] start = new double[6];
    for (PathIterator path = polygon.getPathIterator(null); !path.isDone(); path.next()) {
      int kind = path.currentSegment(at);
      boolean returns = kind == PathIterator.SEG_LINETO && at[0] == start[0] && at[1] == start[1];
      if (kind == PathIterator.SEG_MOVETO) {
        start = at.clone();
      }
      corners += kind != PathIterator.SEG_CLOSE && !returns ? 1 : 0;
    }
    return corners;
  }
}
