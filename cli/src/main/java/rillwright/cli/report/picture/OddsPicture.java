package rillwright.cli.report.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.cli.report.odds.ChanceWords;
import rillwright.cli.report.odds.UnknownWords;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.condition.Case;
import rillwright.cli.study.condition.Cases;
import rillwright.cli.study.odds.OddsAnswer;
import rillwright.cli.study.odds.OddsAnswer.RankedDriver;
import rillwright.cli.study.odds.WorstOdds;
import rillwright.curves.chart.content.OddsChart;
import rillwright.curves.chart.content.OddsChart.ChanceCurve;
import rillwright.curves.chart.content.OddsChart.Share;
import rillwright.curves.chart.content.OddsChart.Target;
import rillwright.solver.network.PointName;
import rillwright.solver.study.uncertainty.Odds.FallOdds;
import rillwright.solver.study.uncertainty.Odds.FlowSpread;

/** The picture of odds: the chance of each flow, and the shares of variance. */
public final class OddsPicture {
  private static final int MOST_BARS = 8;

  /** A share below this is shown as nothing. */
  private static final double VISIBLE = 0.005;

  private final OddsAnswer answer;
  private final ShownUnits units;

  private OddsPicture(OddsAnswer answer) {
    this.answer = answer;
    this.units = Shown.of(answer);
  }

  /** What is to be drawn; empty if no sample has a balance. */
  public static Optional<OddsChart> of(OddsAnswer answer) {
    return new OddsPicture(answer).chart();
  }

  /**
   * What is to be drawn of odds in several conditions: the chance of each flow over the fall that
   * has the least chance, a curve for each condition; empty if there is no target or has a balance.
   */
  public static Optional<OddsChart> of(Cases<OddsAnswer> answer) {
    return WorstOdds.of(answer).flatMap(worst -> inConditions(answer, worst));
  }

  private static Optional<OddsChart> inConditions(Cases<OddsAnswer> answer, WorstOdds worst) {
    PointName name = worst.fall();
    List<ChanceCurve> curves = new ArrayList<>();
    for (Case<OddsAnswer> one : answer.cases()) {
      for (FallOdds fall : one.answer().map(shown -> shown.odds().falls()).orElse(List.of())) {
        if (fall.name().equals(name) && fall.flow().isPresent()) {
          OddsPicture picture = new OddsPicture(one.answer().orElseThrow());
          ChanceCurve curve = picture.curve(one.condition(), fall, fall.flow().get());
          boolean shown = one.condition().equals(worst.condition());
          curves.add(
              shown
                  ? curve
                  : new ChanceCurve(curve.name(), curve.percentilesM3PerS(), Optional.empty()));
        }
      }
    }
    return curves.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new OddsChart(
                answer.title(),
                "The chance of each flow over \"" + name.value() + "\" in each condition",
                Shown.of(answer).flowUnit(),
                curves,
                List.of()));
  }

  private Optional<OddsChart> chart() {
    List<ChanceCurve> curves = new ArrayList<>();
    for (FallOdds fall : answer.odds().falls()) {
      fall.flow().ifPresent(flow -> curves.add(curve(fall.name().value(), fall, flow)));
    }
    return curves.isEmpty()
        ? Optional.empty()
        : Optional.of(new OddsChart(answer.title(), caption(), units.flowUnit(), curves, shares()));
  }

  private String caption() {
    return String.format(
        Locale.ROOT,
        "%,d samples of the uncertain values, each balanced",
        answer.odds().plan().samples());
  }

  private ChanceCurve curve(String name, FallOdds fall, FlowSpread spread) {
    OptionalDouble flow = answer.network().point(fall.name()).targetM3PerS();
    Optional<Target> target =
        flow.isPresent() && fall.chance().isPresent()
            ? Optional.of(target(name, flow.getAsDouble(), fall.chance().getAsDouble()))
            : Optional.empty();
    return new ChanceCurve(name, spread.percentilesM3PerS(), target);
  }

  private Target target(String name, double targetM3PerS, double chance) {
    return new Target(
        targetM3PerS,
        chance,
        List.of(name, units.writtenFlow(targetM3PerS) + ": " + new ChanceWords(units).of(chance)));
  }

  private List<Share> shares() {
    List<Share> shares = new ArrayList<>();
    double rest = 0;
    int others = 0;
    for (RankedDriver ranked : answer.ranked()) {
      double share = ranked.driver().varianceShare();
      if (shares.size() < MOST_BARS && share >= VISIBLE) {
        shares.add(share(UnknownWords.of(ranked.unknown()), share));
      } else {
        rest += share;
        others++;
      }
    }
    if (others > 0 && !shares.isEmpty()) {
      shares.add(share(others == 1 ? "1 other" : others + " others", rest));
    }
    if (answer.together() >= VISIBLE) {
      shares.add(share("several together", answer.together()));
    }
    return shares;
  }

  private Share share(String name, double share) {
    return new Share(name, share, units.share(share));
  }
}
