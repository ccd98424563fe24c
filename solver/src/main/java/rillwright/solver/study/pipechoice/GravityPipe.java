package rillwright.solver.study.pipechoice;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rillwright.solver.finding.Finding;
import rillwright.solver.steady.SteadyState;

/**
 * Sizes of pipe in a network without a pump: the difference in level alone drives the water.
 *
 * @param option which sizes
 * @param run what comes of it
 * @param findings what the crew should know where it is to run
 * @param conditions the same in the conditions that judge it; empty to judge it by itself
 */
public record GravityPipe(
    PipeOption option, GravityRun run, List<Finding> findings, List<InCondition> conditions)
    implements SizedPipe {
  /**
   * Those that give every fall its target first, by the cost of the pipe, of equal ones the
   * narrower; then the others, by what the worst fall gets.
   */
  static final Comparator<GravityPipe> BEST_FIRST =
      Comparator.comparing((GravityPipe pipe) -> !pipe.meetsTargets())
          .thenComparingDouble(
              pipe -> pipe.meetsTargets() ? WholeCents.of(pipe.option.materialCost()) : 0)
          .thenComparingDouble(pipe -> pipe.meetsTargets() ? pipe.option.sumOfBoresM() : 0)
          .thenComparingDouble(pipe -> -pipe.leastFraction())
          .thenComparingDouble(pipe -> pipe.option.sumOfBoresM());

  public GravityPipe {
    findings = List.copyOf(findings);
    conditions = List.copyOf(conditions);
  }

  /**
   * What comes of it in a condition.
   *
   * @param name of the condition
   * @param run empty if there is no balance then
   */
  public record InCondition(String name, Optional<GravityRun> run) {
    /** Whether every fall gets its target then. */
    public boolean meetsTargets() {
      return run.isPresent() && run.get().meetsTargets();
    }

    /**
     * The share of its target that the worst fall gets then, the valves as they stand; 0 if none.
     */
    public double leastFraction() {
      return run.map(it -> it.asItStands().leastFraction()).orElse(0.0);
    }
  }

  @Override
  public SteadyState state() {
    return run.asItStands().state();
  }

  @Override
  public SteadyState stateInUse() {
    return run.inUse().state();
  }

  /** Whether every fall gets its target: in every condition, where there are any. */
  @Override
  public boolean meetsTargets() {
    return conditions.isEmpty()
        ? run.meetsTargets()
        : conditions.stream().allMatch(InCondition::meetsTargets);
  }

  /** The condition in which the worst fall gets least, the first of equal ones. */
  public Optional<InCondition> worstCondition() {
    return conditions.stream()
        .min(
            Comparator.comparing(InCondition::meetsTargets)
                .thenComparingDouble(InCondition::leastFraction));
  }

  private double leastFraction() {
    return worstCondition()
        .map(InCondition::leastFraction)
        .orElseGet(() -> run.asItStands().leastFraction());
  }
}
