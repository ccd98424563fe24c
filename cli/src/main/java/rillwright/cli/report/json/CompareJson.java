package rillwright.cli.report.json;

import static rillwright.cli.json.Quantity.FLOW;
import static rillwright.cli.json.Quantity.NUMBER;
import static rillwright.cli.json.Quantity.SHARE;

import java.util.Arrays;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import rillwright.cli.json.Json;
import rillwright.cli.json.Shape;
import rillwright.cli.json.Value;
import rillwright.cli.report.Estimate;
import rillwright.cli.report.units.Shown;
import rillwright.cli.study.compare.Compared;
import rillwright.cli.study.compare.Entered;
import rillwright.cli.study.compare.Measured;
import rillwright.cli.study.compare.Measured.Kind;
import rillwright.cli.study.compare.OnTarget;
import rillwright.cli.study.compare.OnTarget.Better;
import rillwright.cli.study.compare.OnTarget.Got;
import rillwright.cli.study.solve.Solved;

/** Two projects side by side, for programs. */
public final class CompareJson {
  private static final Shape<Solved> PROJECT =
      Shape.<Solved>named("comparedProject", "One of the two.")
          .words("title", Meaning.TITLE, Solved::title)
          .list("changed", Value.words(), Meaning.CHANGED, Solved::changes)
          .member("running", RunningJson.SHAPE, Meaning.RUNNING, Solved::takes);

  private static final Shape<Entered> ENTERED =
      Shape.<Entered>named("entered", "What the two files say differently in one place.")
          .words("address", "Of the value, as --set takes it.", Entered::address)
          .orNull("a", Value.words(), "As A writes it; null if it does not.", Entered::a)
          .orNull("b", Value.words(), "As B writes it; null if it does not.", Entered::b);

  private static final Shape<Measured> MEASURED =
      Shape.<Measured>named("measured", "One figure of both.")
          .words("at", "Point, line or gauge; empty for the whole job.", Measured::at)
          .member(
              "figure",
              Value.oneOf(Arrays.stream(Kind.values()).map(CompareJson::name).toList()),
              "What it is; its unit is in its name.",
              it -> name(it.figure()))
          .numberOrNull("a", NUMBER, "In A; null if it has none.", Measured::a)
          .numberOrNull("b", NUMBER, "In B; null if it has none.", Measured::b)
          .truth("differs", "Whether by more than rounding.", Measured::differs);

  private static final Shape<OnTarget> TARGET =
      Shape.<OnTarget>named("onTarget", "What both give a point that has a target.")
          .words("at", "The point.", OnTarget::at)
          .numberOrNull("aTargetM3PerS", FLOW, "Target in A.", inA(Got::targetM3PerS))
          .numberOrNull("bTargetM3PerS", FLOW, "Target in B.", inB(Got::targetM3PerS))
          .numberOrNull("aTargetFraction", SHARE, "What it gets in A of it.", inA(Got::fraction))
          .numberOrNull("bTargetFraction", SHARE, "What it gets in B of it.", inB(Got::fraction))
          .member(
              "better",
              Value.oneOf(Arrays.stream(Better.values()).map(CompareJson::word).toList()),
              "The one that meets the target from 100 to 125 %, else the one that is nearer.",
              it -> word(it.better()));

  static final Shape<Compared> SHAPE =
      Estimate.<Compared>answer("compare", "Two projects side by side.")
          .words("title", Meaning.TITLE, Compared::title)
          .truth("same", "Whether nothing differs in files and figures.", Compared::alike)
          .member("a", PROJECT, "The first project.", Compared::a)
          .member("b", PROJECT, "The second project.", Compared::b)
          .list("inputs", ENTERED, "What differs in the files.", Compared::entered)
          .list(
              "sheets",
              Value.words(),
              "Pumps that both files name and whose data sheets differ.",
              Compared::sheets)
          .list("figures", MEASURED, "Every figure of either.", Compared::measured)
          .list("targets", TARGET, "Points with a target.", Compared::targets)
          .list(
              "findingsInA",
              FoundJson.SHAPE,
              "Findings of A that B has not.",
              it -> FoundJson.list(it.onlyInA(), Shown.of(it)))
          .list(
              "findingsInB",
              FoundJson.SHAPE,
              "Findings of B that A has not.",
              it -> FoundJson.list(it.onlyInB(), Shown.of(it)));

  private CompareJson() {}

  /** The JSON text. */
  public static String of(Compared compared) {
    return Json.text(SHAPE, compared);
  }

  private static Function<OnTarget, OptionalDouble> inA(ToDoubleFunction<Got> of) {
    return it ->
        it.a().map(got -> OptionalDouble.of(of.applyAsDouble(got))).orElse(OptionalDouble.empty());
  }

  private static Function<OnTarget, OptionalDouble> inB(ToDoubleFunction<Got> of) {
    return it ->
        it.b().map(got -> OptionalDouble.of(of.applyAsDouble(got))).orElse(OptionalDouble.empty());
  }

  private static String word(Better better) {
    return better.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  private static String name(Kind kind) {
    return switch (kind) {
      case FLOW_OUT -> "flowM3PerS";
      case LINE_FLOW -> "lineFlowM3PerS";
      case CREST_HEAD -> "crestHeadM";
      case PUMP_FLOW -> "pumpFlowM3PerS";
      case PUMP_HEAD -> "pumpHeadM";
      case PUMP_POWER -> "pumpPowerW";
      case LEVEL -> "headM";
      case LINE_SPEED -> "lineVelocityMPerS";
      case GAUGE_PRESSURE -> "pressurePa";
      case POWER -> "powerW";
      case ENERGY -> "energyKwhPerYear";
      case COST -> "costPerYear";
    };
  }
}
