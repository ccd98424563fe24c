package rillwright.cli.report.json;

import static rillwright.cli.json.Quantity.ENERGY;
import static rillwright.cli.json.Quantity.MONEY;
import static rillwright.cli.json.Quantity.NUMBER;
import static rillwright.cli.json.Quantity.POWER;
import static rillwright.cli.json.Quantity.SHARE;

import rillwright.cli.json.Quantity;
import rillwright.cli.json.Shape;
import rillwright.cli.json.Value;
import rillwright.cli.study.RunningFigures;
import rillwright.curves.sheet.fact.Price;

/** What running takes, for programs. */
final class RunningJson {
  static final Shape<RunningFigures> SHAPE =
      Shape.<RunningFigures>named("running", "What running all pumps takes.")
          .numberOrNull(
              "powerW",
              POWER,
              "Drawn from the wire; null if a data sheet gives none.",
              RunningFigures::powerW)
          .number(
              "waterPowerW",
              Quantity.of("W"),
              "Hydraulic power: flow times head.",
              RunningFigures::waterPowerW)
          .numberOrNull(
              "wireToWater",
              SHARE,
              "Wire-to-water efficiency, hydraulic per electrical power; null if nothing runs or"
                  + " power is not known.",
              RunningFigures::wireToWater)
          .number(
              "hoursPerDay",
              NUMBER.from(0).upTo(24),
              "24 unless the file says otherwise.",
              figures -> figures.running().hoursADay())
          .number(
              "daysPerYear",
              NUMBER.from(0).upTo(366),
              "365 unless the file says otherwise.",
              figures -> figures.running().daysAYear())
          .numberOrNull(
              "energyKwhPerYear", ENERGY, "Energy of a year.", RunningFigures::energyKwhPerYear)
          .numberOrNull(
              "costPerYear",
              MONEY,
              "Electricity of a year; null if power or price is not known.",
              RunningFigures::costPerYear)
          .orNull(
              "currency",
              Value.words(),
              "Of that cost.",
              figures -> figures.running().price().map(Price::currency))
          .each(
              "turnoversPerDay",
              NUMBER.from(0),
              "How often a basin's water is pumped round, by name, where its volume is known.",
              RunningFigures::turnovers,
              turnover -> turnover.basin().value(),
              turnover -> turnover.perDay());

  private RunningJson() {}
}
