package rillwright.curves.chart.layout;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** What labels must keep clear of: curves, marks, the edge of the plot and labels placed before. */
public final class Obstacles {
  private static final double BETWEEN_BLOCKS = 8;

  private final Rectangle2D area;
  private final List<Polyline> curves = new ArrayList<>();
  private final List<Rectangle2D> blocks = new ArrayList<>();

  /**
   * An empty plot.
   *
   * @param area outside which no label may stand
   */
  public Obstacles(Rectangle2D area) {
    this.area = area;
  }

  /** Keeps labels off a curve or a line. */
  public void add(Polyline curve) {
    curves.add(curve);
  }

  /** Keeps labels off a rectangle. */
  public void add(Rectangle2D block) {
    blocks.add(block);
  }

  /** Keeps labels off a mark. */
  public void add(Point2D at, double radius) {
    add(new Rectangle2D.Double(at.getX() - radius, at.getY() - radius, 2 * radius, 2 * radius));
  }

  /** Whether a rectangle stands in the plot with at least a gap around it. */
  public boolean leaveFree(Rectangle2D label, double gap) {
    Rectangle2D grown = grown(label, gap);
    return area.contains(grown)
        && curves.stream().noneMatch(curve -> curve.crosses(grown))
        && blocks.stream().noneMatch(grown(label, gap + BETWEEN_BLOCKS)::intersects);
  }

  /** Whether no mark or label stands in a rectangle, whatever curves run through it. */
  public boolean isFreeOfBlocks(Rectangle2D place) {
    return area.contains(place) && blocks.stream().noneMatch(place::intersects);
  }

  /** How far a rectangle is from the nearest curve that is not its own. */
  double distanceToOthers(Rectangle2D label, Polyline own) {
    return curves.stream()
        .filter(curve -> !curve.equals(own))
        .mapToDouble(curve -> curve.distanceTo(label))
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  /** How many curves a line crosses. */
  long curvesOn(Line2D line) {
    return curves.stream()
        .filter(curve -> curve.segments().stream().anyMatch(line::intersectsLine))
        .count();
  }

  /** How many marks and labels a line crosses. */
  long blocksOn(Line2D line) {
    return blocks.stream().filter(line::intersects).count();
  }

  private static Rectangle2D grown(Rectangle2D label, double gap) {
    return new Rectangle2D.Double(
        label.getX() - gap,
        label.getY() - gap,
        label.getWidth() + 2 * gap,
        label.getHeight() + 2 * gap);
  }
}
