package rillwright.solver.stream;

import java.util.ArrayList;
import java.util.List;
import rillwright.solver.finding.Figure.Unit;
import rillwright.solver.finding.Finding;
import rillwright.solver.finding.Severity;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Fall;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Skimmer;
import rillwright.solver.steady.PointState;
import rillwright.solver.steady.SteadyState;

/** What there is to know about streams: geometry that does not fit, water that runs badly. */
final class StreamFindings {
  private static final String DRY = "stream-dry";

  /** A stream whose drops miss the crest's height by more than this share of it, or length. */
  private static final double MISSING_SHARE = 0.01;

  private static final double MISSING_M = 0.01;
  private static final double NOTICEABLE_M = 0.003;

  private final RunningWater running;
  private final RunningWater toppedUp;
  private final List<LevelBudget> budgets;
  private final boolean drawsGoShort;
  private final List<Finding> findings = new ArrayList<>();
  private final List<Finding> notes = new ArrayList<>();

  /**
   * Findings of a budget.
   *
   * @param drawsGoShort whether lower levels, at which draws go short, would be needed
   */
  StreamFindings(
      RunningWater running,
      RunningWater toppedUp,
      List<LevelBudget> budgets,
      boolean drawsGoShort) {
    this.drawsGoShort = drawsGoShort;
    this.running = running;
    this.toppedUp = toppedUp;
    this.budgets = budgets;
  }

  /** All of them, the gravest first. */
  List<Finding> list() {
    drawsGoShort();
    starved();
    budgets.forEach(budget -> findings.addAll(new LevelFindings(budget, running).list()));
    balance();
    evaporation();
    budgets.forEach(budget -> notes.addAll(new StrayWaterFindings(running, budget).list()));
    for (StreamState stream : running.streams()) {
      runsDry(stream);
      drops(stream);
      int number = 0;
      for (ItemState item : stream.items()) {
        number++;
        if (item.item() instanceof Reach reach && item.flowM3PerS() > 0) {
          findings.addAll(new ReachFindings(stream.stream().name(), number, reach, item).list());
        }
      }
    }
    findings.addAll(notes);
    return List.copyOf(findings);
  }

  /** The levels cannot come to where they would, since what is drawn would not be there. */
  private void drawsGoShort() {
    if (drawsGoShort) {
      findings.add(
          Finding.of(
              Severity.PROBLEM,
              "draws-go-short-at-start",
              budgets.get(0).basin().name().value(),
              "With nothing topped up the water falls so low that what is drawn from the network"
                  + " goes short: the levels and flows while running are the lowest at which it"
                  + " does not. Draw less, or take a larger pond or a lower sill."));
    }
  }

  private void starved() {
    for (PointState state : running.state().points()) {
      if (state.isStarved()) {
        String name = state.point().name().value();
        boolean fullToo = toppedUp.state().point(state.point().name()).isStarved();
        findings.add(
            Finding.of(
                Severity.PROBLEM,
                "starves-at-start",
                name,
                "Once the stream has filled, \""
                    + name
                    + "\" is drawn down to the pump's intake: the pump draws air and gives only"
                    + " what comes in. "
                    + (fullToo
                        ? "Topping up does not help; the intake is too small for this pump."
                        : (aMouthLimits(state.point().name())
                                ? "A lower sill, a wider mouth, "
                                : "A lower sill or intake, ")
                            + "a larger pond or less water in the stream would help. Topped up"
                            + " to its level at rest it would stay supplied too"
                            + (budgets.stream().anyMatch(budget -> budget.runsOverM3() > 0)
                                ? ", but run over at each stop."
                                : "."))));
      }
    }
  }

  /** Whether a mouth on the way to a chamber passes no more, however low the chamber's intake. */
  private boolean aMouthLimits(PointName chamber) {
    SteadyState state = running.state();
    return state.network().placed(Skimmer.class).stream()
        .filter(skimmer -> skimmer.line().to().equals(chamber) && skimmer.index() == 0)
        .anyMatch(
            skimmer ->
                skimmer.part().levelToPassM(state.line(skimmer.line().name()).flowM3PerS())
                    > state.point(skimmer.line().from()).headM().orElseThrow() - NOTICEABLE_M);
  }

  private void balance() {
    for (LevelBudget budget : budgets) {
      Basin basin = budget.basin();
      if (running.isInBalance(basin.name())) {
        continue;
      }
      double gain = running.gainM3PerS(basin.name());
      String name = basin.name().value();
      findings.add(
          Finding.of(
                  Severity.PROBLEM,
                  "basin-not-in-balance",
                  name,
                  "\"" + name + "\" " + (gain < 0 ? "loses " : "gains "))
              .figure(
                  "gain",
                  gain,
                  Unit.CUBIC_METRE_PER_SECOND,
                  wording -> wording.flow(Math.abs(gain)))
              .then(
                  " as long as the pump runs, so its level does not come to rest. Lead the water"
                      + " back to where it was drawn, or say where it returns.")
              .thenHint());
    }
  }

  /** Air too damp, or water too cold, for anything to evaporate by the weather that is given. */
  private void evaporation() {
    running.plan().loss().flatMap(WaterLoss::coldWaterAssumed).ifPresent(findings::add);
    boolean none =
        running.plan().loss().stream()
            .anyMatch(loss -> loss.byWeather() && loss.evaporationMPerS() == 0);
    if (none) {
      findings.add(
          Finding.of(
                  Severity.NOTE,
                  "no-evaporation",
                  "evaporation",
                  "In this weather nothing evaporates: water as cold as the file says takes up"
                      + " moisture from such air. Write the water's temperature in that weather.")
              .thenHint());
    }
  }

  private void runsDry(StreamState state) {
    if (state.flowM3PerS() == 0) {
      String from = state.stream().from().value();
      String name = state.stream().name();
      findings.add(
          0,
          runsToppedUp(state.stream())
              ? Finding.of(
                  Severity.PROBLEM,
                  DRY,
                  name,
                  "\""
                      + name
                      + "\" takes up more water than the pond can give down to its skimmer's sill:"
                      + " the pump runs dry before the water returns. A wider pond, a lower sill, a"
                      + " narrower or shorter stream would help.")
              : Finding.of(
                      Severity.PROBLEM,
                      DRY,
                      name,
                      "No water comes over \"" + from + "\", so \"" + name + "\" stays dry.")
                  .thenHint());
    }
  }

  /** Whether water would run in it with the basins held at their levels at rest. */
  private boolean runsToppedUp(Stream stream) {
    return toppedUp.streams().stream()
        .anyMatch(state -> state.stream().equals(stream) && state.flowM3PerS() > 0);
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
          Finding.of(
                  Severity.PROBLEM,
                  "drops-do-not-add-up",
                  stream.name(),
                  "The drops of \"" + stream.name() + "\" add up to ")
              .depth("sum", sum)
              .then(
                  ", but from the crest of \""
                      + fall.name().value()
                      + "\" to the level of \""
                      + basin.name().value()
                      + "\" it is ")
              .depth("height", height)
              .then(": ")
              .figure("excess", off, Unit.METRE, wording -> wording.depth(Math.abs(off)))
              .then(
                  off < 0
                      ? " too little. Measure again, or add a step."
                      : " too much. Measure again; so much height is not there."));
    }
  }
}
