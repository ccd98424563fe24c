package rillwright.cli.report.json;

import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.cli.report.units.Shown;
import rillwright.cli.study.choice.PipesAnswer;
import rillwright.solver.study.pipechoice.Payback;
import rillwright.solver.study.pipechoice.PipeChoice;
import rillwright.solver.study.pipechoice.RatedPipe;

/** Sizes of pipe tried, for programs. */
public final class PipesJson {
  private final Json json;
  private final PipesAnswer answer;
  private final TrialFields trials;
  private final SizesFields sizes;
  private final Optional<RatedPipe> cheapestPipe;

  private PipesJson(Json json, PipesAnswer answer) {
    this.json = json;
    this.answer = answer;
    this.trials = new TrialFields(json, Shown.of(answer), answer.year());
    this.sizes = new SizesFields(json);
    this.cheapestPipe = answer.choice().cheapestPipe();
  }

  /** The JSON text. */
  public static String of(PipesAnswer answer) {
    return Json.object(json -> new PipesJson(json, answer).write());
  }

  private void write() {
    PipeChoice choice = answer.choice();
    json.words("title", answer.duty().title());
    ChangedField.write(json, answer.changes());
    json.object("duty", () -> DutyJson.write(json, answer.duty()));
    json.number("years", answer.terms().years());
    json.wordsOrNull("currency", answer.currency());
    json.array("choices", () -> choice.ranked().forEach(rated -> json.object(() -> of(rated))));
    json.objectOrNull("leastCost", choice.leastCost(), sizes::names);
    json.objectOrNull("runnerUp", choice.runnerUp(), sizes::names);
    json.array(
        "nextSizesUp",
        () -> choice.leastCost().ifPresent(least -> choice.nextSizesUp(least).forEach(this::next)));
    json.array("faults", () -> answer.faults().forEach(fault -> json.words(fault.toString())));
    json.array("notBalanced", () -> choice.leftOut().forEach(json::words));
    answer.conditions().ifPresent(judging -> ConditionFields.judging(json, judging));
    trials.effort(answer.effort());
  }

  private void next(RatedPipe larger) {
    RatedPipe least = answer.choice().leastCost().orElseThrow();
    json.object(
        () -> {
          json.object("sizes", () -> sizes.names(larger));
          json.number(
              "moreFlowM3PerS",
              larger.pump().trial().operating().flowM3PerS()
                  - least.pump().trial().operating().flowM3PerS());
          json.number(
              "moreCostOverYears", difference(larger.costOverYears(), least.costOverYears()));
          payback(least, larger);
        });
  }

  private static OptionalDouble difference(OptionalDouble one, OptionalDouble other) {
    return one.isPresent() && other.isPresent()
        ? OptionalDouble.of(one.getAsDouble() - other.getAsDouble())
        : OptionalDouble.empty();
  }

  private void payback(RatedPipe cheaper, RatedPipe dearer) {
    Payback payback = Payback.of(cheaper, dearer, answer.terms());
    json.number("paybackYears", payback.years());
    json.truth("samePump", payback.kind() == Payback.Kind.SAME_PUMP);
  }

  private void of(RatedPipe rated) {
    json.object("sizes", () -> sizes.names(rated));
    trials.write(rated.pump(), rated.demand(), rated.costOverYears());
    json.number("materialCost", rated.option().materialCost());
    sizes.lines(rated);
    if (cheapestPipe.isPresent() && !cheapestPipe.get().equals(rated)) {
      payback(cheapestPipe.get(), rated);
    } else {
      sizes.noPayback();
    }
  }
}
