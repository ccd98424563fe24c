package rillwright.solver.stream;

import java.util.ArrayList;
import java.util.List;
import rillwright.solver.finding.Finding;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Fall;
import rillwright.solver.steady.PointState;

/** What there is to know about streams: geometry that does not fit, water that runs badly. */
final class StreamFindings {
  /** A stream whose drops miss the crest's height by more than this share of it, or length. */
  private static final double MISSING_SHARE = 0.01;

  private static final double MISSING_M = 0.01;

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
          String name = "Reach " + number + " of \"" + stream.stream().name() + "\"";
          findings.addAll(new ReachFindings(stream.stream().name(), name, reach, item).list());
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
}
