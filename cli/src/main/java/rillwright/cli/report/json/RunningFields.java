package rillwright.cli.report.json;

import java.util.Optional;
import rillwright.cli.study.RunningFigures;
import rillwright.cli.study.Turnover;
import rillwright.curves.sheet.Price;

/** What running takes, for programs. */
final class RunningFields {
  private final Json json;

  RunningFields(Json json) {
    this.json = json;
  }

  /** A member called {@code running}. */
  void write(RunningFigures figures) {
    json.object("running", () -> members(figures));
  }

  /** The same, null where nothing is known. */
  void write(Optional<RunningFigures> figures) {
    json.objectOrNull("running", figures, this::members);
  }

  private void members(RunningFigures figures) {
    json.number("powerW", figures.powerW());
    json.number("waterPowerW", figures.waterPowerW());
    json.number("wireToWater", figures.wireToWater());
    json.number("hoursPerDay", figures.running().hoursADay());
    json.number("daysPerYear", figures.running().daysAYear());
    json.number("energyKwhPerYear", figures.energyKwhPerYear());
    json.number("costPerYear", figures.costPerYear());
    json.wordsOrNull("currency", figures.running().price().map(Price::currency));
    json.object(
        "turnoversPerDay",
        () -> {
          for (Turnover turnover : figures.turnovers()) {
            json.number(turnover.basin().value(), turnover.perDay());
          }
        });
  }
}
