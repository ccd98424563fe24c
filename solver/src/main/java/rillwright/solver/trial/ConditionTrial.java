package rillwright.solver.trial;

import java.util.Comparator;
import java.util.Optional;

/**
 * A pump tried in a condition of the site.
 *
 * @param condition its name
 * @param demand what the targets ask of the pump then
 * @param trial what comes of it; empty if there is no balance
 */
public record ConditionTrial(String condition, Demand demand, Optional<PumpTrial> trial) {
  /**
   * Those without a balance first, then those that do not do it, those in which it is not needed
   * last, then by the share of its target that the worst fall gets, the smallest first and more
   * than it counting as all of it, then by the kind of verdict, then by what the worst fall gets.
   */
  static final Comparator<ConditionTrial> WORST_FIRST =
      Comparator.comparing((ConditionTrial tried) -> tried.trial.isPresent())
          .thenComparing(ConditionTrial::meetsTargets)
          .thenComparing(ConditionTrial::isNotNeeded)
          .thenComparingDouble(tried -> Math.min(1, tried.leastFraction()))
          .thenComparing(
              tried -> tried.trial.map(trial -> trial.verdict().kind()),
              Comparator.comparingInt(kind -> -kind.map(Enum::ordinal).orElse(0)))
          .thenComparingDouble(ConditionTrial::leastFraction);

  /** Whether the falls get their targets then, by it or without it. */
  public boolean meetsTargets() {
    return trial.isPresent() && (trial.get().verdict().meetsTargets() || isNotNeeded());
  }

  /** Whether the falls get their targets then without it, once they are throttled. */
  public boolean isNotNeeded() {
    return trial.isPresent() && trial.get().verdict().kind() == Verdict.Kind.NOT_NEEDED;
  }

  /** The share of its target that the worst fall gets with the valves as they stand; 0 if none. */
  public double leastFraction() {
    return trial.map(tried -> tried.verdict().leastFraction()).orElse(0.0);
  }
}
