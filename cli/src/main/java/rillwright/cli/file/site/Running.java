package rillwright.cli.file.site;

import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.curves.sheet.fact.Price;
import rillwright.solver.trial.RunningTerms;

/**
 * How long the pumps run and what electricity costs, as far as the file says.
 *
 * @param price of a kilowatt-hour
 * @param hoursPerDay 0 to 24
 * @param daysPerYear 0 to 366
 */
public record Running(
    Optional<Price> price, OptionalDouble hoursPerDay, OptionalDouble daysPerYear) {
  private static final double WHOLE_DAY_H = 24;
  private static final double WHOLE_YEAR_DAYS = 365;
  private static final double WATTS_PER_KILOWATT = 1000;

  /** Hours a day: what the file says, else all day. */
  public double hoursADay() {
    return hoursPerDay.orElse(WHOLE_DAY_H);
  }

  /** Days a year: what the file says, else all year. */
  public double daysAYear() {
    return daysPerYear.orElse(WHOLE_YEAR_DAYS);
  }

  /** Hours a year, taken where the file does not say. */
  public double hoursAYear() {
    return hoursADay() * daysAYear();
  }

  /** Whether the file leaves hours or days open. */
  public boolean leavesTimesOpen() {
    return hoursPerDay.isEmpty() || daysPerYear.isEmpty();
  }

  /** What running costs over some years: all day and all year where the file does not say. */
  public RunningTerms over(double years) {
    OptionalDouble amount =
        price.isPresent() ? OptionalDouble.of(price.get().amount()) : OptionalDouble.empty();
    return new RunningTerms(hoursAYear(), amount, years);
  }

  /** Energy of a year at a power, W, in kWh. */
  public double energyKwhPerYear(double powerW) {
    return powerW / WATTS_PER_KILOWATT * hoursADay() * daysAYear();
  }

  /** Electricity of a year at a power, W, in the currency of the price; empty without a price. */
  public OptionalDouble costPerYear(double powerW) {
    return price.isPresent()
        ? OptionalDouble.of(energyKwhPerYear(powerW) * price.get().amount())
        : OptionalDouble.empty();
  }
}
