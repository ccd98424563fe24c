package rillwright.cli.report.text.weak;

import java.util.Locale;
import java.util.Optional;
import rillwright.cli.report.page.Page;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.page.Table.Side;
import rillwright.cli.report.page.TableBuilder;
import rillwright.solver.study.diagnosis.trial.PairFigures;
import rillwright.solver.study.diagnosis.trial.TrialFigures;

/** The figures of a trial for people. */
public final class TrialText {
  private TrialText() {}

  /** The page. */
  public static Page of(TrialFigures figures, Optional<PairFigures> pairs, long seed) {
    PageBuilder page = new PageBuilder(figures.calls() + " simulated calls, seed " + seed);
    TableBuilder table =
        new TableBuilder("FIGURE").column("here", Side.RIGHT).column("at least", Side.LEFT);
    row(table, "first group holds the truth", figures.groupHolds(), "0.81");
    row(table, "mean size of the first group", figures.groupSize(), "at most 4.4");
    row(table, "gain over the prior, nats", figures.gainNats(), "1.35");
    row(table, "p(truth) by the readings", figures.truthBefore(), "");
    row(table, "after a random reading", figures.truthAfterRandom(), "");
    row(table, "after the advised reading", figures.truthAfterAdvice(), "");
    row(
        table,
        "advised above random",
        figures.truthAfterAdvice() - figures.truthAfterRandom(),
        "0.06");
    row(table, "realised less promised bits", figures.surplusBits(), "within 0.15");
    row(
        table,
        "advised twice above two random",
        figures.truthAfterTwoAdvised() - figures.truthAfterTwoRandom(),
        "0.15");
    pairs.ifPresent(
        two -> {
          row(table, "two faults: pair or a member found", two.found(), "0.75");
          row(table, "two faults: pair listed", two.listed(), "");
          row(table, "one fault: pairs lead wrongly", two.wronglyLead(), "");
        });
    page.table(table);
    TableBuilder bins =
        new TableBuilder("STATED PROBABILITY")
            .column("entries", Side.RIGHT)
            .column("stated", Side.RIGHT)
            .column("came true", Side.RIGHT)
            .column("deviations", Side.RIGHT)
            .column("at most", Side.LEFT);
    for (TrialFigures.Bin bin : figures.calibration()) {
      bins.row(
          String.format(Locale.ROOT, "%.2f to %.2f", bin.from(), bin.to()),
          Integer.toString(bin.entries()),
          number(bin.stated()),
          number(bin.cameTrue()),
          number(bin.deviations()),
          "3");
    }
    page.table(bins);
    return page.build();
  }

  private static void row(TableBuilder table, String name, double value, String wanted) {
    table.row(name, number(value), wanted);
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.3f", value);
  }
}
