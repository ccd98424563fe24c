package rillwright.cli.report.text.choice;

import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.cli.report.text.TurnoverWords;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.choice.PumpedYear;
import rillwright.solver.trial.PumpTrial;

/** What a pump that is tried takes in a year, in words. */
final class YearWords {
  private YearWords() {}

  /** Both in words, a sentence each; empty if neither is known. */
  static String of(PumpedYear year, PumpTrial trial, ShownUnits units, Optional<String> currency) {
    OptionalDouble cost = year.cost(trial);
    String money =
        cost.isPresent()
            ? " Its electricity costs "
                + units.amount(cost.getAsDouble())
                + currency.map(name -> " " + name).orElse("")
                + " a year."
            : "";
    return year.turnover(trial).map(turnover -> " " + TurnoverWords.of(turnover, units)).orElse("")
        + money;
  }
}
