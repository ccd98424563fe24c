package rillwright.curves.chart.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class PolylineTest {
  private static final Rectangle2D AREA = new Rectangle2D.Double(0, 0, 100, 100);

  private static Polyline line(double... coordinates) {
    List<Point2D> points = new ArrayList<>();
    for (int i = 0; i < coordinates.length; i += 2) {
      points.add(new Point2D.Double(coordinates[i], coordinates[i + 1]));
    }
    return new Polyline(points);
  }

  @Test
  void aLineInsideIsLeftAsItIs() {
    Polyline inside = line(1, 1, 50, 60, 99, 2);
    assertEquals(1, inside.within(AREA).size());
    assertEquals(inside.points(), inside.within(AREA).get(0).points());
  }

  @Test
  void aLineThatLeavesAndComesBackIsTwoPieces() {
    List<Polyline> pieces = line(10, 50, 50, -50, 90, 50).within(AREA);
    assertEquals(2, pieces.size());
    assertEquals(new Point2D.Double(30, 0), pieces.get(0).points().get(1));
    assertEquals(new Point2D.Double(70, 0), pieces.get(1).points().get(0));
  }

  @Test
  void aLineOutsideIsNothing() {
    assertTrue(line(-10, -10, 200, -10).within(AREA).isEmpty());
    assertTrue(line(-10, 95, 50, 200).within(AREA).isEmpty());
  }

  @Test
  void findsPointsByTheirShareOfTheLength() {
    Polyline line = line(0, 0, 30, 0, 30, 30);
    assertEquals(60, line.length(), 1e-12);
    assertEquals(new Point2D.Double(30, 15), line.at(0.75));
    assertEquals(new Point2D.Double(30, 30), line.at(1));
  }

  @Test
  void measuresHowFarItIsFromARectangle() {
    Rectangle2D label = new Rectangle2D.Double(40, 40, 20, 10);
    assertEquals(0, line(0, 45, 100, 45).distanceTo(label));
    assertEquals(10, line(0, 30, 100, 30).distanceTo(label), 1e-12);
    assertEquals(5, line(63, 54, 63, 90).distanceTo(label), 1e-12);
    assertEquals(5, line(20, 20, 36, 37).distanceTo(label), 1e-12);
  }
}
