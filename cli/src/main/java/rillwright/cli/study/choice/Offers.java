package rillwright.cli.study.choice;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.cli.file.Project;
import rillwright.cli.file.pump.SheetFolder;
import rillwright.cli.file.site.Prices;
import rillwright.curves.sheet.DataSheet;
import rillwright.curves.sheet.fact.Price;
import rillwright.curves.sheet.fact.SheetFacts;
import rillwright.solver.trial.PumpOffer;
import rillwright.solver.trial.SpeedBand;

/**
 * The pumps of a folder as they can be had.
 *
 * @param pumps in alphabetical order
 * @param currency of all prices: the project's, else the first that a sheet names; empty if none
 * @param otherCurrencies models whose price is in another currency and does not count
 */
record Offers(List<PumpOffer> pumps, Optional<String> currency, List<String> otherCurrencies) {

  /** The pumps of a folder. */
  static Offers of(SheetFolder folder, Project project) {
    return of(folder.sheets(), project);
  }

  /** The one pump that a project has. */
  static Offers ofProject(Project project, String model) {
    Map<String, DataSheet> one = Map.of(model, project.sheets().get(model));
    return of(one, project);
  }

  private static Offers of(Map<String, DataSheet> sheets, Project project) {
    Optional<String> currency = currencyOf(project).or(() -> firstIn(sheets));
    List<PumpOffer> pumps = new ArrayList<>();
    List<String> others = new ArrayList<>();
    for (Map.Entry<String, DataSheet> entry : sheets.entrySet()) {
      SheetFacts facts = entry.getValue().facts();
      boolean counts =
          facts.price().isPresent() && currency.equals(facts.price().map(it -> it.currency()));
      if (facts.price().isPresent() && !counts) {
        others.add(entry.getKey());
      }
      pumps.add(
          new PumpOffer(
              entry.getKey(),
              entry.getValue().curve(),
              facts.variableSpeed().map(speed -> new SpeedBand(speed.least(), speed.greatest())),
              counts
                  ? OptionalDouble.of(facts.price().orElseThrow().amount())
                  : OptionalDouble.empty(),
              facts.needs(),
              !facts.isSubmersible()));
    }
    return new Offers(pumps, currency, others);
  }

  /** The currency of a project: a file has one. */
  static Optional<String> currencyOf(Project project) {
    Prices prices = project.prices();
    return project
        .running()
        .price()
        .or(() -> prices.pipe().values().stream().findFirst())
        .or(() -> prices.fittings().values().stream().findFirst())
        .or(prices::trench)
        .map(Price::currency);
  }

  private static Optional<String> firstIn(Map<String, DataSheet> sheets) {
    return sheets.values().stream()
        .map(sheet -> sheet.facts().price())
        .flatMap(Optional::stream)
        .map(Price::currency)
        .findFirst();
  }
}
