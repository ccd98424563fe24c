package rillwright.solver.stream;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import rillwright.solver.finding.Finding;
import rillwright.solver.finding.Wording;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Fall;
import rillwright.solver.steady.PointState;

/** What there is to know about streams: geometry that does not fit, water that runs badly. */
final class StreamFindings {
  /** A stream whose drops miss the crest's height by more than this share of it, or length. */
  private static final double MISSING_SHARE = 0.01;

  private static final double MISSING_M = 0.01;

  /** Shallower water wets stones and looks like no stream; common practice, no source. */
  private static final double SHALLOW_M = 0.015;

  /** Room that a liner should stand above the water in a reach; common practice, no source. */
  private static final double LINER_ROOM_M = 0.075;

  private static final double LOST_SHARE = 0.01;

  private final RunningWater running;
  private final RunningWater toppedUp;
  private final List<LevelBudget> budgets;
  private final List<Finding> findings = new ArrayList<>();

  StreamFindings(RunningWater running, RunningWater toppedUp, List<LevelBudget> budgets) {
    this.running = running;
    this.toppedUp = toppedUp;
    this.budgets = budgets;
  }

  /** All of them, the gravest first. */
  List<Finding> list() {
    starved();
    budgets.forEach(budget -> findings.addAll(new LevelFindings(budget, running).list()));
    balance();
    for (StreamState stream : running.streams()) {
      drops(stream);
      int number = 0;
      for (ItemState item : stream.items()) {
        number++;
        if (item.item() instanceof Reach reach && item.flowM3PerS() > 0) {
          reach(stream.stream().name(), number, reach, item);
        }
      }
    }
    return List.copyOf(findings);
  }

  private void starved() {
    for (PointState state : running.state().points()) {
      if (state.isStarved()) {
        String name = state.point().name().value();
        boolean fullToo = toppedUp.state().point(state.point().name()).isStarved();
        findings.add(
            new StreamFinding(
                "starves-at-start",
                name,
                words ->
                    "Once the stream has filled, \""
                        + name
                        + "\" is drawn down to the pump's intake: the pump takes in air and gives only"
                        + " what comes in. "
                        + (fullToo
                            ? "Topping up does not help; the intake is too small for this pump."
                            : "Topped up to its level at rest it would hold; a lower sill, a wider"
                                + " pond, a level kept by an automatic fill or less water in the"
                                + " stream would help.")));
      }
    }
  }

  private void balance() {
    double largest = 0;
    for (PointState state : running.state().points()) {
      largest = Math.max(largest, Math.abs(state.outflowM3PerS()));
    }
    Homes homes = new Homes(running.plan());
    for (LevelBudget budget : budgets) {
      Basin basin = budget.basin();
      double gains = running.state().point(basin.name()).outflowM3PerS();
      for (PointState state : running.state().points()) {
        boolean comesHome =
            state.point().spill().isPresent()
                && homes.of(state.point()).filter(basin.name()::equals).isPresent();
        gains += comesHome ? state.outflowM3PerS() : 0;
      }
      double gain = gains;
      if (Math.abs(gain) > LOST_SHARE * largest && largest > 0) {
        findings.add(
            new StreamFinding(
                "basin-not-in-balance",
                basin.name().value(),
                words ->
                    "\""
                        + basin.name().value()
                        + "\" "
                        + (gain < 0 ? "loses " : "gains ")
                        + words.flow(Math.abs(gain))
                        + " as long as the pump runs, so its level does not come to rest; the levels"
                        + " told leave that out. Say where the water comes home (\"returns to\", or"
                        + " a stream's \"to\")."));
      }
    }
  }

  private void drops(StreamState state) {
    Stream stream = state.stream();
    if (!(running.plan().network().point(stream.from()) instanceof Fall fall)
        || !(running.plan().network().point(stream.to()) instanceof Basin basin)) {
      return;
    }
    double height = fall.crestM() - basin.levelM();
    double sum = stream.dropM();
    double off = sum - height;
    if (Math.abs(off) > Math.max(MISSING_M, MISSING_SHARE * Math.abs(height))) {
      findings.add(
          new StreamFinding(
              "drops-do-not-add-up",
              stream.name(),
              words ->
                  "The drops of \""
                      + stream.name()
                      + "\" add up to "
                      + words.length(sum)
                      + ", but from the crest of \""
                      + fall.name().value()
                      + "\" to the level of \""
                      + basin.name().value()
                      + "\" it is "
                      + words.length(height)
                      + ": "
                      + words.length(Math.abs(off))
                      + (off < 0 ? " are missing." : " too much.")
                      + " Measure again; a stream that is too flat backs up."));
    }
  }

  private void reach(String stream, int number, Reach reach, ItemState item) {
    String what = "Reach " + number + " of \"" + stream + "\"";
    double depth = item.depthM();
    if (reach.dropM() == 0) {
      add(
          "level-reach",
          stream,
          words ->
              what
                  + " is level: water backs up in it until it runs off at its end, about "
                  + words.depth(depth)
                  + " deep. Give it a fall, or call it a pool.");
    } else if (item.froude().orElse(0) > 1) {
      double froude = item.froude().getAsDouble();
      add(
          "steeper-than-critical",
          stream,
          words ->
              what
                  + " is steeper than critical (Froude number "
                  + String.format(Locale.ROOT, "%.1f", froude)
                  + "): a shallow fast chute that splashes and holds no water. Make it flatter and"
                  + " take the height in a drop, or line it with larger stone.");
    }
    double edge = reach.linerEdgeM().orElse(Double.POSITIVE_INFINITY);
    double most = reach.depthM(item.flowM3PerS(), reach.band().most());
    if (most > edge) {
      boolean surely = depth > edge;
      add(
          "over-liner-edge",
          stream,
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
          stream,
          words ->
              what
                  + ": the liner's edge stands only "
                  + words.depth(edge - depth)
                  + " above the water; "
                  + words.depth(LINER_ROOM_M)
                  + " or more is common practice.");
    }
    if (depth < SHALLOW_M) {
      add(
          "too-shallow",
          stream,
          words ->
              what
                  + " runs only about "
                  + words.depth(depth)
                  + " deep: wet stones rather than a stream. Make it narrower or send more.");
    }
  }

  private void add(String code, String at, Function<Wording, String> told) {
    findings.add(new StreamFinding(code, at, told));
  }
}
