package rillwright.cli.report.text.odds;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import rillwright.cli.report.conditions.SharedFinding;
import rillwright.cli.report.odds.ChanceWords;
import rillwright.cli.report.odds.Remarks;
import rillwright.cli.report.odds.UnknownWords;
import rillwright.cli.report.page.Cell;
import rillwright.cli.report.page.Page;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.page.Table.Side;
import rillwright.cli.report.page.TableBuilder;
import rillwright.cli.report.text.ChangedWords;
import rillwright.cli.report.text.conditions.ChangesText;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.condition.Case;
import rillwright.cli.study.condition.Cases;
import rillwright.cli.study.odds.OddsAnswer;
import rillwright.cli.study.odds.OddsAnswer.RankedDriver;
import rillwright.cli.study.odds.WorstOdds;
import rillwright.curves.wording.PlainText;
import rillwright.solver.finding.Finding;
import rillwright.solver.network.PointName;
import rillwright.solver.study.uncertainty.Odds.FallOdds;
import rillwright.solver.study.uncertainty.Odds.FlowSpread;
import rillwright.solver.study.uncertainty.SamplingPlan;

/** Odds in several conditions, on one page. */
public final class OddsConditionsText {
  private static final String NONE = "none";

  private static final Comparator<Case<OddsAnswer>> STARVED_FIRST =
      Comparator.comparingInt(
          one -> -one.answer().map(it -> it.odds().tally().starved()).orElse(0));

  private final Cases<OddsAnswer> answer;
  private final ShownUnits units;
  private final ChanceWords chances;
  private final PageBuilder page;

  private OddsConditionsText(Cases<OddsAnswer> answer) {
    this.answer = answer;
    this.units = Shown.of(answer);
    this.chances = new ChanceWords(units);
    this.page = ChangedWords.page(answer.title(), answer.changes());
  }

  /** The page. */
  public static Page of(Cases<OddsAnswer> answer) {
    return new OddsConditionsText(answer).print();
  }

  private Page print() {
    answer.cases().stream()
        .flatMap(one -> one.answer().stream())
        .findFirst()
        .ifPresent(shown -> samples(shown.odds().plan()));
    falls().forEach(fall -> page.table(odds(fall)));
    page.paragraph(
        "Low (5 %), median: the flow is less in 5 and 50 % of samples." + OddsText.WHOLE_TARGET);
    page.table(ChangesText.table(answer.conditions()));
    page.heading("WARNINGS AND NOTES");
    WorstOdds.listOf(answer).forEach(this::worst);
    ChangesText.noBalance(answer, page);
    SharedFinding.listOf(answer, OddsConditionsText::ofSamples)
        .forEach(it -> page.marked("! ", it.sentence(it.first(STARVED_FIRST), units)));
    if (answer.offered()) {
      ChangesText.offer(page);
    }
    return page.build();
  }

  private void samples(SamplingPlan plan) {
    page.paragraph(
        String.format(
            Locale.ROOT,
            "%,d samples of the uncertain values in each condition (seed %d), each balanced anew.",
            plan.samples(),
            plan.seed()));
  }

  /** What went wrong in samples. */
  private static List<Finding> ofSamples(OddsAnswer shown) {
    return Remarks.of(shown).stream().filter(Remarks::isOfSamples).toList();
  }

  private Set<PointName> falls() {
    Set<PointName> falls = new LinkedHashSet<>();
    for (Case<OddsAnswer> one : answer.cases()) {
      one.answer().ifPresent(shown -> shown.odds().falls().forEach(it -> falls.add(it.name())));
    }
    return falls;
  }

  private TableBuilder odds(PointName fall) {
    TableBuilder table =
        new TableBuilder("ODDS OF \"" + fall.value() + "\"")
            .column("chance of target", Side.RIGHT)
            .column("low (5 %)", Side.RIGHT)
            .column("median", Side.RIGHT)
            .column("largest share of variance", Side.LEFT);
    for (Case<OddsAnswer> one : answer.cases()) {
      table.row(one.condition(), cells(one, fall));
    }
    return table;
  }

  private List<Cell> cells(Case<OddsAnswer> one, PointName fall) {
    Optional<FallOdds> odds =
        one.answer()
            .flatMap(
                shown ->
                    shown.odds().falls().stream().filter(it -> it.name().equals(fall)).findFirst());
    if (odds.isEmpty()) {
      return List.of(Cell.of(NONE), Cell.of(NONE), Cell.of(NONE), Cell.of("no balance"));
    }
    Optional<FlowSpread> flow = odds.get().flow();
    List<Cell> cells = new ArrayList<>();
    cells.add(
        Cell.of(
            odds.get().chance().isPresent()
                ? chances.of(odds.get().chance().getAsDouble())
                : NONE));
    cells.add(Cell.of(flow.map(it -> flow(it.p5M3PerS())).orElse(NONE)));
    cells.add(Cell.of(flow.map(it -> flow(it.p50M3PerS())).orElse(NONE)));
    boolean dry = flow.filter(it -> it.p50M3PerS() == 0).isPresent();
    cells.add(
        Cell.of(
            one.answer().orElseThrow().ranked().stream()
                .filter(ranked -> share(ranked, fall) > 0 && !dry)
                .max(Comparator.comparingDouble(ranked -> share(ranked, fall)))
                .map(
                    ranked ->
                        UnknownWords.of(ranked.unknown()) + ": " + units.share(share(ranked, fall)))
                .orElse(dry ? "none: dry in most samples" : "nothing")));
    return cells;
  }

  private static double share(RankedDriver ranked, PointName fall) {
    return ranked.driver().ofFall().get(fall);
  }

  private String flow(double flowM3PerS) {
    return flowM3PerS == 0 ? "dry" : units.flow(flowM3PerS);
  }

  private void worst(WorstOdds worst) {
    page.marked(
        worst.chance() < 1 ? "! " : "",
        PlainText.quoted(worst.fall().value())
            + " is lowest in "
            + PlainText.quoted(worst.condition())
            + ": the chance of its target is "
            + chances.of(worst.chance())
            + ".");
  }
}
