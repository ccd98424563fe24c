package rillwright.cli.study.condition;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rillwright.cli.study.solve.Solved;
import rillwright.solver.network.Network;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;
import rillwright.solver.steady.PointState;

/**
 * A project solved in several conditions, and which of them is the worst for its falls.
 *
 * @param solved in each condition
 * @param network as written: it names the falls and their targets
 */
public record SolvedConditions(Cases<Solved> solved, Network network) {

  /** One for each condition, at least one. */
  public List<Case<Solved>> cases() {
    return solved.cases();
  }

  /** Falls and outlets, in the order of the file. */
  public List<Point> falls() {
    return network.waysOut();
  }

  /** Those of them with a target. */
  public List<Point> targeted() {
    return falls().stream().filter(fall -> fall.targetM3PerS().isPresent()).toList();
  }

  /** What happens at a point in a condition; empty if there is no balance. */
  public Optional<PointState> point(PointName name, Case<Solved> one) {
    return one.answer().map(solution -> solution.state().point(name));
  }

  /** What a fall gets of its target, as a share; 0 without a balance, 1 without a target. */
  public double targetFraction(PointName fall, Case<Solved> one) {
    return point(fall, one)
        .map(
            state -> {
              double target = state.point().targetM3PerS().orElse(0);
              return target > 0 ? state.outflowM3PerS() / target : 1.0;
            })
        .orElse(0.0);
  }

  /** Whether a fall gets less than its target, or nothing can be known. */
  public boolean isUnderTarget(PointName fall, Case<Solved> one) {
    return point(fall, one).map(PointState::isUnderTarget).orElse(true);
  }

  /** The condition in which a fall gets least of its target; the first of several. */
  public Case<Solved> worstFor(PointName fall) {
    return cases().stream()
        .min(Comparator.comparingDouble(one -> targetFraction(fall, one)))
        .orElseThrow();
  }

  /** The conditions in which the falls get least first. */
  public Comparator<Case<Solved>> worstFirst() {
    return Comparator.comparingDouble(this::leastTargetFraction)
        .thenComparingDouble(this::flowM3PerS);
  }

  private double leastTargetFraction(Case<Solved> one) {
    return targeted().stream()
        .mapToDouble(fall -> targetFraction(fall.name(), one))
        .min()
        .orElse(0);
  }

  private double flowM3PerS(Case<Solved> one) {
    return falls().stream()
        .flatMap(fall -> point(fall.name(), one).stream())
        .mapToDouble(PointState::outflowM3PerS)
        .sum();
  }

  /** Whether a target is missed or a chamber starves in any of the conditions. */
  public boolean fallsShort() {
    return missesATarget()
        || cases().stream().flatMap(one -> one.answer().stream()).anyMatch(Solved::fallsShort);
  }

  /** Whether a fall gets less than its target in any of the conditions. */
  public boolean missesATarget() {
    return targeted().stream()
        .anyMatch(fall -> cases().stream().anyMatch(one -> isUnderTarget(fall.name(), one)));
  }
}
