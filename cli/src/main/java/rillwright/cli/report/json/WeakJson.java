package rillwright.cli.report.json;

import static rillwright.cli.json.Quantity.NUMBER;
import static rillwright.cli.json.Quantity.SHARE;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import rillwright.cli.json.Json;
import rillwright.cli.json.Quantity;
import rillwright.cli.json.Shape;
import rillwright.cli.json.Value;
import rillwright.cli.report.Estimate;
import rillwright.cli.study.weak.PondLoss;
import rillwright.cli.study.weak.WeakAnswer;
import rillwright.solver.study.diagnosis.cause.CauseId;
import rillwright.solver.study.diagnosis.cause.kind.CauseTable;
import rillwright.solver.study.diagnosis.inference.Explanation;
import rillwright.solver.study.diagnosis.inference.NextReading;
import rillwright.solver.study.diagnosis.pair.PairExplanation;

/** Why a fall is weak, for programs. */
public final class WeakJson {
  static final Value<String> CAUSE_NAME = Value.oneOf(CauseTable.names());

  /** A cause and its place. */
  static final Shape<CauseId> CAUSE =
      Shape.<CauseId>named("causeAtItsPlace", "A cause and where it sits.")
          .member("cause", CAUSE_NAME, "Which.", CauseId::cause)
          .orNull("at", Value.words(), "The line or point at which it sits.", CauseId::at)
          .orNull(
              "part",
              Value.wholeFrom(1),
              "The part's place in its line, counted from 1.",
              id -> id.part().stream().mapToObj(part -> (long) part).findFirst());

  private static final Shape<Explanation> EXPLANATION =
      Shape.<Explanation>of()
          .including(CAUSE, it -> it.cause().id())
          .number(
              "probability", SHARE.from(0).upTo(1), "Of all causes' 1.", Explanation::probability)
          .numberOrNull("size", NUMBER, "How large it would be, in sizeUnit.", Explanation::size)
          .orNull(
              "sizeUnit",
              Value.oneOf("1", "m"),
              "1 for a ratio.",
              it -> it.cause().sizes().map(sizes -> it.cause().quantity().unit()))
          .ifAny(
              "choice",
              Value.words(),
              "Which of several it would be: the pump that stands there.",
              Explanation::choice)
          .list(
              "predicted",
              NUMBER.orNull(),
              "What each reading would have been, in the order and the units of the readings.",
              Explanation::predicted);

  private static final Shape<PairExplanation.Member> MEMBER =
      Shape.<PairExplanation.Member>of()
          .including(CAUSE, it -> it.cause().id())
          .numberOrNull(
              "size", NUMBER, "How large it would be, in sizeUnit.", PairExplanation.Member::size)
          .orNull(
              "sizeUnit",
              Value.oneOf("1", "m"),
              "1 for a ratio.",
              it -> it.cause().sizes().map(sizes -> it.cause().quantity().unit()))
          .ifAny(
              "choice",
              Value.words(),
              "Which of several it would be: the pump that stands there.",
              PairExplanation.Member::choice);

  private static final Shape<PairExplanation> PAIR =
      Shape.<PairExplanation>of()
          .list("causes", MEMBER, "The two.", pair -> List.of(pair.one(), pair.other()))
          .number(
              "probability",
              SHARE.from(0).upTo(1),
              "Of all single causes' and pairs' 1.",
              PairExplanation::probability)
          .list(
              "predicted",
              NUMBER.orNull(),
              "What each reading would have been, in the order and the units of the readings.",
              PairExplanation::predicted);

  private static final Shape<NextReading.Expected> EXPECTED =
      Shape.<NextReading.Expected>of()
          .including(CAUSE, it -> it.cause().id())
          .numberOrNull(
              "value", NUMBER, "In the unit of the reading.", NextReading.Expected::value);

  private static final Shape<NextReading> NEXT =
      Shape.<NextReading>of()
          .member("reading", ReadingJson.UNTAKEN, "Which.", next -> new ReadingJson(next.what()))
          .number("bits", NUMBER.from(0), "Expected information.", NextReading::bits)
          .number("minutes", NUMBER.above(0), "Work.", next -> next.what().effort().minutes())
          .number(
              "bitsPerMinute",
              NUMBER.from(0),
              "Expected information for each minute of work, by which they stand in order.",
              NextReading::bitsPerMinute)
          .list("predicted", EXPECTED, "What it would be by each cause.", NextReading::predicted)
          .list(
              "predictedByPairs",
              NUMBER.orNull(),
              "What it would be by each pair, in their order.",
              NextReading::byPairs);

  private static final Shape<PondLoss> POND_LOSS =
      Shape.<PondLoss>of()
          .words("pond", "Which.", loss -> loss.pond().value())
          .number(
              "evaporationMPerS",
              Quantity.SPEED,
              "How fast it falls by what evaporates, by the file.",
              PondLoss::evaporationMPerS)
          .numberOrNull(
              "ofThePondM3PerS",
              Quantity.FLOW.from(0),
              "What it loses itself, by its fall with the pump off; null without that reading.",
              loss -> flow(loss.ofThePond(), PondLoss.Fall::m3PerS))
          .numberOrNull(
              "ofThePondWithinM3PerS",
              Quantity.FLOW.from(0),
              "Half the width of the 95 % interval of that; null likewise.",
              loss -> flow(loss.ofThePond(), PondLoss.Fall::withinM3PerS))
          .numberOrNull(
              "onTheWayM3PerS",
              Quantity.FLOW.from(0),
              "What is lost besides while it runs: in the line, at a fall, in the stream, splash"
                  + " and what evaporates there included; null unless its fall was read both ways.",
              loss -> flow(loss.onTheWay(), PondLoss.Fall::m3PerS))
          .numberOrNull(
              "onTheWayWithinM3PerS",
              Quantity.FLOW.from(0),
              "Half the width of the 95 % interval of that; null likewise.",
              loss -> flow(loss.onTheWay(), PondLoss.Fall::withinM3PerS));

  private static OptionalDouble flow(
      Optional<PondLoss.Fall> fall, ToDoubleFunction<PondLoss.Fall> figure) {
    return fall.stream().mapToDouble(figure).findFirst();
  }

  static final Shape<WeakAnswer> SHAPE =
      Estimate.<WeakAnswer>answer("weak", "Which causes explain the readings, most likely first.")
          .words("title", Meaning.TITLE, WeakAnswer::title)
          .list("changed", Value.words(), Meaning.CHANGED, WeakAnswer::changes)
          .list(
              "readings",
              ReadingJson.TAKEN,
              "What was read, in the order of the file.",
              answer ->
                  answer.diagnosis().readings().stream()
                      .map(reading -> new ReadingJson(reading, answer.scope()))
                      .toList())
          .member(
              "causes",
              Value.someOf(EXPLANATION),
              "All causes at all their places that were tried; probabilities sum to 1.",
              answer -> answer.diagnosis().causes())
          .ifAny(
              "untried",
              Value.wholeFrom(1),
              "Causes at their places that were not tried, those with the least weight before any"
                  + " reading, because the job is large; they are counted as \"none of these\".",
              answer ->
                  Optional.of((long) answer.diagnosis().untried()).filter(untried -> untried > 0))
          .list(
              "pairs",
              PAIR,
              "Two causes at once, where they are likelier than the likeliest single one or have a"
                  + " probability of 20 %; most likely first.",
              answer -> answer.diagnosis().pairs())
          .truth(
              "pairsLead",
              "Whether the pairs are far likelier than any single cause.",
              answer -> answer.diagnosis().pairsLead())
          .ifAny(
              "pondLoss",
              POND_LOSS,
              "Where a pond's water is lost, where its fall was read.",
              WeakAnswer::pondLoss)
          .truth(
              "slightIncluded",
              "Whether faults count that take less than a tenth off everything, because no other"
                  + " fits.",
              WeakAnswer::slight)
          .member(
              "firstGroup",
              Value.someOf(CAUSE),
              "The most likely causes that together have 80 % of the probability.",
              answer ->
                  answer.diagnosis().firstGroup().stream().map(it -> it.cause().id()).toList())
          .orNull(
              "separatedBy",
              ReadingJson.UNTAKEN,
              "The reading that tells the first group apart best; null if none does.",
              answer -> answer.diagnosis().separatedBy().map(next -> new ReadingJson(next.what())))
          .list(
              "next",
              NEXT,
              "Readings and looks still to be taken, the one that tells most for its time first.",
              answer -> answer.diagnosis().next());

  private WeakJson() {}

  /** The JSON text. */
  public static String of(WeakAnswer answer) {
    return Json.text(SHAPE, answer);
  }
}
