package rillwright.solver.study.pipechoice;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import rillwright.solver.finding.Finding;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.trial.Demand;
import rillwright.solver.trial.PumpSetup;
import rillwright.solver.trial.RatedTrial;

/**
 * Sizes with their own cheapest pump.
 *
 * @param option which sizes
 * @param demand what the targets ask of the pump there
 * @param pump the cheapest pump that gives the falls their targets; if none does, the nearest
 * @param costOverYears pipe, pump and electricity; empty if something of it is not known
 */
public record RatedPipe(
    PipeOption option, Demand demand, RatedTrial pump, OptionalDouble costOverYears)
    implements SizedPipe {
  /**
   * As pumps are ranked, the cost of the pipe included; of equal ones the narrower first. What has
   * a pipe or pump without a price is listed after what has one.
   *
   * @param onePump whether all that meet the targets run one and the same pump: throttled alike
   *     they draw the same, so only the cost of the pipe counts
   */
  static Comparator<RatedPipe> bestFirst(boolean onePump) {
    return Comparator.comparing((RatedPipe rated) -> !rated.meetsTargets())
        .thenComparing(rated -> rated.meetsTargets() && rated.option.materialCost().isEmpty())
        .thenComparingInt(rated -> rated.meetsTargets() ? rated.pump.unknownCost() : 0)
        .thenComparingDouble(rated -> rated.meetsTargets() ? WholeCents.of(rated.cost(onePump)) : 0)
        .thenComparingDouble(rated -> rated.meetsTargets() ? rated.option.sumOfBoresM() : 0)
        .thenComparing(rated -> rated.pump, RatedTrial.BEST_FIRST);
  }

  /** What is compared. */
  private OptionalDouble cost(boolean onePump) {
    return onePump ? option.materialCost() : costOverYears;
  }

  @Override
  public SteadyState state() {
    return pump.trial().state();
  }

  @Override
  public SteadyState stateInUse() {
    return pump.trial().stateInUse();
  }

  @Override
  public List<Finding> findings() {
    return pump.trial().findings();
  }

  /** Whether it gives the falls their targets. */
  @Override
  public boolean meetsTargets() {
    return pump.meetsTargets();
  }

  /** Whether it meets the targets throttled. */
  public boolean isThrottled() {
    return pump.trial().verdict().throttled().isPresent();
  }

  /** What is paid at once: pipe and pumps, as far as known. */
  public double paidOnce() {
    return option.materialCost().orElse(0) + pump.trial().setup().price().orElse(0);
  }

  /** Whether pumps are counted alike: both with a price, both without, or one and the same. */
  boolean pumpPriceCompares(RatedPipe other) {
    PumpSetup own = pump.trial().setup();
    PumpSetup others = other.pump.trial().setup();
    boolean known = own.price().isPresent() == others.price().isPresent();
    boolean alike = own.offer().equals(others.offer()) && own.count() == others.count();
    return known || alike;
  }

  /** Whether two run one and the same pump at one speed. */
  public boolean hasThePumpOf(RatedPipe other) {
    return pump.trial().setup().equals(other.pump.trial().setup());
  }
}
