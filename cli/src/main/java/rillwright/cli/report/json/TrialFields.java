package rillwright.cli.report.json;

import java.util.OptionalDouble;
import rillwright.cli.report.choice.JudgedWords;
import rillwright.cli.report.choice.SetupWords;
import rillwright.cli.report.choice.VerdictWords;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.Effort;
import rillwright.cli.study.choice.PumpedYear;
import rillwright.solver.network.Point;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.trial.ConditionTrial;
import rillwright.solver.trial.Demand;
import rillwright.solver.trial.PumpSetup;
import rillwright.solver.trial.PumpTrial;
import rillwright.solver.trial.RatedTrial;
import rillwright.solver.trial.RunningPoint;

/** What is told about a pump tried. */
final class TrialFields {
  private final Json json;
  private final ShownUnits units;
  private final PumpedYear year;

  TrialFields(Json json, ShownUnits units, PumpedYear year) {
    this.json = json;
    this.units = units;
    this.year = year;
  }

  /**
   * All members.
   *
   * @param costOverYears of all that is chosen
   */
  void write(RatedTrial rated, Demand demand, OptionalDouble costOverYears) {
    PumpTrial trial = rated.trial();
    setup(trial.setup());
    json.truth("does", rated.does());
    json.object("fallsM3PerS", () -> falls(json, trial.state()));
    json.object("operating", () -> point(trial.operating()));
    json.objectOrNull("throttled", trial.verdict().throttled(), this::point);
    json.number("shareOfRange", trial.shareOfRange());
    json.number("shareOfBestEfficiencyFlow", trial.shareOfBestEfficiencyFlow());
    json.number("energyPerYear", rated.energyPerYearKwh());
    json.number("costPerYear", year.cost(trial));
    json.object(
        "turnoversPerDay",
        () -> year.turnover(trial).ifPresent(it -> json.number(it.basin().value(), it.perDay())));
    json.number("price", trial.setup().price());
    json.number("costOverYears", costOverYears);
    json.words("verdict", new JudgedWords(units, demand, rated).full());
    FindingFields.write(json, trial.findings(), units);
    rated.worst().ifPresent(worst -> conditions(rated, worst));
  }

  private void conditions(RatedTrial rated, ConditionTrial worst) {
    json.words("worstCondition", worst.condition());
    json.object(
        "conditions",
        () -> {
          for (ConditionTrial tried : rated.conditions()) {
            json.object(tried.condition(), () -> condition(tried));
          }
        });
  }

  private void condition(ConditionTrial tried) {
    VerdictWords words = new VerdictWords(units, tried.demand());
    json.truth("does", tried.does());
    json.object("fallsM3PerS", () -> tried.trial().ifPresent(trial -> falls(json, trial.state())));
    json.words("verdict", tried.trial().map(words::full).orElse("no balance"));
  }

  private void setup(PumpSetup setup) {
    json.words("model", setup.offer().model());
    json.whole("count", setup.count());
    json.words("arranged", SetupWords.arranged(setup));
    json.number("speed", setup.speed());
  }

  /** What each fall and outlet gets. */
  static void falls(Json json, SteadyState balanced) {
    for (Point point : balanced.network().waysOut()) {
      json.number(point.name().value(), balanced.point(point.name()).outflowM3PerS());
    }
  }

  private void point(RunningPoint point) {
    json.number("flowM3PerS", point.flowM3PerS());
    json.number("headM", point.headM());
    json.number("powerW", point.powerW());
    json.number("efficiency", point.efficiency());
  }

  /** What trying took, where it is worth telling. */
  void effort(Effort effort) {
    if (effort.isWorthTelling()) {
      json.object(
          "effort",
          () -> {
            json.whole("solves", effort.solves());
            json.number("seconds", effort.seconds());
            json.number("solvesPerSecond", effort.solvesPerSecond());
          });
    }
  }
}
