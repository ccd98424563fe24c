package rillwright.cli.report.odds;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import rillwright.cli.report.odds.OddsAnswer.RankedDriver;
import rillwright.cli.report.odds.OddsAnswer.Unknown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.solver.study.uncertainty.Odds;
import rillwright.solver.study.uncertainty.Odds.FallOdds;

/** What to know about odds: what matters most, and which samples did not end as they should. */
public final class Remarks {
  /** A driver with less than this share is not worth a measurement. */
  private static final double WORTH_KNOWING = 0.05;

  /** What several unknowns do together is worth a word from this share on. */
  private static final double WORTH_A_WORD = 0.1;

  private final OddsAnswer answer;
  private final ShownUnits units;
  private final List<Remark> remarks = new ArrayList<>();

  private Remarks(OddsAnswer answer) {
    this.answer = answer;
    this.units = answer.units();
  }

  /** The remarks, the most important first. */
  public static List<Remark> of(OddsAnswer answer) {
    Remarks remarks = new Remarks(answer);
    remarks.samples();
    remarks.wishes();
    remarks.drivers();
    remarks.idle();
    return List.copyOf(remarks.remarks);
  }

  private void add(String code, String at, String message) {
    remarks.add(new Remark(code, at, message));
  }

  private void samples() {
    Odds.Tally tally = answer.odds().tally();
    if (tally.withoutBalance() > 0) {
      add(
          "samples-without-balance",
          "",
          counted(tally.withoutBalance())
              + " no balance: no flow in the allowed directions meets a draw. They count as wishes"
              + " missed and are left out of the flows.");
    }
    if (tally.notFound() > 0) {
      add(
          "samples-not-found",
          "",
          counted(tally.notFound())
              + " a balance that was not found: a defect in the program. Please report it together"
              + " with the file. They count as wishes missed and are left out of the flows.");
    }
    if (tally.contradictory() > 0) {
      add(
          "samples-contradictory",
          "",
          counted(tally.contradictory())
              + " values that contradict each other ("
              + answer.contradiction().orElse("")
              + "). They count for nothing; narrow the ranges so that it cannot be.");
    }
    if (tally.starved() > 0) {
      add(
          "samples-starved",
          "",
          counted(tally.starved())
              + " a chamber drawn down to its intake: the pump runs short of water there and may"
              + " suck air. Their flows are counted.");
    }
  }

  /** "120 of 10,000 samples (1.2 %) have". */
  private String counted(int count) {
    int samples = answer.odds().plan().samples();
    return String.format(
        Locale.ROOT,
        "%,d of %,d samples (%s) %s",
        count,
        samples,
        new ChanceWords(units).of((double) count / samples),
        count == 1 ? "has" : "have");
  }

  private void wishes() {
    for (FallOdds fall : answer.odds().falls()) {
      if (fall.chance().isPresent()) {
        add(
            "chance",
            fall.name().value(),
            "\""
                + fall.name().value()
                + "\" "
                + new ChanceWords(units).sentence(fall.chance().getAsDouble()));
      }
    }
    long wishes = answer.odds().falls().stream().filter(f -> f.chance().isPresent()).count();
    if (wishes > 1) {
      double chance = answer.odds().chanceOfAll().orElseThrow();
      add(
          "chance-of-all",
          "",
          "All of them get their wish at once in "
              + new ChanceWords(units).ofHundred(chance)
              + " of 100 cases.");
    }
  }

  private void drivers() {
    List<RankedDriver> ranked = answer.ranked();
    if (ranked.isEmpty() || ranked.get(0).driver().share() == 0) {
      add(
          "nothing-matters",
          "",
          "No flow changes noticeably with what is not known exactly: there is nothing to"
              + " measure.");
      return;
    }
    RankedDriver first = ranked.get(0);
    if (first.driver().share() >= WORTH_KNOWING) {
      add(
          "measure-first",
          first.unknown().address(),
          "Look at "
              + first.unknown().address()
              + " first: if it were known exactly, "
              + units.share(first.driver().share())
              + " of the spread (as variance) would go away. What has a share near 0 is not worth"
              + " measuring.");
    }
    if (answer.together() >= WORTH_A_WORD) {
      add(
          "together",
          "",
          units.share(answer.together())
              + " of the spread comes from several of them together and from none by itself.");
    }
  }

  private void idle() {
    for (Unknown unknown : answer.idle()) {
      add(
          "no-say",
          unknown.address(),
          unknown.address()
              + " ("
              + unknown.written()
              + ") has no say in what flows and is left out.");
    }
  }
}
