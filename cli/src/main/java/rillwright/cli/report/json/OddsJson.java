package rillwright.cli.report.json;

import static rillwright.cli.json.Quantity.FLOW;
import static rillwright.cli.json.Quantity.SHARE;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import rillwright.cli.json.Json;
import rillwright.cli.json.Quantity;
import rillwright.cli.json.Shape;
import rillwright.cli.json.Value;
import rillwright.cli.report.Estimate;
import rillwright.cli.report.odds.Remarks;
import rillwright.cli.report.units.Shown;
import rillwright.cli.study.odds.OddsAnswer;
import rillwright.cli.study.odds.OddsAnswer.RankedDriver;
import rillwright.solver.network.PointName;
import rillwright.solver.study.uncertainty.Odds;
import rillwright.solver.study.uncertainty.Odds.FallOdds;
import rillwright.solver.study.uncertainty.Odds.FlowSpread;

/** Odds for programs. */
public final class OddsJson {
  private static final Quantity CHANCE = SHARE.from(0).upTo(1);

  private static final Shape<FallOdds> FALL =
      Shape.<FallOdds>of()
          .numberOrNull(
              "chance",
              CHANCE,
              "Share of the samples in which it gets its target; null without a target.",
              FallOdds::chance)
          .numberOrNull(
              "p5M3PerS",
              FLOW,
              "Flow below which one sample in twenty lies; null if no sample balances.",
              fall -> of(fall, FlowSpread::p5M3PerS))
          .numberOrNull(
              "p50M3PerS",
              FLOW,
              "Flow below which every other sample lies.",
              fall -> of(fall, FlowSpread::p50M3PerS))
          .numberOrNull(
              "p95M3PerS",
              FLOW,
              "Flow above which one sample in twenty lies.",
              fall -> of(fall, FlowSpread::p95M3PerS));

  private static final Shape<RankedDriver> DRIVER =
      Shape.<RankedDriver>of()
          .member(
              "quantity",
              Value.someWords(),
              "Which one, as --set addresses it: lines.intake.skimmer.clogged.",
              driver -> driver.unknown().address())
          .words(
              "written", "What the file says: 0 % .. 40 %.", driver -> driver.unknown().written())
          .number(
              "varianceShare",
              CHANCE,
              "Its first-order share of the variances of all these flows, summed.",
              driver -> driver.driver().varianceShare())
          .byName(
              "falls",
              CHANCE,
              "Its first-order share of the variance of each flow, by name.",
              driver -> driver.driver().ofFall(),
              PointName::value);

  private static final Shape<Odds.Tally> TALLY =
      Shape.<Odds.Tally>of()
          .count(
              "starved",
              "With a chamber at its intake; counted among the flows.",
              Odds.Tally::starved)
          .count(
              "withoutBalance",
              "Without a balanced state; targets missed.",
              Odds.Tally::withoutBalance)
          .count("notFound", "Whose balance was not found; targets missed.", Odds.Tally::notFound)
          .count(
              "contradictory",
              "Whose values contradict each other; count for nothing.",
              Odds.Tally::contradictory);

  static final Shape<OddsAnswer> SHAPE =
      Estimate.<OddsAnswer>answer(
              "odds", "What is to be expected, given what is not known exactly.")
          .words("title", Meaning.TITLE, OddsAnswer::title)
          .ifAny(
              "changed",
              Value.list(Value.words()),
              Meaning.CHANGED,
              answer -> Optional.of(answer.changes()).filter(changes -> !changes.isEmpty()))
          .member(
              "samples",
              Value.wholeFrom(100),
              "How many samples were balanced.",
              answer -> (long) answer.odds().plan().samples())
          .member(
              "seed",
              Value.whole(),
              "The number that they were drawn from.",
              answer -> answer.odds().plan().seed())
          .each(
              "falls",
              FALL,
              "Falls and outlets, by name.",
              answer -> answer.odds().falls(),
              fall -> fall.name().value())
          .numberOrNull(
              "chanceOfAll",
              CHANCE,
              "Share of the samples in which all targets are fulfilled at once; null without a"
                  + " target.",
              answer -> answer.odds().chanceOfAll())
          .list(
              "drivers",
              DRIVER,
              "The uncertain values, largest share of variance first.",
              OddsAnswer::ranked)
          .orNull("running", RunningJson.SHAPE, Meaning.RUNNING, OddsAnswer::takes)
          .member(
              "tally",
              TALLY,
              "How many samples did not end as they should.",
              answer -> answer.odds().tally())
          .list(
              "findings",
              FoundJson.SHAPE,
              Meaning.FINDINGS,
              answer -> FoundJson.list(Remarks.of(answer), Shown.of(answer)));

  private OddsJson() {}

  /** The JSON text. */
  public static String of(OddsAnswer answer) {
    return Json.text(SHAPE, answer);
  }

  private static OptionalDouble of(FallOdds fall, ToDoubleFunction<FlowSpread> percentile) {
    return fall.flow()
        .map(flow -> OptionalDouble.of(percentile.applyAsDouble(flow)))
        .orElse(OptionalDouble.empty());
  }
}
