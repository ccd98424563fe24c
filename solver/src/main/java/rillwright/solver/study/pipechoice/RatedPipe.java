package rillwright.solver.study.pipechoice;

import java.util.Comparator;
import java.util.OptionalDouble;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.trial.Demand;
import rillwright.solver.trial.RatedTrial;

/**
 * Sizes with their own cheapest pump.
 *
 * @param option which sizes
 * @param demand what the wishes ask of the pump there
 * @param pump the cheapest pump that gives the falls their wishes; if none does, the nearest
 * @param costOverYears pipe, pump and electricity; empty if something of it is not known
 */
public record RatedPipe(
    PipeOption option, Demand demand, RatedTrial pump, OptionalDouble costOverYears)
    implements SizedPipe {
  /** Costs that differ by less than a cent do not differ. */
  private static final double CENTS = 100;

  /** As pumps are ranked, the cost of the pipe included; of equal ones the narrower first. */
  static final Comparator<RatedPipe> BEST_FIRST =
      Comparator.comparing((RatedPipe rated) -> !rated.does())
          .thenComparingDouble(
              rated -> rated.does() ? Math.rint(CENTS * known(rated.costOverYears)) : 0)
          .thenComparingDouble(rated -> rated.does() ? rated.option.sumOfBoresM() : 0)
          .thenComparing(rated -> rated.pump, RatedTrial.BEST_FIRST);

  private static double known(OptionalDouble value) {
    return value.orElse(Double.POSITIVE_INFINITY);
  }

  @Override
  public SteadyState state() {
    return pump.trial().state();
  }

  /** Whether it gives the falls their wishes. */
  @Override
  public boolean does() {
    return pump.does();
  }

  /** What is paid at once: pipe and pumps, as far as known. */
  public double paidOnce() {
    return option.materialCost().orElse(0) + pump.trial().setup().price().orElse(0);
  }

  /** Whether two run one and the same pump at one speed. */
  public boolean hasThePumpOf(RatedPipe other) {
    return pump.trial().setup().equals(other.pump.trial().setup());
  }
}
