package rillwright.curves.chart.sketch;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import rillwright.curves.chart.content.SketchChart;
import rillwright.curves.chart.content.SketchChart.Link;

/**
 * How many lines lead to each point at most from where its water begins; a line that leads back
 * into a ring does not count.
 */
final class Ranks {
  private final List<List<Link>> onwards = new ArrayList<>();
  private final List<Link> kept = new ArrayList<>();
  private final int[] ranks;
  private final boolean[] seen;
  private final boolean[] open;

  private Ranks(SketchChart chart) {
    int count = chart.nodes().size();
    this.ranks = new int[count];
    this.seen = new boolean[count];
    this.open = new boolean[count];
    boolean[] fed = new boolean[count];
    for (int i = 0; i < count; i++) {
      onwards.add(new ArrayList<>());
    }
    for (Link link : chart.links()) {
      onwards.get(link.from()).add(link);
      fed[link.to()] = true;
    }
    for (boolean begins : new boolean[] {true, false}) {
      for (int i = 0; i < count; i++) {
        if (!seen[i] && fed[i] != begins) {
          visit(i);
        }
      }
    }
    Collections.reverse(kept);
    kept.forEach(link -> ranks[link.to()] = Math.max(ranks[link.to()], ranks[link.from()] + 1));
  }

  /** The rank of each point, from 0. */
  static List<Integer> of(SketchChart chart) {
    return Arrays.stream(new Ranks(chart).ranks).boxed().toList();
  }

  /** Keeps the lines on from a point, behind all that is kept on from where they lead. */
  private void visit(int node) {
    seen[node] = true;
    open[node] = true;
    for (Link link : onwards.get(node)) {
      if (!seen[link.to()]) {
        visit(link.to());
      }
    }
    open[node] = false;
    for (Link link : onwards.get(node)) {
      if (!open[link.to()]) {
        kept.add(link);
      }
    }
  }
}
