package rillwright.cli.report.json;

import rillwright.cli.report.Effort;
import rillwright.cli.report.PumpsAnswer;
import rillwright.cli.report.choice.SetupWords;
import rillwright.cli.report.choice.VerdictWords;
import rillwright.cli.report.units.ShownUnits;
import rillwright.solver.finding.Finding;
import rillwright.solver.network.Network;
import rillwright.solver.network.Point;
import rillwright.solver.trial.PumpSetup;
import rillwright.solver.trial.PumpTrial;
import rillwright.solver.trial.RatedTrial;
import rillwright.solver.trial.RunningPoint;

/** Pumps tried, for programs. */
public final class PumpsJson {
  private final Json json;
  private final PumpsAnswer answer;
  private final ShownUnits units;
  private final VerdictWords verdicts;

  private PumpsJson(Json json, PumpsAnswer answer) {
    this.json = json;
    this.answer = answer;
    this.units = answer.duty().units();
    this.verdicts = new VerdictWords(units, answer.choice().demand());
  }

  /** The JSON text. */
  public static String of(PumpsAnswer answer) {
    return Json.object(json -> new PumpsJson(json, answer).write());
  }

  private void write() {
    json.words("title", answer.duty().title());
    json.array("changed", () -> answer.changes().forEach(json::words));
    json.object("duty", () -> DutyJson.write(json, answer.duty()));
    json.number("years", answer.terms().years());
    json.wordsOrNull("currency", answer.currency());
    json.array(
        "candidates",
        () -> answer.choice().ranked().forEach(rated -> json.object(() -> of(rated))));
    json.array("faults", () -> answer.faults().forEach(fault -> json.words(fault.toString())));
    json.array("notBalanced", () -> answer.choice().leftOut().forEach(json::words));
    effort(json, answer.effort());
  }

  /** What trying took, where it is worth telling. */
  static void effort(Json json, Effort effort) {
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

  private void of(RatedTrial rated) {
    PumpTrial trial = rated.trial();
    setup(json, trial.setup());
    json.truth("does", rated.does());
    falls(json, answer.duty().network(), trial);
    json.object("operating", () -> point(json, trial.operating()));
    json.objectOrNull("throttled", trial.verdict().throttled(), at -> point(json, at));
    json.number("shareOfRange", trial.shareOfRange());
    json.number("shareOfBestEfficiencyFlow", trial.shareOfBestEfficiencyFlow());
    json.number("energyPerYear", rated.energyPerYearKwh());
    json.number("price", trial.setup().price());
    json.number("costOverYears", rated.costOverYears());
    json.words("verdict", verdicts.full(trial));
    json.array("findings", () -> trial.findings().forEach(this::finding));
  }

  /** Which pump, how many, how fast. */
  static void setup(Json json, PumpSetup setup) {
    json.words("model", setup.offer().model());
    json.whole("count", setup.count());
    json.words("arranged", SetupWords.arranged(setup));
    json.number("speed", setup.speed());
  }

  /** What every fall and outlet gets. */
  static void falls(Json json, Network network, PumpTrial trial) {
    json.object(
        "fallsM3PerS",
        () -> {
          for (Point point : network.points()) {
            if (point.spill().isPresent() || point.wantM3PerS().isPresent()) {
              json.number(point.name().value(), trial.state().point(point.name()).outflowM3PerS());
            }
          }
        });
  }

  /** Where a pump runs. */
  static void point(Json json, RunningPoint point) {
    json.number("flowM3PerS", point.flowM3PerS());
    json.number("headM", point.headM());
    json.number("powerW", point.powerW());
    json.number("efficiency", point.efficiency());
  }

  private void finding(Finding finding) {
    json.object(
        () -> {
          json.words("code", finding.code());
          json.words("at", finding.at());
          json.words("message", finding.message(units));
        });
  }
}
