package rillwright.cli.report.text.choice;

import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.cli.report.units.ShownUnits;
import rillwright.solver.study.pipechoice.RatedPipe;
import rillwright.solver.trial.RatedTrial;

/** Energy and money in cells of a table. */
final class MoneyWords {
  private static final String UNKNOWN = "not known";
  private static final String PUMP = " + pump";

  private final ShownUnits units;
  private final Optional<String> currency;

  MoneyWords(ShownUnits units, Optional<String> currency) {
    this.units = units;
    this.currency = currency;
  }

  String energy(OptionalDouble kwh) {
    return kwh.isPresent() ? units.amount(kwh.getAsDouble()) + " kWh" : UNKNOWN;
  }

  String price(OptionalDouble price) {
    return price.isPresent()
        ? units.number(price.getAsDouble()) + currency.map(c -> " " + c).orElse("")
        : "not given";
  }

  String amount(OptionalDouble amount) {
    return amount.isPresent()
        ? units.amount(amount.getAsDouble()) + currency.map(c -> " " + c).orElse("")
        : UNKNOWN;
  }

  /** The same of a pipe with its pump. */
  String cost(RatedPipe rated, boolean marked) {
    boolean without =
        marked
            && rated.costOverYears().isPresent()
            && rated.pump().trial().setup().price().isEmpty();
    return amount(rated.costOverYears()) + (without ? PUMP : "");
  }

  /**
   * What a pump costs over the years.
   *
   * @param marked whether to mark it where the pump's own price is not in it
   */
  String cost(RatedTrial rated, boolean marked) {
    boolean without =
        marked && rated.costOverYears().isPresent() && rated.trial().setup().price().isEmpty();
    return amount(rated.costOverYears()) + (without ? PUMP : "");
  }
}
