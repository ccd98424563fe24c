package rillwright.cli.report.json;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import rillwright.cli.report.odds.Remarks;
import rillwright.cli.report.units.Shown;
import rillwright.cli.study.odds.OddsAnswer;
import rillwright.cli.study.odds.OddsAnswer.RankedDriver;
import rillwright.solver.study.uncertainty.Odds;
import rillwright.solver.study.uncertainty.Odds.FallOdds;
import rillwright.solver.study.uncertainty.Odds.FlowSpread;

/** Odds for programs. */
public final class OddsJson {
  private final Json json;
  private final OddsAnswer answer;
  private final Odds odds;

  private OddsJson(Json json, OddsAnswer answer) {
    this.json = json;
    this.answer = answer;
    this.odds = answer.odds();
  }

  /** The JSON text. */
  public static String of(OddsAnswer answer) {
    return Json.object(json -> write(json, answer));
  }

  /** The members of an answer. */
  static void write(Json json, OddsAnswer answer) {
    new OddsJson(json, answer).write();
  }

  private void write() {
    json.words("title", answer.title());
    ChangedField.writeIfAny(json, answer.changes());
    json.whole("samples", odds.plan().samples());
    json.whole("seed", odds.plan().seed());
    json.object(
        "falls",
        () -> odds.falls().forEach(fall -> json.object(fall.name().value(), () -> fall(fall))));
    json.number("chanceOfAll", odds.chanceOfAll());
    json.array(
        "drivers", () -> answer.ranked().forEach(ranked -> json.object(() -> driver(ranked))));
    new RunningFields(json).write(answer.takes());
    json.object(
        "tally",
        () -> {
          json.whole("starved", odds.tally().starved());
          json.whole("withoutBalance", odds.tally().withoutBalance());
          json.whole("notFound", odds.tally().notFound());
          json.whole("contradictory", odds.tally().contradictory());
        });
    FindingFields.write(json, Remarks.of(answer), Shown.of(answer));
  }

  private void fall(FallOdds fall) {
    json.number("chance", fall.chance());
    json.number("p5M3PerS", of(fall.flow(), FlowSpread::p5M3PerS));
    json.number("p50M3PerS", of(fall.flow(), FlowSpread::p50M3PerS));
    json.number("p95M3PerS", of(fall.flow(), FlowSpread::p95M3PerS));
  }

  private static OptionalDouble of(
      Optional<FlowSpread> flow, ToDoubleFunction<FlowSpread> percentile) {
    return flow.isPresent()
        ? OptionalDouble.of(percentile.applyAsDouble(flow.get()))
        : OptionalDouble.empty();
  }

  private void driver(RankedDriver ranked) {
    json.words("quantity", ranked.unknown().address());
    json.words("written", ranked.unknown().written());
    json.number("share", ranked.driver().share());
    json.object(
        "falls",
        () ->
            odds.falls()
                .forEach(
                    fall ->
                        json.number(
                            fall.name().value(), ranked.driver().ofFall().get(fall.name()))));
  }
}
