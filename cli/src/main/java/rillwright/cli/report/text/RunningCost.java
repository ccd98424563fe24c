package rillwright.cli.report.text;

import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.RunningFigures;
import rillwright.curves.sheet.fact.Price;

/** What running the pumps takes: watts, energy and money a year; how often they turn the water. */
public final class RunningCost {
  private final RunningFigures figures;
  private final ShownUnits units;
  private final PageBuilder page;

  private RunningCost(RunningFigures figures, ShownUnits units, PageBuilder page) {
    this.figures = figures;
    this.units = units;
    this.page = page;
  }

  /** Under a heading of its own; nothing where there is no pump. */
  public static void print(RunningFigures figures, ShownUnits units, PageBuilder page) {
    if (figures.pumps() == 0) {
      return;
    }
    page.heading("RUNNING");
    RunningCost cost = new RunningCost(figures, units, page);
    cost.energy();
    figures.turnovers().forEach(turnover -> page.paragraph(TurnoverWords.of(turnover, units)));
  }

  private void energy() {
    if (figures.powerW().isEmpty()) {
      page.paragraph(
          "The running cost is not known: a pump's data sheet gives no power. Measure it with a"
              + " watt meter.");
      return;
    }
    double power = figures.powerW().getAsDouble();
    if (power == 0) {
      page.paragraph("Nothing runs.");
      return;
    }
    page.paragraph(
        units.power(power)
            + ", "
            + units.number(figures.running().hoursADay())
            + " hours a day on "
            + units.number(figures.running().daysAYear())
            + " days a year"
            + taken()
            + ": about "
            + units.amount(figures.energyKwhPerYear().getAsDouble())
            + " kWh a year"
            + money()
            + ".");
    if (figures.wireToWater().isPresent()) {
      page.paragraph(
          "Wire-to-water efficiency: " + units.share(figures.wireToWater().getAsDouble()) + ".");
    }
  }

  /** Which of hours and days the file does not say. */
  private String taken() {
    if (!figures.running().hoursPerDay().isEmpty() && !figures.running().daysPerYear().isEmpty()) {
      return "";
    }
    boolean both =
        figures.running().hoursPerDay().isEmpty() && figures.running().daysPerYear().isEmpty();
    return " ("
        + (both ? "" : figures.running().daysPerYear().isEmpty() ? "the days " : "the hours ")
        + "default; set it under \"running\")";
  }

  private String money() {
    if (figures.running().price().isEmpty()) {
      return "";
    }
    Price price = figures.running().price().get();
    return ", "
        + units.amount(figures.costPerYear().getAsDouble())
        + " "
        + price.currency()
        + " at "
        + units.number(price.amount())
        + " "
        + price.currency()
        + "/kWh";
  }
}
