package rillwright.cli.report.json;

import static rillwright.cli.json.Quantity.ENERGY;
import static rillwright.cli.json.Quantity.FLOW;
import static rillwright.cli.json.Quantity.METRES;
import static rillwright.cli.json.Quantity.MONEY;
import static rillwright.cli.json.Quantity.NUMBER;
import static rillwright.cli.json.Quantity.POWER;
import static rillwright.cli.json.Quantity.SHARE;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import rillwright.cli.json.Shape;
import rillwright.cli.json.Value;
import rillwright.cli.report.choice.GravityWords;
import rillwright.cli.report.choice.JudgedWords;
import rillwright.cli.report.choice.SetupWords;
import rillwright.cli.report.choice.VerdictCode;
import rillwright.cli.report.choice.VerdictWords;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.Turnover;
import rillwright.cli.study.choice.PumpedYear;
import rillwright.solver.steady.PointState;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.study.pipechoice.GravityPipe;
import rillwright.solver.trial.ConditionTrial;
import rillwright.solver.trial.Demand;
import rillwright.solver.trial.PumpTrial;
import rillwright.solver.trial.RatedTrial;
import rillwright.solver.trial.RunningPoint;
import rillwright.solver.trial.Verdict;

/**
 * Something that was tried in a project, for programs: a pump, or sizes of pipe with their own pump
 * or without any.
 *
 * @param pump empty where nothing is pumped
 * @param state what flows where, the valves as they stand
 * @param worst the condition that judges it; empty without conditions
 */
record TriedJson(
    Optional<RatedTrial> pump,
    boolean meetsTargets,
    SteadyState state,
    OptionalDouble energyKwhPerYear,
    OptionalDouble costPerYear,
    Optional<Turnover> turnover,
    OptionalDouble costOverYears,
    String verdict,
    String verdictCode,
    List<FoundJson> findings,
    Optional<String> worst,
    List<InCondition> conditions) {

  /** The same in a condition; the state is empty where nothing can flow. */
  record InCondition(
      String name,
      boolean meetsTargets,
      Optional<SteadyState> state,
      String verdict,
      String code) {}

  private static final Value<String> CODE = Value.oneOf(VerdictCode.all());

  private static final String CODE_MEANING = "The verdict, short and stable.";

  private static final Shape<RunningPoint> POINT =
      Shape.<RunningPoint>named("runningPoint", "Where pumps run.")
          .number("flowM3PerS", FLOW, "Flow of all together.", RunningPoint::flowM3PerS)
          .number("headM", METRES, "Head that they give.", RunningPoint::headM)
          .numberOrNull(
              "powerW",
              POWER,
              "Electrical power of all together; null if the data sheet has none.",
              RunningPoint::powerW)
          .numberOrNull(
              "wireToWater",
              SHARE,
              "Hydraulic power per electrical power; null without power.",
              RunningPoint::wireToWater);

  private static final Shape<InCondition> CONDITION =
      Shape.<InCondition>of()
          .truth(
              "meetsTargets",
              "Whether every fall gets its target then; not without a balance.",
              InCondition::meetsTargets)
          .each(
              "fallsM3PerS",
              FLOW,
              Meaning.FALLS + " Empty without a balance.",
              it -> it.state.map(TriedJson::falls).orElse(List.of()),
              fall -> fall.point().name().value(),
              PointState::outflowM3PerS)
          .member("verdict", Value.someWords(), "In words.", InCondition::verdict)
          .member("verdictCode", CODE, CODE_MEANING, InCondition::code);

  static final Shape<TriedJson> SHAPE =
      Shape.<TriedJson>of()
          .orNull(
              "model",
              Value.words(),
              "The data sheet's name without .csv; null where nothing is pumped.",
              it -> it.trial(trial -> trial.setup().offer().model()))
          .orNull(
              "count",
              Value.wholeFrom(1),
              "How many together; null where nothing is pumped.",
              it -> it.trial(trial -> (long) trial.setup().count()))
          .orNull(
              "arranged",
              Value.oneOf("parallel", "series"),
              "How several stand; null where nothing is pumped.",
              it -> it.trial(trial -> SetupWords.arranged(trial.setup())))
          .orNull(
              "speed",
              SHARE.above(0),
              "Share of the speed of the published curve; null where nothing is pumped.",
              it -> it.trial(trial -> trial.setup().speed()))
          .truth(
              "meetsTargets",
              "Whether every fall gets its target, up to 5 % short and throttled included; with"
                  + " conditions, in all of them.",
              TriedJson::meetsTargets)
          .each(
              "fallsM3PerS",
              FLOW,
              Meaning.FALLS,
              it -> falls(it.state),
              fall -> fall.point().name().value(),
              PointState::outflowM3PerS)
          .orNull(
              "operatingPoint",
              POINT,
              "With the valves as they stand; null where nothing is pumped.",
              it -> it.trial(PumpTrial::operating))
          .orNull(
              "throttledPoint",
              POINT,
              "Where it runs when throttled, if so it meets the targets; energy and cost are of"
                  + " this point then.",
              it -> it.pump.flatMap(rated -> rated.trial().verdict().throttled()))
          .numberOrNull(
              "attainableFraction",
              SHARE,
              "Where it falls short, the greatest fraction of its target that every fall can get"
                  + " once valves hold the others back; else null.",
              it ->
                  it.trial(PumpTrial::verdict)
                      .map(Verdict::attainableShare)
                      .orElse(OptionalDouble.empty()))
          .orNull(
              "shareOfRange",
              SHARE,
              "Flow as a share of the published range, valves as they stand; null where nothing is"
                  + " pumped.",
              it -> it.trial(PumpTrial::shareOfRange))
          .numberOrNull(
              "shareOfBestEfficiencyFlow",
              SHARE,
              "Flow as a share of that of the best efficiency; null without power.",
              it -> it.trial(PumpTrial::shareOfBestEfficiencyFlow).orElse(OptionalDouble.empty()))
          .numberOrNull("energyKwhPerYear", ENERGY, "Of a year.", TriedJson::energyKwhPerYear)
          .numberOrNull(
              "costPerYear", MONEY, "Of that energy; null without a price.", TriedJson::costPerYear)
          .each(
              "turnoversPerDay",
              NUMBER.from(0),
              "How often it pumps round the water of the basin that feeds it, by name, where its"
                  + " volume is known.",
              it -> it.turnover.stream().toList(),
              turnover -> turnover.basin().value(),
              Turnover::perDay)
          .numberOrNull(
              "price",
              MONEY,
              "Of all pumps together; null if the data sheet has none.",
              it -> it.trial(trial -> trial.setup().price()).orElse(OptionalDouble.empty()))
          .numberOrNull(
              "costOverYears",
              MONEY,
              "Pump, pipe where it is chosen, and electricity, as far as known; null if power, the"
                  + " price of electricity or that of this pipe alone is not known.",
              TriedJson::costOverYears)
          .member(
              "verdict",
              Value.someWords(),
              "In words; with conditions, in the worst of them.",
              TriedJson::verdict)
          .member("verdictCode", CODE, CODE_MEANING, TriedJson::verdictCode)
          .list("findings", FoundJson.SHAPE, Meaning.FINDINGS, TriedJson::findings)
          .ifAny(
              "worstCondition",
              Value.words(),
              "The condition that gives does and verdict; only with conditions.",
              TriedJson::worst)
          .ifAny(
              "conditions",
              Value.byName(CONDITION),
              "The same in each condition, by name; only with conditions.",
              it ->
                  it.worst.map(any -> Value.map(it.conditions, InCondition::name, tried -> tried)));

  /**
   * A pump that was tried.
   *
   * @param demand of the project as it stands
   * @param costOverYears of all that is chosen
   */
  static TriedJson of(
      RatedTrial rated,
      Demand demand,
      OptionalDouble costOverYears,
      ShownUnits units,
      PumpedYear year) {
    PumpTrial trial = rated.trial();
    JudgedWords judged = new JudgedWords(units, demand, rated);
    return new TriedJson(
        Optional.of(rated),
        rated.meetsTargets(),
        trial.state(),
        rated.energyKwhPerYear(),
        year.cost(trial),
        year.turnover(trial),
        costOverYears,
        judged.full(),
        judged.code(),
        FoundJson.list(trial.findings(), units),
        rated.worst().map(ConditionTrial::condition),
        rated.conditions().stream().map(tried -> condition(tried, units)).toList());
  }

  private static InCondition condition(ConditionTrial tried, ShownUnits units) {
    VerdictWords words = new VerdictWords(units, tried.demand());
    return new InCondition(
        tried.condition(),
        tried.meetsTargets(),
        tried.trial().map(PumpTrial::state),
        tried.trial().map(words::full).orElse("no balance"),
        VerdictCode.ofPump(tried.trial()));
  }

  /** Sizes of pipe that were tried where nothing is pumped. */
  static TriedJson of(GravityPipe pipe, ShownUnits units) {
    GravityWords words = new GravityWords(units);
    return new TriedJson(
        Optional.empty(),
        pipe.meetsTargets(),
        pipe.state(),
        OptionalDouble.of(0),
        OptionalDouble.of(0),
        Optional.empty(),
        pipe.option().materialCost(),
        words.full(pipe),
        GravityWords.code(pipe),
        FoundJson.list(pipe.findings(), units),
        pipe.worstCondition().map(GravityPipe.InCondition::name),
        pipe.conditions().stream()
            .map(
                tried ->
                    new InCondition(
                        tried.name(),
                        tried.meetsTargets(),
                        tried.run().map(run -> run.asItStands().state()),
                        words.full(tried),
                        VerdictCode.ofRun(tried.run())))
            .toList());
  }

  private <T> Optional<T> trial(Function<PumpTrial, T> of) {
    return pump.map(rated -> of.apply(rated.trial()));
  }

  /** The falls and outlets. */
  private static List<PointState> falls(SteadyState balanced) {
    return balanced.network().waysOut().stream()
        .map(point -> balanced.point(point.name()))
        .toList();
  }
}
