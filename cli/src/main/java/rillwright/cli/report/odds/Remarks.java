package rillwright.cli.report.odds;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import rillwright.cli.report.units.Shown;
import rillwright.cli.study.odds.OddsAnswer;
import rillwright.cli.study.odds.OddsAnswer.RankedDriver;
import rillwright.cli.study.odds.OddsAnswer.Unknown;
import rillwright.curves.wording.PlainText;
import rillwright.solver.finding.Figure.Unit;
import rillwright.solver.finding.Finding;
import rillwright.solver.finding.Severity;
import rillwright.solver.study.uncertainty.Odds;
import rillwright.solver.study.uncertainty.Odds.FallOdds;

/** Notes on odds: the largest shares of variance, and samples that did not end as they should. */
public final class Remarks {
  /** A driver with less than this share is not worth a measurement. */
  private static final double WORTH_KNOWING = 0.05;

  /** What several unknowns do together is worth a word from this share on. */
  private static final double WORTH_A_WORD = 0.1;

  private final OddsAnswer answer;
  private final ChanceWords chances;
  private final List<Finding> remarks = new ArrayList<>();

  private Remarks(OddsAnswer answer) {
    this.answer = answer;
    this.chances = new ChanceWords(Shown.of(answer));
  }

  /** The remarks, the most important first. */
  public static List<Finding> of(OddsAnswer answer) {
    Remarks remarks = new Remarks(answer);
    remarks.samples();
    remarks.targets();
    remarks.drivers();
    remarks.idle();
    return List.copyOf(remarks.remarks);
  }

  /** Whether it is about samples that did not end as they should. */
  public static boolean isOfSamples(Finding remark) {
    return remark.code().startsWith("samples-");
  }

  private void samples() {
    Odds.Tally tally = answer.odds().tally();
    samples(
        "samples-without-balance",
        tally.withoutBalance(),
        " no balance: no flow in the allowed directions meets a draw. They count as missed targets"
            + " and are excluded from the flows.");
    samples(
        "samples-not-found",
        tally.notFound(),
        " no balance found: a defect in the program. Please report it with the file. They count as"
            + " missed targets and are excluded from the flows.");
    samples(
        "samples-contradictory",
        tally.contradictory(),
        " values that contradict each other ("
            + answer.contradiction().orElse("")
            + "). They are ignored; narrow the ranges to exclude them.");
    samples(
        "samples-starved",
        tally.starved(),
        " a chamber drawn down to its intake, where the pump may draw air. Their flows are"
            + " counted.");
  }

  /** "120 of 10,000 samples (1.2 %) have …". */
  private void samples(String code, int count, String what) {
    int samples = answer.odds().plan().samples();
    if (count > 0) {
      remarks.add(
          Finding.of(Severity.PROBLEM, code, "", "")
              .figure("count", count, Unit.ONE, wording -> counted(count))
              .then(" of ")
              .figure("samples", samples, Unit.ONE, wording -> counted(samples))
              .then(" samples (")
              .figure(
                  "share",
                  (double) count / samples,
                  Unit.ONE,
                  wording -> chances.of((double) count / samples))
              .then(count == 1 ? ") has" : ") have")
              .then(what));
    }
  }

  private static String counted(int count) {
    return String.format(Locale.ROOT, "%,d", count);
  }

  private void targets() {
    for (FallOdds fall : answer.odds().falls()) {
      if (fall.chance().isPresent()) {
        double chance = fall.chance().getAsDouble();
        String name = fall.name().value();
        remarks.add(
            Finding.of(Severity.NOTE, "chance", name, "\"" + name + "\" ")
                .figure("chance", chance, Unit.ONE, wording -> chances.sentence(chance)));
      }
    }
    long targets = answer.odds().falls().stream().filter(f -> f.chance().isPresent()).count();
    if (targets > 1) {
      double chance = answer.odds().chanceOfAll().orElseThrow();
      remarks.add(
          Finding.of(
                  Severity.NOTE, "chance-of-all", "", "All of them get their target together in ")
              .figure("chance", chance, Unit.ONE, wording -> chances.ofHundred(chance))
              .then(" % of samples."));
    }
  }

  private void drivers() {
    List<RankedDriver> ranked = answer.ranked();
    if (ranked.isEmpty() || ranked.get(0).driver().varianceShare() == 0) {
      remarks.add(
          Finding.of(
              Severity.NOTE,
              "nothing-matters",
              "",
              "No flow changes noticeably with the uncertain values: there is nothing to"
                  + " measure."));
      return;
    }
    RankedDriver first = ranked.get(0);
    if (first.driver().varianceShare() >= WORTH_KNOWING) {
      String address = first.unknown().address();
      remarks.add(
          Finding.of(
                  Severity.ADVICE,
                  "measure-first",
                  address,
                  "Look first at "
                      + PlainText.quoted(UnknownWords.of(first.unknown()))
                      + ": if it is known exactly, ")
              .share("varianceShare", first.driver().varianceShare())
              .then(
                  " of the variance goes away. Values with a share near 0 are not worth"
                      + " measuring."));
    }
    if (answer.together() >= WORTH_A_WORD) {
      remarks.add(
          Finding.of(Severity.NOTE, "together", "", "")
              .share("varianceShare", answer.together())
              .then(" of the variance comes from several values together, not from one alone."));
    }
  }

  private void idle() {
    for (Unknown unknown : answer.idle()) {
      remarks.add(
          Finding.of(
              Severity.NOTE,
              "no-say",
              unknown.address(),
              PlainText.quoted(UnknownWords.of(unknown))
                  + " ("
                  + unknown.written()
                  + ") does not affect the flows and is left out."));
    }
  }
}
