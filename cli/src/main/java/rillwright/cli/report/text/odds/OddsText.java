package rillwright.cli.report.text.odds;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.cli.report.odds.ChanceWords;
import rillwright.cli.report.odds.Remarks;
import rillwright.cli.report.odds.UnknownWords;
import rillwright.cli.report.page.Cell;
import rillwright.cli.report.page.Page;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.page.Table.Side;
import rillwright.cli.report.page.TableBuilder;
import rillwright.cli.report.text.ChangedWords;
import rillwright.cli.report.text.RunningCost;
import rillwright.cli.report.text.SiteCautions;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.odds.OddsAnswer;
import rillwright.cli.study.odds.OddsAnswer.RankedDriver;
import rillwright.solver.finding.Finding;
import rillwright.solver.network.PointName;
import rillwright.solver.study.uncertainty.Odds;
import rillwright.solver.study.uncertainty.Odds.FallOdds;
import rillwright.solver.study.uncertainty.Odds.FlowSpread;
import rillwright.solver.study.uncertainty.SamplingPlan;

/** The odds of a project on one page. */
public final class OddsText {
  private static final String NONE = "none";

  /** More falls than this do not fit beside each other. */
  private static final int MOST_COLUMNS = 3;

  private static final int LONGEST_ADDRESS = 40;

  /** Else what is built counts as right up to 5 % under its target. */
  static final String WHOLE_TARGET =
      " Chance of target: of the whole target; the least under it does not count as met here.";

  private final OddsAnswer answer;
  private final Odds odds;
  private final ShownUnits units;
  private final PageBuilder page;

  private OddsText(OddsAnswer answer) {
    this.answer = answer;
    this.odds = answer.odds();
    this.units = Shown.of(answer);
    this.page = ChangedWords.page(answer.title(), answer.changes());
  }

  /** The page. */
  public static Page of(OddsAnswer answer) {
    return new OddsText(answer).print();
  }

  private Page print() {
    SamplingPlan plan = odds.plan();
    page.paragraph(
        String.format(
            Locale.ROOT,
            "%,d samples of the uncertain values (seed %d), each balanced.",
            plan.samples(),
            plan.seed()));
    page.table(falls());
    page.paragraph(
        "Low (5 %), median, high (95 %): the flow is less in 5, 50 and 95 % of samples."
            + WHOLE_TARGET);
    page.table(drivers());
    page.paragraph(
        "Share of variance: the part of the spread that goes away if this value alone is known"
            + " exactly.");
    answer.takes().ifPresent(figures -> RunningCost.print(figures, units, page));
    page.heading("WARNINGS AND NOTES");
    for (Finding remark : Remarks.of(answer)) {
      page.marked(Remarks.isOfSamples(remark) ? "! " : "", remark.message(units));
    }
    SiteCautions.print(answer.takes().isPresent(), page);
    return page.build();
  }

  private TableBuilder falls() {
    TableBuilder table =
        new TableBuilder("ODDS")
            .column("target", Side.RIGHT)
            .column("chance", Side.RIGHT)
            .column("low (5 %)", Side.RIGHT)
            .column("median", Side.RIGHT)
            .column("high (95 %)", Side.RIGHT);
    for (FallOdds fall : odds.falls()) {
      OptionalDouble target = answer.network().point(fall.name()).targetM3PerS();
      Optional<FlowSpread> flow = fall.flow();
      table.row(
          fall.name().value(),
          target.isPresent() ? units.writtenFlow(target.getAsDouble()) : NONE,
          fall.chance().isPresent() ? new ChanceWords(units).of(fall.chance().getAsDouble()) : NONE,
          flow.map(f -> flow(f.p5M3PerS())).orElse(NONE),
          flow.map(f -> flow(f.p50M3PerS())).orElse(NONE),
          flow.map(f -> flow(f.p95M3PerS())).orElse(NONE));
    }
    return table;
  }

  private String flow(double flowM3PerS) {
    return flowM3PerS == 0 ? "dry" : units.flow(flowM3PerS);
  }

  private TableBuilder drivers() {
    List<PointName> falls = odds.falls().stream().map(FallOdds::name).toList();
    boolean apart = falls.size() > 1 && falls.size() <= MOST_COLUMNS;
    TableBuilder table =
        new TableBuilder("SENSITIVITY", LONGEST_ADDRESS).column("share of variance", Side.RIGHT);
    if (apart) {
      falls.forEach(fall -> table.column("of " + fall.value(), Side.RIGHT));
    }
    table.column("as written", Side.LEFT);
    for (RankedDriver ranked : answer.ranked()) {
      List<Cell> cells = new ArrayList<>();
      cells.add(Cell.of(units.share(ranked.driver().varianceShare())));
      if (apart) {
        falls.forEach(fall -> cells.add(Cell.of(units.share(ranked.driver().ofFall().get(fall)))));
      }
      cells.add(Cell.of(ranked.unknown().written()));
      table.row(UnknownWords.of(ranked.unknown()), cells);
    }
    return table;
  }
}
