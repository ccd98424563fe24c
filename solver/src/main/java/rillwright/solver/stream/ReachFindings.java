package rillwright.solver.stream;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import rillwright.solver.finding.Figure.Unit;
import rillwright.solver.finding.Finding;
import rillwright.solver.finding.Severity;

/** What there is to know about a reach in which water runs. */
final class ReachFindings {
  /** Shallower water wets stones and looks like no stream; common practice, no source. */
  private static final double SHALLOW_M = 0.015;

  /** Room that a liner should stand above the water in a reach; common practice, no source. */
  private static final double LINER_ROOM_M = 0.075;

  /** Fall over length from which water tumbles rather than runs; common practice, no source. */
  private static final double TUMBLING_SLOPE = 0.2;

  private final String stream;
  private final String what;
  private final Reach reach;
  private final ItemState item;
  private final List<Finding> findings = new ArrayList<>();

  /**
   * The findings of a reach.
   *
   * @param number its place in the stream, counted from 1
   */
  ReachFindings(String stream, int number, Reach reach, ItemState item) {
    this.stream = stream;
    this.what = "Reach " + number + " of \"" + stream + "\"";
    this.reach = reach;
    this.item = item;
  }

  List<Finding> list() {
    slope();
    linerEdge();
    depth();
    return findings;
  }

  private void slope() {
    double depth = item.depthM();
    if (reach.dropM() == 0) {
      findings.add(
          at(
                  Severity.NOTE,
                  "level-reach",
                  " is level: water backs up in it until it runs off at its end, about ")
              .depth("depth", depth)
              .then(" deep. Give it a fall, or call it a pool."));
    } else if (item.froude().orElse(0) > 1) {
      double froude = item.froude().getAsDouble();
      findings.add(
          at(Severity.ADVICE, "steeper-than-critical", " is steeper than critical (Froude number ")
              .figure(
                  "froude", froude, Unit.ONE, wording -> String.format(Locale.ROOT, "%.1f", froude))
              .then(
                  "): a shallow fast chute that splashes and holds no water. Make it flatter and"
                      + " take the height in a drop, or line it with larger stone."));
    } else if (reach.slope() > TUMBLING_SLOPE) {
      findings.add(
          at(Severity.NOTE, "tumbling-reach", " falls ")
              .depth("drop", reach.dropM())
              .then(" in ")
              .length("length", reach.lengthM())
              .then(
                  ", steeper than 1 in 5: there water tumbles over stones rather than runs, and"
                      + " depth and speed given for it mean little. Write it as steps with level"
                      + " pieces between."));
    }
  }

  private void linerEdge() {
    double depth = item.depthM();
    double edge = reach.linerEdgeM().orElse(Double.POSITIVE_INFINITY);
    double most = reach.depthM(item.flowM3PerS(), reach.band().most());
    if (most > edge) {
      boolean surely = depth > edge;
      findings.add(
          at(
                  surely ? Severity.PROBLEM : Severity.ADVICE,
                  "over-liner-edge",
                  (surely ? " runs over" : " may run over") + " its liner's edge: about ")
              .depth("depth", depth)
              .then(" of water, perhaps ")
              .depth("greatestDepth", most)
              .then(", and the edge stands ")
              .depth("linerEdge", edge)
              .then(" above the bed. Widen it, raise the edge or send less."));
    } else if (edge - depth < LINER_ROOM_M) {
      findings.add(
          at(Severity.ADVICE, "little-freeboard", ": the liner's edge stands only ")
              .depth("freeboard", edge - depth)
              .then(" above the water; ")
              .depth("usualLeastFreeboard", LINER_ROOM_M)
              .then(" or more is common practice."));
    }
  }

  private void depth() {
    double depth = item.depthM();
    if (depth < SHALLOW_M) {
      findings.add(
          at(Severity.ADVICE, "too-shallow", " runs only about ")
              .depth("depth", depth)
              .then(
                  " deep: wet stones rather than a stream. Make it narrower or send more water."));
    }
  }

  private Finding at(Severity severity, String code, String words) {
    return Finding.of(severity, code, stream, what + words);
  }
}
