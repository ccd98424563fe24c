package rillwright.curves.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;

/** Shapes that tell curves apart where colours do not. */
enum Mark {
  DISC {
    @Override
    Shape at(double x, double y, double r) {
      return new Ellipse2D.Double(x - r, y - r, 2 * r, 2 * r);
    }
  },
  SQUARE {
    @Override
    Shape at(double x, double y, double r) {
      double half = 0.9 * r;
      return new Rectangle2D.Double(x - half, y - half, 2 * half, 2 * half);
    }
  },
  TRIANGLE {
    @Override
    Shape at(double x, double y, double r) {
      return polygon(x, y, 1.25 * r, 3);
    }
  },
  DIAMOND {
    @Override
    Shape at(double x, double y, double r) {
      return polygon(x, y, 1.3 * r, 4);
    }
  };

  private static final float EDGE = 2.2f;

  abstract Shape at(double x, double y, double r);

  /** A regular polygon with a corner on top. */
  private static Shape polygon(double x, double y, double r, int corners) {
    Path2D path = new Path2D.Double();
    for (int i = 0; i < corners; i++) {
      double angle = 2 * Math.PI * i / corners;
      double cornerX = x + r * Math.sin(angle);
      double cornerY = y - r * Math.cos(angle);
      if (i == 0) {
        path.moveTo(cornerX, cornerY);
      } else {
        path.lineTo(cornerX, cornerY);
      }
    }
    path.closePath();
    return path;
  }

  /** Draws it, filled or open. */
  void draw(Graphics2D g, Point2D at, double r, Color edge, Color fill) {
    Shape shape = at(at.getX(), at.getY(), r);
    g.setColor(fill);
    g.fill(shape);
    g.setColor(edge);
    g.setStroke(new BasicStroke(EDGE));
    g.draw(shape);
  }
}
