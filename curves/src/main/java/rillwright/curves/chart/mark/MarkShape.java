package rillwright.curves.chart.mark;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.Arrays;

/** Shapes that tell curves apart where colours do not. */
public enum MarkShape {
  DISC {
    @Override
    public Shape at(double x, double y, double r) {
      return new Ellipse2D.Double(x - r, y - r, 2 * r, 2 * r);
    }
  },
  SQUARE {
    @Override
    public Shape at(double x, double y, double r) {
      double half = 0.9 * r;
      return new Rectangle2D.Double(x - half, y - half, 2 * half, 2 * half);
    }
  },
  TRIANGLE {
    @Override
    public Shape at(double x, double y, double r) {
      return polygon(x, y, 1.25 * r, 3, 0);
    }
  },
  DIAMOND {
    @Override
    public Shape at(double x, double y, double r) {
      return polygon(x, y, 1.3 * r, 4, 0);
    }
  },
  TRIANGLE_DOWN {
    @Override
    public Shape at(double x, double y, double r) {
      return polygon(x, y, 1.25 * r, 3, Math.PI);
    }
  },
  STAR {
    @Override
    public Shape at(double x, double y, double r) {
      return star(x, y, 1.5 * r);
    }
  };

  private static final float EDGE = 2.2f;

  public abstract Shape at(double x, double y, double r);

  /** A regular polygon with a corner at an angle from the top. */
  private static Shape polygon(double x, double y, double r, int corners, double turn) {
    double[] radii = new double[corners];
    Arrays.fill(radii, r);
    return around(x, y, radii, turn);
  }

  /** A star of five rays, one of them upwards. */
  private static Shape star(double x, double y, double r) {
    double[] radii = new double[10];
    for (int i = 0; i < radii.length; i++) {
      radii[i] = i % 2 == 0 ? r : 0.45 * r;
    }
    return around(x, y, radii, 0);
  }

  /** Corners at equal angles around a point, each at its own distance. */
  private static Shape around(double x, double y, double[] radii, double turn) {
    Path2D path = new Path2D.Double();
    for (int i = 0; i < radii.length; i++) {
      double angle = turn + 2 * Math.PI * i / radii.length;
      double cornerX = x + radii[i] * Math.sin(angle);
      double cornerY = y - radii[i] * Math.cos(angle);
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
  public void draw(Graphics2D g, Point2D at, double r, Color edge, Color fill) {
    Shape shape = at(at.getX(), at.getY(), r);
    g.setColor(fill);
    g.fill(shape);
    g.setColor(edge);
    g.setStroke(new BasicStroke(EDGE));
    g.draw(shape);
  }
}
