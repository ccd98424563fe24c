package rillwright.cli.report.choice;

import java.util.List;
import java.util.OptionalDouble;
import rillwright.cli.report.units.ShownUnits;
import rillwright.curves.wording.Listing;
import rillwright.curves.wording.PlainText;
import rillwright.solver.network.PointName;
import rillwright.solver.pumping.HeadNeeded;
import rillwright.solver.pumping.LeastShutOff;
import rillwright.solver.trial.Demand;
import rillwright.solver.trial.PumpTrial;
import rillwright.solver.trial.RunningPoint;
import rillwright.solver.trial.Verdict;

/** A verdict on a pump, and what would have to change. */
public final class VerdictWords {
  /** Shares of a target that a reader would tell apart. */
  private static final double SEEN = 0.01;

  /** Before what lacks little enough. */
  static final String COUNTS = "counts as met: ";

  private final ShownUnits units;
  private final Demand demand;

  /** Words in units, about one demand. */
  public VerdictWords(ShownUnits units, Demand demand) {
    this.units = units;
    this.demand = demand;
  }

  /** A few words for a cell of a table. */
  public String brief(PumpTrial trial) {
    Verdict verdict = trial.verdict();
    return switch (verdict.kind()) {
      case MEETS_TARGET -> "meets the target";
      case JUST_SHORT -> COUNTS + shortBy(verdict) + " under target";
      case THROTTLED -> "meets the target when throttled" + noValve(verdict.missingValves());
      case THROTTLED_JUST_SHORT ->
          COUNTS
              + throttledShort(verdict)
              + " under target when throttled"
              + noValve(verdict.missingValves());
      case FALLS_SHORT ->
          verdict.leastFraction() < 1
              ? "falls short by " + shortBy(verdict) + valvesSet(verdict)
              : "draws air";
      case CANNOT_START -> "cannot start";
      case CANNOT_LIFT -> "cannot lift";
      case NOT_NEEDED -> "not needed";
    };
  }

  private String throttledShort(Verdict verdict) {
    return lack(verdict.throttledShare().orElseThrow(), units);
  }

  /** Says in a cell that a valve is missing. */
  static String noValve(List<PointName> without) {
    return without.isEmpty() ? "" : ", no valve";
  }

  /** Says which valves are missing. */
  static String missing(List<PointName> without) {
    List<String> names = without.stream().map(fall -> PlainText.quoted(fall.value())).toList();
    return without.isEmpty()
        ? ""
        : "; the valve for it is missing: fit one on the way to " + Listing.of(names);
  }

  /** What is left to lack where valves spread what there is; nothing where that changes little. */
  private String valvesSet(Verdict verdict) {
    double attainable = verdict.attainableShare().orElse(0);
    return attainable < verdict.leastFraction() + SEEN
        ? ""
        : ", or by " + lack(attainable, units) + " with valves set";
  }

  private String shortBy(Verdict verdict) {
    return lack(verdict.leastFraction(), units);
  }

  /** What a share lacks of 1: {@code 7 %}. */
  static String lack(double share, ShownUnits units) {
    double lack = 1 - share;
    return lack < 0.005 ? "less than 1 %" : units.share(lack);
  }

  /** The whole verdict, without a full stop. */
  public String full(PumpTrial trial) {
    Verdict verdict = trial.verdict();
    String worst = PlainText.quoted(verdict.worst().value());
    return switch (verdict.kind()) {
      case MEETS_TARGET -> "meets the target";
      case JUST_SHORT -> COUNTS + worst + " gets " + shortBy(verdict) + " under target";
      case THROTTLED ->
          "meets the target when throttled"
              + throttled(verdict)
              + unthrottled(trial)
              + missing(verdict.missingValves());
      case THROTTLED_JUST_SHORT ->
          COUNTS
              + throttledShort(verdict)
              + " under every target when throttled"
              + throttled(verdict)
              + missing(verdict.missingValves());
      case FALLS_SHORT ->
          verdict.leastFraction() < 1
              ? "falls short by " + shortBy(verdict) + " at " + worst + valvesSet(verdict)
              : "drains its chamber down to the intake";
      case CANNOT_START -> "cannot start: its water does not pass a high point";
      case CANNOT_LIFT -> "cannot lift to " + worst;
      case NOT_NEEDED ->
          "not needed: with the falls throttled every fall gets its target without it";
    };
  }

  /** What it gives else, where that is too much. */
  private String unthrottled(PumpTrial trial) {
    double most = demand.targets().greatestShareIn(trial.state());
    return most > Verdict.TOO_MUCH_SHARE
        ? "; with the valves as they stand up to " + units.share(most) + " of a target"
        : "";
  }

  private String start(PumpTrial trial, LeastShutOff least) {
    double has = trial.set().publishedShutOffHeadM();
    return has > least.headM()
        ? "With the lower falls throttled its water may pass the high point: try it."
        : "Its shut-off head of "
            + units.head(has)
            + " is less than the high point of "
            + PlainText.quoted(least.line().value())
            + ", "
            + units.head(least.headM())
            + " above the water: choose more head, lay the pipe lower there, or prime it by hand.";
  }

  /** To which point; over several conditions there is no one. */
  private String throttled(Verdict verdict) {
    return verdict.throttled().map(this::to).orElse("");
  }

  private String to(RunningPoint point) {
    OptionalDouble power = point.powerW();
    return " to "
        + units.flow(point.flowM3PerS())
        + " at "
        + units.head(point.headM())
        + (power.isPresent() ? ", " + units.power(power.getAsDouble()) : "");
  }

  /** What would have to change for a pump that falls short: a sentence. */
  public String change(PumpTrial trial) {
    Verdict verdict = trial.verdict();
    if (demand.throttled().isEmpty()) {
      return "No pump can: too little water can come in or go out for the targets.";
    }
    if (verdict.kind() == Verdict.Kind.NOT_NEEDED) {
      return "Nothing. Throttle the falls that get too much; no pump is needed here.";
    }
    if (verdict.kind() == Verdict.Kind.CANNOT_START) {
      return demand
          .leastShutOff()
          .map(least -> start(trial, least))
          .orElse("Lay the pipe lower at its high point, or prime it by hand.");
    }
    OptionalDouble lift = demand.liftM(verdict.worst());
    if (verdict.kind() == Verdict.Kind.CANNOT_LIFT) {
      return "Its shut-off head of "
          + units.head(trial.set().headAt(0))
          + " is below the static head of "
          + units.head(lift.orElseThrow())
          + "; a larger pipe does not help.";
    }
    if (verdict.missingHeadM().isEmpty()) {
      return "Let more water in: widen or lower the skimmer.";
    }
    HeadNeeded needed = demand.throttled().get().needed();
    String flow = units.flow(needed.flowM3PerS());
    double gives = trial.set().headAt(needed.flowM3PerS());
    if (gives <= 0) {
      return "It cannot deliver "
          + flow
          + " at any head: choose a larger pump, or several in parallel.";
    }
    boolean pipeCouldHelp = gives > lift.orElse(0);
    return "It gives "
        + units.head(gives)
        + " at "
        + flow
        + " where "
        + units.head(needed.headM())
        + " is needed; "
        + (pipeCouldHelp
            ? "take "
                + units.head(verdict.missingHeadM().getAsDouble())
                + " of friction out (larger pipe, fewer fittings)."
            : "the static head alone is "
                + units.head(lift.orElse(0))
                + ", so a larger pipe does not help.");
  }
}
