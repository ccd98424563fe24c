package rillwright.cli.report.conditions;

import java.util.Optional;
import rillwright.cli.report.Solved;
import rillwright.solver.network.PointName;
import rillwright.solver.steady.PointState;

/**
 * What comes of a project in one condition.
 *
 * @param named the condition
 * @param solved what flows then; empty if there is no balance
 * @param noBalance why there is none; empty if there is one
 */
public record Outcome(NamedCondition named, Optional<Solved> solved, Optional<String> noBalance) {

  /** The condition's name. */
  public String condition() {
    return named.name();
  }

  /** What happens at a point; empty if there is no balance. */
  public Optional<PointState> point(PointName name) {
    return solved.map(solution -> solution.state().point(name));
  }

  /** What a fall gets of its wish, as a share; 0 without a balance, 1 without a wish. */
  public double shareOfWish(PointName fall) {
    return point(fall)
        .map(
            state -> {
              double want = state.point().wantM3PerS().orElse(0);
              return want > 0 ? state.outflowM3PerS() / want : 1.0;
            })
        .orElse(0.0);
  }

  /** Whether a fall gets less than its wish, or nothing can be told. */
  public boolean isUnderWish(PointName fall) {
    return point(fall).map(PointState::isUnderWish).orElse(true);
  }
}
