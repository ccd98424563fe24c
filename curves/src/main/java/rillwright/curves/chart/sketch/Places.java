package rillwright.curves.chart.sketch;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import rillwright.curves.chart.content.SketchChart;
import rillwright.curves.chart.content.SketchChart.Link;
import rillwright.curves.chart.layout.AxisRange;

/**
 * Where the points of a sketch stand: across by the way of the water, up by their height; those of
 * unknown height between the points that they are joined to.
 */
public final class Places {
  /** Points nearer than this would cover each other. */
  private static final double APART = 64;

  private static final int ROUNDS = 60;

  private final SketchChart chart;
  private final Rectangle2D area;
  private final AxisRange levels;
  private final List<Integer> ranks;
  private final double[] y;
  private final double[] x;

  private Places(SketchChart chart, Rectangle2D area, AxisRange levels) {
    this.chart = chart;
    this.area = area;
    this.levels = levels;
    this.ranks = Ranks.of(chart);
    this.y = new double[chart.nodes().size()];
    this.x = new double[chart.nodes().size()];
    placeUp();
    placeAcross();
  }

  /** The places, in the order of the points. */
  public static List<Point2D> of(SketchChart chart, Rectangle2D area, AxisRange levels) {
    Places places = new Places(chart, area, levels);
    return IntStream.range(0, places.x.length)
        .<Point2D>mapToObj(i -> new Point2D.Double(places.x[i], places.y[i]))
        .toList();
  }

  /** Height of a level in the unit of the scale. */
  public static double y(Rectangle2D area, AxisRange levels, double level) {
    double share = (level - levels.min()) / (levels.max() - levels.min());
    return area.getMaxY() - share * area.getHeight();
  }

  private boolean isKnown(int node) {
    return chart.nodes().get(node).heightM().isPresent();
  }

  private void placeUp() {
    for (int i = 0; i < y.length; i++) {
      y[i] =
          isKnown(i)
              ? y(
                  area,
                  levels,
                  chart.levelUnit().fromSi(chart.nodes().get(i).heightM().getAsDouble()))
              : area.getCenterY();
    }
    for (int round = 0; round < ROUNDS; round++) {
      for (int i = 0; i < y.length; i++) {
        if (!isKnown(i)) {
          y[i] = neighboursY(i);
        }
      }
    }
    for (int rank = 0; rank <= mostRank(); rank++) {
      spread(atRank(rank).stream().filter(node -> !isKnown(node)).toList());
    }
  }

  private double neighboursY(int node) {
    double sum = 0;
    int count = 0;
    for (Link link : chart.links()) {
      if (link.from() == node || link.to() == node) {
        sum += y[link.from() == node ? link.to() : link.from()];
        count++;
      }
    }
    return count == 0 ? y[node] : sum / count;
  }

  /** Moves points of unknown height apart, in the room that there is. */
  private void spread(List<Integer> nodes) {
    if (nodes.isEmpty()) {
      return;
    }
    double apart = Math.min(APART, area.getHeight() / nodes.size());
    for (int i = 1; i < nodes.size(); i++) {
      y[nodes.get(i)] = Math.max(y[nodes.get(i)], y[nodes.get(i - 1)] + apart);
    }
    double over = y[nodes.get(nodes.size() - 1)] - area.getMaxY();
    for (int node : nodes) {
      y[node] = Math.max(area.getMinY(), y[node] - Math.max(0, over));
    }
  }

  private List<Integer> atRank(int rank) {
    return IntStream.range(0, y.length)
        .filter(node -> ranks.get(node) == rank)
        .boxed()
        .sorted(Comparator.comparingDouble((Integer node) -> y[node]))
        .toList();
  }

  private int mostRank() {
    return ranks.stream().mapToInt(Integer::intValue).max().orElse(0);
  }

  /** Points of a rank one over the other; those that would cover each other side by side. */
  private void placeAcross() {
    double wide = area.getWidth() / (mostRank() + 1);
    for (int rank = 0; rank <= mostRank(); rank++) {
      List<Integer> nodes = atRank(rank);
      List<Integer> near = new ArrayList<>();
      for (int i = 0; i < nodes.size(); i++) {
        near.add(nodes.get(i));
        boolean last = i + 1 == nodes.size();
        if (last || y[nodes.get(i + 1)] - y[nodes.get(i)] > APART / 2) {
          double step = wide / (near.size() + 1);
          for (int k = 0; k < near.size(); k++) {
            x[near.get(k)] = area.getX() + rank * wide + (k + 1) * step;
          }
          near.clear();
        }
      }
    }
  }
}
