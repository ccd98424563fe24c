package rillwright.solver.trial;

import java.util.OptionalDouble;

/**
 * How long pumps run and what that costs.
 *
 * @param hoursPerYear 0 or more
 * @param pricePerKwh of electricity, in the currency of all prices, where known
 * @param years over which cost is counted, above 0
 */
public record RunningTerms(double hoursPerYear, OptionalDouble pricePerKwh, double years) {
  private static final double WATTS_PER_KILOWATT = 1000;

  /** Energy of a year, kWh; empty if the power is not known. */
  public OptionalDouble energyKwhPerYear(OptionalDouble powerW) {
    return powerW.isPresent()
        ? OptionalDouble.of(powerW.getAsDouble() / WATTS_PER_KILOWATT * hoursPerYear)
        : powerW;
  }

  /**
   * What is paid once and electricity over the years; empty if power or the price of electricity is
   * not known.
   *
   * @param paidOnce 0 where it is not known
   */
  public OptionalDouble costOverYears(OptionalDouble powerW, double paidOnce) {
    OptionalDouble energy = energyKwhPerYear(powerW);
    return energy.isPresent() && pricePerKwh.isPresent()
        ? OptionalDouble.of(paidOnce + years * energy.getAsDouble() * pricePerKwh.getAsDouble())
        : OptionalDouble.empty();
  }
}
