package rillwright.cli.study.mend;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rillwright.cli.file.Project;
import rillwright.cli.study.RunningFigures;
import rillwright.cli.study.mend.change.Candidate;
import rillwright.cli.study.mend.change.Need;
import rillwright.cli.study.mend.change.Site;
import rillwright.solver.finding.Findings;
import rillwright.solver.network.PointName;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.trial.Verdict;

/** Candidates put into a project and judged. */
final class Trials {
  private final Site site;
  private int count;

  Trials(Site site) {
    this.site = site;
  }

  /** How many were tried. */
  int count() {
    return count;
  }

  /** The first of some that mends. */
  Optional<Remedy> mending(List<Candidate> candidates) {
    for (Candidate candidate : candidates) {
      Optional<Remedy> tried = of(candidate).filter(Remedy::mends);
      if (tried.isPresent()) {
        return tried;
      }
    }
    return Optional.empty();
  }

  /** The first of some that mends, else the first that helps; empty if none does. */
  Optional<Remedy> first(List<Candidate> alternatives) {
    Optional<Remedy> helps = Optional.empty();
    for (Candidate candidate : alternatives) {
      Optional<Remedy> tried = of(candidate);
      if (tried.filter(Remedy::mends).isPresent()) {
        return tried;
      }
      helps = helps.or(() -> tried);
    }
    return helps;
  }

  /**
   * One candidate; empty if the project cannot be so, has no balance then, or nothing is better.
   */
  Optional<Remedy> of(Candidate candidate) {
    count++;
    return site.changed(candidate.set()).flatMap(changed -> of(candidate, changed));
  }

  private Optional<Remedy> of(Candidate candidate, Project changed) {
    Optional<SteadyState> balanced = Site.balanced(changed.network());
    if (balanced.isEmpty()) {
      return Optional.empty();
    }
    SteadyState state = balanced.get();
    List<Need> needs = needsIn(state);
    List<PointName> met =
        site.needs().stream()
            .filter(need -> isMet(need, state, needs))
            .map(Need::point)
            .filter(point -> hasItsTarget(point, state))
            .distinct()
            .toList();
    boolean mends = !met.isEmpty() && !losesAny(state, needs);
    List<PointName> serves = mends ? met : helped(state, needs);
    if (serves.isEmpty()) {
      return Optional.empty();
    }
    RunningFigures takes = RunningFigures.of(state, changed.running());
    return Optional.of(
        new Remedy(
            candidate,
            serves,
            mends,
            state,
            takes.powerW(),
            takes.costPerYear(),
            leastShare(state)));
  }

  /** Targets need no findings; only what else is in need is looked for. */
  private List<Need> needsIn(SteadyState state) {
    boolean isOfTargetsOnly = site.needs().stream().allMatch(Need::isOfTarget);
    return isOfTargetsOnly && !state.starves() ? List.of() : Need.in(state, Findings.of(state));
  }

  private static boolean isMet(Need need, SteadyState state, List<Need> after) {
    if (need.isOfTarget()) {
      return isWithin(share(need.point(), state));
    }
    return after.stream()
        .noneMatch(other -> other.at().equals(need.at()) && other.code().equals(need.code()));
  }

  private static boolean hasItsTarget(PointName point, SteadyState state) {
    boolean isAFall = state.network().point(point).targetM3PerS().orElse(0) > 0;
    return !isAFall || isWithin(share(point, state));
  }

  private static double share(PointName fall, SteadyState state) {
    return state.point(fall).outflowM3PerS()
        / state.network().point(fall).targetM3PerS().orElse(Double.NaN);
  }

  private static boolean isWithin(double share) {
    return share >= 1 && share <= Verdict.TOO_MUCH_SHARE;
  }

  /** Whether a target is lost that was met before, or a chamber starves that did not. */
  private boolean losesAny(SteadyState state, List<Need> after) {
    boolean starves =
        after.stream()
            .filter(need -> need.code().equals(Need.STARVED))
            .anyMatch(need -> site.needs().stream().noneMatch(had -> had.at().equals(need.at())));
    return starves || site.targets().falls().stream().anyMatch(fall -> isLost(fall, state));
  }

  private boolean isLost(PointName fall, SteadyState state) {
    double before = site.targets().shareAt(fall, site.state());
    double after = share(fall, state);
    if (before < Verdict.ENOUGH_SHARE) {
      return false;
    }
    return after < Math.min(1, before)
        || (before <= Verdict.TOO_MUCH_SHARE && after > Verdict.TOO_MUCH_SHARE);
  }

  private List<PointName> helped(SteadyState state, List<Need> after) {
    List<PointName> helped = new ArrayList<>();
    for (Need need : site.needs()) {
      boolean nearer =
          need.isOfTarget()
              ? distance(share(need.point(), state))
                  < distance(share(need.point(), site.state())) * (1 - 1e-6)
              : isMet(need, state, after);
      if (nearer && !helped.contains(need.point())) {
        helped.add(need.point());
      }
    }
    return helped;
  }

  private static double distance(double share) {
    return share < 1 ? 1 - share : Math.max(0, share - Verdict.TOO_MUCH_SHARE);
  }

  private double leastShare(SteadyState state) {
    double least = 1;
    for (PointName fall : site.targets().falls()) {
      least = Math.min(least, share(fall, state));
    }
    return least;
  }
}
