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
 * @param network as written: it names the falls and their wishes
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

  /** Those of them with a wish. */
  public List<Point> wished() {
    return falls().stream().filter(fall -> fall.wantM3PerS().isPresent()).toList();
  }

  /** What happens at a point in a condition; empty if there is no balance. */
  public Optional<PointState> point(PointName name, Case<Solved> one) {
    return one.answer().map(solution -> solution.state().point(name));
  }

  /** What a fall gets of its wish, as a share; 0 without a balance, 1 without a wish. */
  public double shareOfWish(PointName fall, Case<Solved> one) {
    return point(fall, one)
        .map(
            state -> {
              double want = state.point().wantM3PerS().orElse(0);
              return want > 0 ? state.outflowM3PerS() / want : 1.0;
            })
        .orElse(0.0);
  }

  /** Whether a fall gets less than its wish, or nothing can be told. */
  public boolean isUnderWish(PointName fall, Case<Solved> one) {
    return point(fall, one).map(PointState::isUnderWish).orElse(true);
  }

  /** The condition in which a fall gets least of its wish; the first of several. */
  public Case<Solved> worstFor(PointName fall) {
    return cases().stream()
        .min(Comparator.comparingDouble(one -> shareOfWish(fall, one)))
        .orElseThrow();
  }

  /** The conditions in which the falls get least first. */
  public Comparator<Case<Solved>> worstFirst() {
    return Comparator.comparingDouble(this::leastShareOfWish).thenComparingDouble(this::flowM3PerS);
  }

  private double leastShareOfWish(Case<Solved> one) {
    return wished().stream().mapToDouble(fall -> shareOfWish(fall.name(), one)).min().orElse(0);
  }

  private double flowM3PerS(Case<Solved> one) {
    return falls().stream()
        .flatMap(fall -> point(fall.name(), one).stream())
        .mapToDouble(PointState::outflowM3PerS)
        .sum();
  }

  /** Whether a wish is missed or a chamber starves in any of the conditions. */
  public boolean fallsShort() {
    return missesAWish()
        || cases().stream().flatMap(one -> one.answer().stream()).anyMatch(Solved::fallsShort);
  }

  /** Whether a fall gets less than its wish in any of the conditions. */
  public boolean missesAWish() {
    return wished().stream()
        .anyMatch(fall -> cases().stream().anyMatch(one -> isUnderWish(fall.name(), one)));
  }
}
