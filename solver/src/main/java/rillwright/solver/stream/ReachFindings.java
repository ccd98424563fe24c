package rillwright.solver.stream;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import rillwright.solver.finding.Finding;
import rillwright.solver.finding.Wording;

/** What there is to know about a reach in which water runs. */
final class ReachFindings {
  /** Shallower water wets stones and looks like no stream; common practice, no source. */
  private static final double SHALLOW_M = 0.015;

  /** Room that a liner should stand above the water in a reach; common practice, no source. */
  private static final double LINER_ROOM_M = 0.075;

  private final String stream;
  private final String what;
  private final Reach reach;
  private final ItemState item;
  private final double depth;
  private final List<Finding> findings = new ArrayList<>();

  /**
   * Of a reach as it runs.
   *
   * @param stream its stream's name
   * @param what it is called in a sentence
   */
  ReachFindings(String stream, String what, Reach reach, ItemState item) {
    this.stream = stream;
    this.what = what;
    this.reach = reach;
    this.item = item;
    this.depth = item.depthM();
  }

  /** All of them. */
  List<Finding> list() {
    slope();
    liner();
    if (depth < SHALLOW_M) {
      add(
          "too-shallow",
          words ->
              what
                  + " runs only about "
                  + words.depth(depth)
                  + " deep: wet stones rather than a stream. Make it narrower or send more.");
    }
    return List.copyOf(findings);
  }

  private void slope() {
    if (reach.dropM() == 0) {
      add(
          "level-reach",
          words ->
              what
                  + " is level: water backs up in it until it runs off at its end, about "
                  + words.depth(depth)
                  + " deep. Give it a fall, or call it a pool.");
    } else if (item.froude().orElse(0) > 1) {
      double froude = item.froude().getAsDouble();
      add(
          "steeper-than-critical",
          words ->
              what
                  + " is steeper than critical (Froude number "
                  + String.format(Locale.ROOT, "%.1f", froude)
                  + "): a shallow fast chute that splashes and holds no water. Make it flatter and"
                  + " take the height in a drop, or line it with larger stone.");
    }
  }

  private void liner() {
    double edge = reach.linerEdgeM().orElse(Double.POSITIVE_INFINITY);
    double most = reach.depthM(item.flowM3PerS(), reach.band().most());
    if (most > edge) {
      boolean surely = depth > edge;
      add(
          "over-liner-edge",
          words ->
              what
                  + (surely ? " runs over" : " may run over")
                  + " its liner's edge: about "
                  + words.depth(depth)
                  + " of water, perhaps "
                  + words.depth(most)
                  + ", and the edge stands "
                  + words.depth(edge)
                  + " above the bed. Widen it, raise the edge or send less.");
    } else if (edge - depth < LINER_ROOM_M) {
      add(
          "little-freeboard",
          words ->
              what
                  + ": the liner's edge stands only "
                  + words.depth(edge - depth)
                  + " above the water; "
                  + words.depth(LINER_ROOM_M)
                  + " or more is common practice.");
    }
  }

  private void add(String code, Function<Wording, String> told) {
    findings.add(new StreamFinding(code, stream, told));
  }
}
