package rillwright.cli.report.json;

import java.util.List;
import java.util.OptionalDouble;
import rillwright.cli.report.choice.GravityWords;
import rillwright.cli.report.units.Shown;
import rillwright.cli.study.choice.GravityAnswer;
import rillwright.solver.study.pipechoice.GravityChoice;
import rillwright.solver.study.pipechoice.GravityPipe;

/**
 * Sizes of pipe tried where nothing is pumped, for programs: the members of {@link PipesJson}, null
 * where they tell of a pump.
 */
public final class GravityJson {
  private final Json json;
  private final GravityAnswer answer;
  private final SizesFields sizes;
  private final GravityWords words;

  private GravityJson(Json json, GravityAnswer answer) {
    this.json = json;
    this.answer = answer;
    this.sizes = new SizesFields(json);
    this.words = new GravityWords(Shown.of(answer));
  }

  /** The JSON text. */
  public static String of(GravityAnswer answer) {
    return Json.object(json -> new GravityJson(json, answer).write());
  }

  private void write() {
    GravityChoice choice = answer.choice();
    json.words("title", answer.title());
    ChangedField.write(json, answer.changes());
    json.nothing("duty");
    json.number("years", answer.years());
    json.wordsOrNull("currency", answer.currency());
    json.array("choices", () -> choice.ranked().forEach(pipe -> json.object(() -> of(pipe))));
    json.objectOrNull("leastCost", choice.leastCost(), sizes::names);
    json.objectOrNull("runnerUp", choice.runnerUp(), sizes::names);
    json.array(
        "nextSizesUp",
        () ->
            choice
                .leastCost()
                .ifPresent(least -> choice.nextSizesUp(least).forEach(it -> next(least, it))));
    json.array("faults", () -> {});
    json.array("notBalanced", () -> {});
    answer.conditions().ifPresent(judging -> ConditionFields.judging(json, judging));
  }

  private void next(GravityPipe least, GravityPipe larger) {
    json.object(
        () -> {
          json.object("sizes", () -> sizes.names(larger));
          json.number("moreFlowM3PerS", sum(larger) - sum(least));
          json.number("moreCostOverYears", OptionalDouble.empty());
          sizes.noPayback();
        });
  }

  /** Over all falls, m³/s. */
  private static double sum(GravityPipe pipe) {
    return pipe.state().points().stream()
        .filter(point -> point.point().wantM3PerS().isPresent())
        .mapToDouble(point -> point.outflowM3PerS())
        .sum();
  }

  private void of(GravityPipe pipe) {
    json.object("sizes", () -> sizes.names(pipe));
    List.of("model", "count", "arranged", "speed").forEach(json::nothing);
    json.truth("does", pipe.does());
    json.object("fallsM3PerS", () -> TrialFields.falls(json, pipe.state()));
    List.of("operating", "throttled", "shareOfRange", "shareOfBestEfficiencyFlow")
        .forEach(json::nothing);
    json.number("energyPerYear", 0);
    json.number("costPerYear", 0);
    json.object("turnoversPerDay", () -> {});
    json.nothing("price");
    json.number("costOverYears", pipe.option().materialCost());
    json.words("verdict", words.full(pipe));
    FindingFields.write(json, pipe.findings(), Shown.of(answer));
    pipe.worstCondition().ifPresent(worst -> conditions(pipe, worst));
    json.number("materialCost", pipe.option().materialCost());
    sizes.lines(pipe);
    sizes.noPayback();
  }

  private void conditions(GravityPipe pipe, GravityPipe.InCondition worst) {
    json.words("worstCondition", worst.name());
    json.object(
        "conditions",
        () -> pipe.conditions().forEach(it -> json.object(it.name(), () -> condition(it))));
  }

  private void condition(GravityPipe.InCondition tried) {
    json.truth("does", tried.does());
    json.object(
        "fallsM3PerS",
        () -> tried.run().ifPresent(run -> TrialFields.falls(json, run.asItStands().state())));
    json.words("verdict", words.full(tried));
  }
}
