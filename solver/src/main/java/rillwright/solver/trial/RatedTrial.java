package rillwright.solver.trial;

import java.util.Comparator;
import java.util.OptionalDouble;

/**
 * A trial with what it costs.
 *
 * @param trial the pump tried
 * @param energyPerYearKwh kWh of a year, as it would run day by day; empty if its power is not
 *     known
 * @param costOverYears its price, as far as known, and electricity over the years; empty if power
 *     or the price of electricity is not known
 */
public record RatedTrial(
    PumpTrial trial, OptionalDouble energyPerYearKwh, OptionalDouble costOverYears) {

  /**
   * Those that do it first, by cost, then energy where no cost is known, then flow; then the
   * others, by the share of its wish that the worst fall gets, the largest first, then by the head
   * that is missing.
   */
  public static final Comparator<RatedTrial> BEST_FIRST =
      Comparator.comparing((RatedTrial rated) -> !rated.does())
          .thenComparingDouble(rated -> rated.does() ? known(rated.costOverYears) : 0)
          .thenComparingDouble(rated -> rated.does() ? known(rated.energyPerYearKwh) : 0)
          .thenComparingDouble(rated -> -Math.min(1, rated.trial.verdict().worstShare()))
          .thenComparingDouble(rated -> known(rated.trial.verdict().missingHeadM()))
          .thenComparing(rated -> rated.trial.setup().offer().model())
          .thenComparingInt(rated -> rated.trial.setup().count());

  private static double known(OptionalDouble value) {
    return value.orElse(Double.POSITIVE_INFINITY);
  }

  /** A trial on terms. */
  public static RatedTrial of(PumpTrial trial, RunningTerms terms) {
    OptionalDouble power = trial.inUse().powerW();
    return new RatedTrial(
        trial,
        terms.energyPerYearKwh(power),
        terms.costOverYears(power, trial.setup().price().orElse(0)));
  }

  /** Whether it gives the falls their wishes. */
  public boolean does() {
    return trial.verdict().does();
  }
}
