package rillwright.cli.study.mend.site;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import rillwright.cli.file.Project;
import rillwright.cli.study.condition.SiteConditions;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;
import rillwright.solver.pumping.Targets;
import rillwright.solver.steady.SteadyState;

/**
 * What falls get of their targets in conditions of the site, and at the levels that run.
 *
 * @param byFall for each fall with a target the condition in which it gets least; none where no
 *     condition is asked for
 */
public record WorstShares(Map<PointName, InCondition> byFall) {
  /** Where no condition is asked for. */
  static final WorstShares NONE = new WorstShares(Map.of());

  /**
   * What a fall gets in a condition.
   *
   * @param condition its name; empty for the levels that run, nothing topped up
   * @param share of its target; 0 where there is no balance, or the condition cannot be so
   */
  public record InCondition(Optional<String> condition, double share) {
    /** Whether it is less than the target, and seen to be less than as written. */
    boolean isLessThan(double shareAsWritten) {
      return share < Math.min(1, shareAsWritten - Point.UNSEEN_SHARE);
    }
  }

  /** Those of a project; in a condition that cannot be so with it nothing flows. */
  static WorstShares of(Project project, Optional<SiteConditions> conditions) {
    Targets targets = Targets.of(project.network());
    Map<PointName, InCondition> worst = new LinkedHashMap<>();
    conditions
        .map(all -> all.ofChanged(project))
        .orElse(Map.of())
        .forEach(
            (condition, there) -> {
              Optional<SteadyState> state = there.map(Project::network).flatMap(Site::balanced);
              for (PointName fall : targets.falls()) {
                double share = state.map(it -> targets.shareAt(fall, it)).orElse(0.0);
                worst.merge(
                    fall, new InCondition(Optional.of(condition), share), WorstShares::lesser);
              }
            });
    return new WorstShares(worst);
  }

  /** What a fall gets at least, of its target; 1 where no condition is asked for. */
  double at(PointName fall) {
    InCondition worst = byFall.get(fall);
    return worst == null ? 1 : worst.share();
  }

  /** These and what falls get at the levels that run. */
  WorstShares and(Map<PointName, Double> runningShares) {
    Map<PointName, InCondition> worst = new LinkedHashMap<>(byFall);
    runningShares.forEach(
        (fall, share) ->
            worst.merge(fall, new InCondition(Optional.empty(), share), WorstShares::lesser));
    return new WorstShares(worst);
  }

  private static InCondition lesser(InCondition before, InCondition now) {
    return now.share() < before.share() ? now : before;
  }
}
