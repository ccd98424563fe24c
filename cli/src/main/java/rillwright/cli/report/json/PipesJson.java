package rillwright.cli.report.json;

import static rillwright.cli.json.Quantity.FLOW;
import static rillwright.cli.json.Quantity.MONEY;
import static rillwright.cli.json.Quantity.NUMBER;
import static rillwright.cli.json.Quantity.SPEED;
import static rillwright.cli.json.Quantity.VOLUME;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import rillwright.cli.file.fault.Fault;
import rillwright.cli.json.Json;
import rillwright.cli.json.Quantity;
import rillwright.cli.json.Shape;
import rillwright.cli.json.Value;
import rillwright.cli.report.Estimate;
import rillwright.cli.report.units.Shown;
import rillwright.cli.study.choice.GravityAnswer;
import rillwright.cli.study.choice.PipesAnswer;
import rillwright.cli.study.condition.JudgingConditions;
import rillwright.cli.study.duty.DutyAnswer;
import rillwright.solver.network.LineName;
import rillwright.solver.steady.PointState;
import rillwright.solver.study.pipechoice.GravityPipe;
import rillwright.solver.study.pipechoice.LineFigures;
import rillwright.solver.study.pipechoice.Payback;
import rillwright.solver.study.pipechoice.RankedPipes;
import rillwright.solver.study.pipechoice.RatedPipe;
import rillwright.solver.study.pipechoice.SizedPipe;
import rillwright.solver.trial.RunningTerms;

/** Sizes of pipe tried, pumped or not, for programs. */
public record PipesJson(
    String title,
    List<String> changes,
    Optional<DutyAnswer> duty,
    double years,
    Optional<String> currency,
    RankedPipes<?> choice,
    List<Sized> choices,
    List<Next> next,
    List<Fault> faults,
    List<String> leftOut,
    Optional<JudgingConditions> conditions) {

  /** Whether a dearer pipe pays for itself. */
  private record Pays(OptionalDouble years, boolean samePump) {
    private static final Pays NOT_ASKED = new Pays(OptionalDouble.empty(), false);

    static Pays of(RatedPipe cheaper, RatedPipe dearer, RunningTerms terms) {
      Payback payback = Payback.of(cheaper, dearer, terms);
      return new Pays(payback.years(), payback.kind() == Payback.Kind.SAME_PUMP);
    }
  }

  private record Sized(SizedPipe pipe, TriedJson tried, Pays pays) {}

  private record Next(
      SizedPipe pipe, double moreFlowM3PerS, OptionalDouble moreCostOverYears, Pays pays) {}

  private static final Value<SizedPipe> SIZES =
      Value.<String>byName(Value.words()).of(PipesJson::sizes);

  private static final Shape<LineFigures> LINE =
      Shape.<LineFigures>of()
          .numberOrNull(
              "velocityMPerS", SPEED.from(0), "Speed in its pipe.", LineFigures::velocityMPerS)
          .numberOrNull(
              "frictionMPerM",
              Quantity.of("m for each m").from(0),
              "Head lost in its runs for each metre of them.",
              LineFigures::frictionMPerM)
          .number("holdUpM3", VOLUME, "Water in its runs.", LineFigures::holdUpM3);

  private static final Shape<Sized> CHOICE =
      Shape.<Sized>of()
          .member("sizes", SIZES, "Size of each line that was varied, by its name.", Sized::pipe)
          .including(TriedJson.SHAPE, Sized::tried)
          .numberOrNull(
              "materialCost",
              MONEY,
              "Of the pipe of these lines and of their fittings that have a price; null if some"
                  + " pipe has none.",
              it -> it.pipe.option().materialCost())
          .member(
              "lines",
              Value.byName(LINE),
              "By name.",
              it ->
                  Value.map(
                      it.pipe.option().sizes().keySet(),
                      LineName::value,
                      line -> it.pipe.figures(line)))
          .number(
              "holdUpM3", VOLUME, "Water in the runs of all these lines.", it -> it.pipe.holdUpM3())
          .numberOrNull(
              "paybackYears",
              NUMBER.from(0),
              "Years in which it pays for itself against the cheapest pipe that meets every target;"
                  + " null where it does not, for that pipe itself, and where nothing is known.",
              it -> it.pays.years)
          .truth(
              "samePump",
              "Whether it runs the same pump as that pipe, and so adds flow and saves nothing.",
              it -> it.pays.samePump);

  private static final Shape<Next> NEXT =
      Shape.<Next>of()
          .member("sizes", SIZES, "Size of each line, by its name.", Next::pipe)
          .number("moreFlowM3PerS", FLOW, "More flow.", Next::moreFlowM3PerS)
          .numberOrNull(
              "moreCostOverYears",
              Quantity.of("currency"),
              "More cost over the years.",
              Next::moreCostOverYears)
          .numberOrNull(
              "paybackYears", NUMBER.from(0), "Years in which it pays.", it -> it.pays.years)
          .truth("samePump", "Whether it runs the same pump.", it -> it.pays.samePump);

  static final Shape<PipesJson> SHAPE =
      Estimate.<PipesJson>answer("pipes", "Sizes of pipe tried in the project, the best first.")
          .words("title", Meaning.TITLE, PipesJson::title)
          .list("changed", Value.words(), Meaning.CHANGED, PipesJson::changes)
          .orNull(
              "duty",
              DutyJson.SHAPE,
              "With the pipes as the file has them; null where nothing is pumped.",
              it -> it.duty.map(DutyJson::within))
          .number("years", NUMBER.above(0), Meaning.YEARS, PipesJson::years)
          .orNull("currency", Value.words(), Meaning.CURRENCY, PipesJson::currency)
          .member(
              "candidates",
              Value.someOf(CHOICE),
              "Each with its own cheapest pump; where nothing is pumped, what tells of a pump is"
                  + " null. Those that meet every target first, by cost over the years; then the"
                  + " others, nearest first.",
              PipesJson::choices)
          .orNull(
              "leastCost",
              SIZES,
              "The choice that meets every target (up to 5 % short counts) with the least cost over"
                  + " the years, or of the pipe where all that do run the same pump; where no"
                  + " cost is"
                  + " known, the narrowest. What has a pipe or pump"
                  + " without a price is listed after what has one.",
              it -> it.choice.leastCost())
          .orNull("runnerUp", SIZES, "The one after it.", it -> it.choice.runnerUp())
          .list(
              "nextSizesUp",
              NEXT,
              "What the next size up from the least cost would buy; one for each line that is"
                  + " free.",
              PipesJson::next)
          .list(
              "faults",
              Value.words(),
              Meaning.FAULTS,
              it -> it.faults.stream().map(Fault::toString).toList())
          .list(
              "notBalanced",
              Value.words(),
              "Models with which the network has no balance with some size.",
              PipesJson::leftOut)
          .including(CasesJson.JUDGING, PipesJson::conditions);

  /** The JSON text where a pump drives the water. */
  public static String of(PipesAnswer answer) {
    Optional<RatedPipe> cheapest = answer.choice().cheapestPipe();
    return Json.text(
        SHAPE,
        new PipesJson(
            answer.title(),
            answer.changes(),
            Optional.of(answer.duty()),
            answer.terms().years(),
            answer.currency(),
            answer.choice(),
            answer.choice().ranked().stream().map(pipe -> sized(pipe, cheapest, answer)).toList(),
            next(answer.choice(), (least, larger) -> next(least, larger, answer.terms())),
            answer.faults(),
            answer.choice().leftOut(),
            answer.conditions()));
  }

  /** The JSON text where nothing is pumped. */
  public static String of(GravityAnswer answer) {
    return Json.text(
        SHAPE,
        new PipesJson(
            answer.title(),
            answer.changes(),
            Optional.empty(),
            answer.years(),
            answer.currency(),
            answer.choice(),
            answer.choice().ranked().stream()
                .map(pipe -> new Sized(pipe, TriedJson.of(pipe, Shown.of(answer)), Pays.NOT_ASKED))
                .toList(),
            next(answer.choice(), PipesJson::next),
            List.of(),
            List.of(),
            answer.conditions()));
  }

  private static Sized sized(RatedPipe rated, Optional<RatedPipe> cheapest, PipesAnswer answer) {
    TriedJson tried =
        TriedJson.of(
            rated.pump(), rated.demand(), rated.costOverYears(), Shown.of(answer), answer.year());
    Pays pays =
        cheapest
            .filter(pipe -> !pipe.equals(rated))
            .map(pipe -> Pays.of(pipe, rated, answer.terms()))
            .orElse(Pays.NOT_ASKED);
    return new Sized(rated, tried, pays);
  }

  private static <P extends SizedPipe> List<Next> next(
      RankedPipes<P> choice, BiFunction<P, P, Next> of) {
    return choice
        .leastCost()
        .map(least -> choice.nextSizesUp(least).stream().map(it -> of.apply(least, it)).toList())
        .orElse(List.of());
  }

  private static Next next(RatedPipe least, RatedPipe larger, RunningTerms terms) {
    OptionalDouble more = larger.costOverYears();
    OptionalDouble less = least.costOverYears();
    return new Next(
        larger,
        larger.pump().trial().operating().flowM3PerS()
            - least.pump().trial().operating().flowM3PerS(),
        more.isPresent() && less.isPresent()
            ? OptionalDouble.of(more.getAsDouble() - less.getAsDouble())
            : OptionalDouble.empty(),
        Pays.of(least, larger, terms));
  }

  private static Next next(GravityPipe least, GravityPipe larger) {
    return new Next(
        larger, sumM3PerS(larger) - sumM3PerS(least), OptionalDouble.empty(), Pays.NOT_ASKED);
  }

  /** Over all falls with a target. */
  private static double sumM3PerS(GravityPipe pipe) {
    return pipe.state().points().stream()
        .filter(point -> point.point().targetM3PerS().isPresent())
        .mapToDouble(PointState::outflowM3PerS)
        .sum();
  }

  private static Map<String, String> sizes(SizedPipe pipe) {
    return Value.map(
        pipe.option().sizes().entrySet(),
        size -> size.getKey().value(),
        size -> size.getValue().name());
  }
}
