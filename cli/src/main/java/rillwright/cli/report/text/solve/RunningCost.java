package rillwright.cli.report.text.solve;

import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.cli.file.field.Price;
import rillwright.cli.file.site.Running;
import rillwright.cli.report.Solved;
import rillwright.cli.report.text.Page;
import rillwright.cli.report.units.ShownUnits;
import rillwright.solver.law.Gravity;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Pump;
import rillwright.solver.steady.LineState;
import rillwright.solver.steady.PartState;
import rillwright.solver.steady.PointState;

/** What running the pumps takes: watts, energy and money a year; how often they turn the water. */
final class RunningCost {
  private static final double WHOLE_DAY_H = 24;
  private static final double WHOLE_YEAR_DAYS = 365;
  private static final double WATTS_PER_KILOWATT = 1000;
  private static final double SECONDS_PER_HOUR = 3600;

  private final Solved solved;
  private final ShownUnits units;
  private double powerW;
  private double waterPowerW;
  private int pumps;
  private boolean allPowersKnown = true;

  private RunningCost(Solved solved) {
    this.solved = solved;
    this.units = solved.units();
    for (LineState line : solved.state().lines()) {
      for (PartState part : line.parts()) {
        if (part.part() instanceof Pump pump) {
          count(pump, part.flowM3PerS());
        }
      }
    }
  }

  static void print(Solved solved, Page page) {
    RunningCost cost = new RunningCost(solved);
    if (cost.pumps == 0) {
      return;
    }
    page.heading("RUNNING");
    cost.energy(page);
    cost.turnovers(page);
  }

  private void count(Pump pump, double flowM3PerS) {
    pumps++;
    OptionalDouble power = pump.set().powerAt(flowM3PerS);
    allPowersKnown &= power.isPresent();
    powerW += power.orElse(0);
    waterPowerW +=
        solved.state().network().water().densityKgPerM3()
            * Gravity.STANDARD_M_PER_S2
            * flowM3PerS
            * pump.set().headAt(flowM3PerS);
  }

  private void energy(Page page) {
    if (!allPowersKnown) {
      page.paragraph(
          "What it takes to run is not known: the data sheet of a pump gives no power. Read it with"
              + " a watt meter.");
      return;
    }
    if (powerW == 0) {
      page.paragraph("Nothing runs.");
      return;
    }
    Running running = solved.running();
    double hours = running.hoursPerDay().orElse(WHOLE_DAY_H);
    double days = running.daysPerYear().orElse(WHOLE_YEAR_DAYS);
    double energyKwh = powerW / WATTS_PER_KILOWATT * hours * days;
    String taken =
        running.hoursPerDay().isPresent() && running.daysPerYear().isPresent()
            ? ""
            : " (taken where the file says nothing under \"running\")";
    page.paragraph(
        units.power(powerW)
            + ", "
            + units.number(hours)
            + " hours a day on "
            + units.number(days)
            + " days a year"
            + taken
            + ": about "
            + units.amount(energyKwh)
            + " kWh a year"
            + money(running.price(), energyKwh)
            + ".");
    if (waterPowerW > 0) {
      page.paragraph(
          "Of that power "
              + units.share(waterPowerW / powerW)
              + " becomes flow and head (wire to water).");
    }
  }

  private String money(Optional<Price> price, double energyKwh) {
    return price
        .map(
            p ->
                ", "
                    + units.amount(p.amount() * energyKwh)
                    + " "
                    + p.currency()
                    + " at "
                    + units.number(p.amount())
                    + " "
                    + p.currency()
                    + "/"
                    + p.per())
        .orElse("");
  }

  private void turnovers(Page page) {
    double hours = solved.running().hoursPerDay().orElse(WHOLE_DAY_H);
    for (PointState point : solved.state().points()) {
      double drawn = -point.outflowM3PerS();
      double volume =
          point.point() instanceof Basin basin
              ? basin.shape().map(shape -> shape.volumeM3(basin.levelM())).orElse(0.0)
              : 0;
      if (drawn > 0 && volume > 0) {
        double perDay = drawn * SECONDS_PER_HOUR * hours / volume;
        page.paragraph(
            "The "
                + units.volume(volume)
                + " of \""
                + point.point().name().value()
                + "\" turn over "
                + units.amount(perDay)
                + " times a day, once in "
                + units.duration(volume / drawn)
                + " of running.");
      }
    }
  }
}
