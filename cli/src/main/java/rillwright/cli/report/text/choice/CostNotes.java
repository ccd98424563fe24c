package rillwright.cli.report.text.choice;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import rillwright.cli.file.fault.Fault;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.units.ShownUnits;
import rillwright.curves.wording.PlainText;
import rillwright.solver.trial.PumpSetup;
import rillwright.solver.trial.RunningTerms;

/** What a ranking by cost stands on, and what it had to leave out. */
final class CostNotes {
  /** Where no larger size than the best was tried. */
  static final String LARGEST = "It is the largest size tried; add a larger one to compare.";

  /** Where the figures of some rows are at a throttled point. */
  static final String THROTTLED =
      "Rows marked \"throttled\" show throttled figures and warnings, here and below; all others"
          + " are with the valves as they stand.";

  private static final String SPEEDS =
      "A speed below 100 % is the least in whole percents at which every fall gets its whole target";

  private final PageBuilder page;
  private final ShownUnits units;
  private final Optional<String> currency;

  CostNotes(PageBuilder page, ShownUnits units, Optional<String> currency) {
    this.page = page;
    this.units = units;
    this.currency = currency;
  }

  /**
   * What electricity is counted at.
   *
   * @param instead by what those that do it are ranked where no cost is known
   * @param more what else the cost over the years counts
   */
  void electricity(RunningTerms terms, String instead, String more) {
    if (terms.pricePerKwh().isEmpty()) {
      page.paragraph(
          "The file gives no price of electricity, so no cost is shown; those that meet the target"
              + " are ranked by "
              + instead
              + ". Write for example \"running: {price: "
              + sample("0.17")
              + "/kWh, hours: 24 h/day, days: 210 days/year}\".");
      return;
    }
    page.paragraph(
        counted(terms)
            + " \""
            + units.number(terms.years())
            + "-year cost\" is that electricity"
            + more);
  }

  /** What electricity is counted at, where it has a price and no cost over the years is shown. */
  void electricity(RunningTerms terms) {
    if (terms.pricePerKwh().isPresent()) {
      page.paragraph(counted(terms));
    }
  }

  private String counted(RunningTerms terms) {
    return "Electricity is counted for "
        + String.format(Locale.ROOT, "%,d", Math.round(terms.hoursPerYear()))
        + " hours a year at "
        + units.number(terms.pricePerKwh().orElseThrow())
        + currency.map(name -> " " + name).orElse("")
        + "/kWh.";
  }

  /** An amount in the currency of the file. */
  private String sample(String amount) {
    return amount + " " + currency.orElse("USD");
  }

  /**
   * Says that some pumps have no price.
   *
   * @param marked whether such costs are marked
   * @param several whether some run together
   */
  void unpricedPumps(boolean marked, boolean several) {
    page.paragraph(
        (marked ? "\"+ pump\": no" : "No")
            + " price in the data sheet (\"# price: "
            + sample("389")
            + "\"), so the cost excludes the pump"
            + (several ? ", and two may rank before one that costs less to buy" : "")
            + (marked
                ? ". Ask for the price before comparing; such pumps are listed after those with a"
                    + " price."
                : "."));
  }

  /** How a lower speed was chosen, where one is shown. */
  void speeds(Stream<PumpSetup> shown, boolean inConditions) {
    if (shown.anyMatch(setup -> setup.speed() < 1)) {
      page.paragraph(SPEEDS + (inConditions ? ", as written or in one of the conditions." : "."));
    }
  }

  void otherCurrencies(List<String> models) {
    if (!models.isEmpty()) {
      page.paragraph(
          "Prices in another currency than "
              + currency.orElse("the file's")
              + " do not count: "
              + String.join(", ", models)
              + ".");
    }
  }

  void notTried(List<Fault> faults, List<String> unbalanced) {
    faults.forEach(fault -> page.marked("! ", "Not tried: " + fault));
    for (String model : unbalanced) {
      page.marked("! ", "Not tried: with " + PlainText.quoted(model) + " there is no balance.");
    }
  }

  /**
   * What figures of the water mean, and what the price of a pipe counts, or how to give one.
   *
   * @param unpriced pipe without a price
   * @param anyPriced whether some choice has one
   * @param more to say of it where all have a price
   */
  void pipe(List<String> unpriced, boolean anyPriced, String more) {
    page.paragraph(
        "\"Loss per "
            + units.frictionLength()
            + "\" is friction; it and the speed are the greatest of these lines; \"holds\" is"
            + " the water in their pipe. Valves and fittings that name no size of their own are"
            + " computed in that of their line."
            + (unpriced.isEmpty()
                ? " \"Pipe cost\" is that pipe, with the fittings that have a price; the trench"
                    + " costs the same for any size and is not included."
                    + more
                : ""));
    if (!unpriced.isEmpty()) {
      page.marked(
          anyPriced ? "! " : "",
          "No price is given for "
              + String.join(", ", unpriced)
              + (anyPriced
                  ? ", so its cost is not known and it is listed after those with a price"
                  : ", so the cost excludes the pipe")
              + "; write for example \"prices: {pipe: {"
              + unpriced.get(0)
              + ": "
              + sample("4.20")
              + "/"
              + units.frictionLength().replaceAll(".* ", "")
              + "}}\".");
    }
  }

  /** Says which fittings do not count while others do. */
  void uncounted(List<String> fittings) {
    if (!fittings.isEmpty()) {
      page.marked(
          "! ",
          "No price is given for "
              + String.join(", ", fittings)
              + ", though other fittings have one: sizes with these appear cheaper than they are."
              + " Write for example \"prices: {fittings: {"
              + fittings.get(0)
              + ": "
              + sample("3.10")
              + "}}\".");
    }
  }
}
