package rillwright.solver.trial;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.solver.finding.Findings;

/**
 * A trial with what it costs.
 *
 * @param trial the pump tried
 * @param energyKwhPerYear kWh of a year, as it would run day by day; empty if its power is not
 *     known
 * @param costOverYears its price, as far as known, and electricity over the years; empty if power
 *     or the price of electricity is not known
 * @param conditions the same pump in the conditions by which it is judged; empty to judge it by the
 *     trial itself
 */
public record RatedTrial(
    PumpTrial trial,
    OptionalDouble energyKwhPerYear,
    OptionalDouble costOverYears,
    List<ConditionTrial> conditions) {
  public RatedTrial {
    conditions = List.copyOf(conditions);
  }

  /**
   * Those that do it first, among them those that have at their inlet what they ask for, those
   * whose own price is known before the others, by cost, then energy where no cost is known, then
   * flow; then the others, by the share of its target that the worst fall gets, the largest first,
   * those that bring a fall nothing after all that run, then by the head that is missing: of
   * conditions, in the worst of them.
   */
  public static final Comparator<RatedTrial> BEST_FIRST =
      Comparator.comparing((RatedTrial rated) -> !rated.meetsTargets())
          .thenComparing(rated -> rated.meetsTargets() && rated.lacksSuction())
          .thenComparingInt(rated -> rated.meetsTargets() ? rated.unknownCost() : 0)
          .thenComparingDouble(rated -> rated.meetsTargets() ? known(rated.costOverYears) : 0)
          .thenComparingDouble(rated -> rated.meetsTargets() ? known(rated.energyKwhPerYear) : 0)
          .thenComparing(RatedTrial::bringsNothing)
          .thenComparingDouble(rated -> -Math.min(1, rated.leastFraction()))
          .thenComparingDouble(rated -> known(rated.missingHeadM()))
          .thenComparing(rated -> rated.trial.setup().offer().model())
          .thenComparingInt(rated -> rated.trial.setup().count());

  /** Whether it stands too shallow or too high for what it asks at its inlet, where it will run. */
  public boolean lacksSuction() {
    return !Findings.ofSuction(trial.findings()).isEmpty();
  }

  /** How much of its cost is not known: nothing, its price, or all. */
  public int unknownCost() {
    return costOverYears.isEmpty() ? 2 : trial.setup().price().isEmpty() ? 1 : 0;
  }

  private static double known(OptionalDouble value) {
    return value.orElse(Double.POSITIVE_INFINITY);
  }

  /** A trial on terms, judged in conditions. */
  static RatedTrial of(PumpTrial trial, List<ConditionTrial> conditions, RunningTerms terms) {
    OptionalDouble power = trial.inUse().powerW();
    return new RatedTrial(
        trial,
        terms.energyKwhPerYear(power),
        terms.costOverYears(power, trial.setup().price().orElse(0)),
        conditions);
  }

  /**
   * Whether it gives the falls their targets: in every condition, where there are any, unless it is
   * needed in none of them.
   */
  public boolean meetsTargets() {
    return worst()
        .map(worst -> worst.meetsTargets() && !worst.isNotNeeded())
        .orElseGet(() -> trial.verdict().meetsTargets());
  }

  /** The condition that judges it, the first of equal ones; empty without conditions. */
  public Optional<ConditionTrial> worst() {
    return conditions.stream().min(ConditionTrial.WORST_FIRST);
  }

  private boolean bringsNothing() {
    return worst().flatMap(ConditionTrial::trial).orElse(trial).verdict().bringsNothing();
  }

  private double leastFraction() {
    return worst()
        .map(ConditionTrial::leastFraction)
        .orElseGet(() -> trial.verdict().leastFraction());
  }

  private OptionalDouble missingHeadM() {
    return worst()
        .map(tried -> tried.trial().map(it -> it.verdict().missingHeadM()))
        .orElseGet(() -> Optional.of(trial.verdict().missingHeadM()))
        .orElse(OptionalDouble.empty());
  }
}
