package rillwright.cli.study.mend.site;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Predicate;
import rillwright.cli.file.Project;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.study.condition.SiteConditions;
import rillwright.solver.balance.SearchFailed;
import rillwright.solver.finding.Finding;
import rillwright.solver.finding.Findings;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Network;
import rillwright.solver.network.PointName;
import rillwright.solver.pumping.Targets;
import rillwright.solver.steady.NoBalance;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.steady.SteadyStateFinder;
import rillwright.solver.study.mending.OwnWay;
import rillwright.solver.trial.Verdict;

/**
 * A project as it stands, and what it needs.
 *
 * @param project as it is read
 * @param state that it balances in
 * @param targets of its falls and outlets
 * @param needs what does not do what it should
 * @param ponds what is asked of ponds; empty where nobody asks
 * @param water what these are as it stands
 * @param conditions in which falls must get their targets too; empty where nobody asks
 * @param worst what they get in these, and at the levels that run
 * @param work that may still be done to try changes
 */
public record Site(
    Project project,
    SteadyState state,
    Targets targets,
    List<Need> needs,
    Optional<PondNeeds> ponds,
    PondWater water,
    Optional<SiteConditions> conditions,
    WorstShares worst,
    WorkLeft work) {
  public static Site of(Project project) {
    SteadyState state = SteadyStateFinder.find(project.network());
    return of(project, state, Findings.of(state));
  }

  /** The same with what its ponds need, and its falls in conditions. */
  public static Site of(
      Project project, Optional<PondNeeds> ponds, Optional<SiteConditions> conditions) {
    return of(project, ponds, conditions, new WorkLeft(project.network()));
  }

  private static Site of(
      Project project,
      Optional<PondNeeds> ponds,
      Optional<SiteConditions> conditions,
      WorkLeft work) {
    return of(project).asking(ponds, conditions, work);
  }

  private Site asking(
      Optional<PondNeeds> ponds, Optional<SiteConditions> conditions, WorkLeft work) {
    PondWater water = ponds.flatMap(asked -> asked.in(project, work)).orElse(PondWater.NOT_ASKED);
    WorstShares worst = WorstShares.of(project, conditions).and(water.runningShares());
    List<Need> needs = new ArrayList<>(this.needs);
    needs.addAll(water.needs());
    worst
        .byFall()
        .forEach(
            (fall, least) -> {
              if (least.share() < Verdict.ENOUGH_SHARE
                  && least.isLessThan(targets.shareAt(fall, state))) {
                needs.add(Need.inCondition(network().point(fall), least));
              }
            });
    List<String> places = needs.stream().map(Need::at).distinct().toList();
    needs.sort(Comparator.comparingInt(need -> places.indexOf(need.at())));
    return new Site(project, state, targets, needs, ponds, water, conditions, worst, work);
  }

  /** The same where changes must leave its ponds without needs; these are not its own. */
  public Site keepingPonds() {
    PondNeeds asked = new PondNeeds(OptionalDouble.empty());
    PondWater now = asked.in(project, work).orElse(PondWater.NOT_ASKED);
    return new Site(
        project,
        state,
        targets,
        needs,
        Optional.of(asked),
        new PondWater(List.of(), now.marks(), now.rooms(), now.runningShares()),
        conditions,
        worst.and(now.runningShares()),
        work);
  }

  /** The same with the pumps that run far from their best efficiency, where all else is met. */
  public Site withPumps() {
    return needs.isEmpty()
        ? new Site(
            project, state, targets, Need.farFromBest(state), ponds, water, conditions, worst, work)
        : this;
  }

  /** A changed project of which the same is asked. */
  public Site changedTo(Project changed) {
    return of(changed, ponds, conditions, work);
  }

  /** A project whose state and findings are known; neither ponds nor conditions are looked at. */
  public static Site of(Project project, SteadyState state, List<Finding> findings) {
    return new Site(
        project,
        state,
        Targets.of(project.network()),
        Need.in(state, findings),
        Optional.empty(),
        PondWater.NOT_ASKED,
        Optional.empty(),
        WorstShares.NONE,
        new WorkLeft(project.network()));
  }

  public Network network() {
    return project.network();
  }

  /** The project with changes, balanced; empty if it cannot be so or has no balance then. */
  public Optional<SteadyState> with(List<String> changes) {
    return changed(changes).flatMap(changed -> balanced(changed.network()));
  }

  /** The project with changes; empty if it cannot be so. */
  public Optional<Project> changed(List<String> changes) {
    try {
      return Optional.of(project.with(changes));
    } catch (InvalidInput cannotBeSo) {
      return Optional.empty();
    }
  }

  /** A network's state; empty without a balance. */
  public static Optional<SteadyState> balanced(Network network) {
    try {
      return Optional.of(SteadyStateFinder.find(network));
    } catch (NoBalance | SearchFailed unbalanced) {
      return Optional.empty();
    }
  }

  /** The same of a network that is like the site's, in fewer steps. */
  public Optional<SteadyState> balancedNear(Network network) {
    work.spend(1);
    try {
      return Optional.of(SteadyStateFinder.find(network, state));
    } catch (NoBalance | SearchFailed unbalanced) {
      return Optional.empty();
    }
  }

  /** A changed project and its state; what it needs is not asked. Empty without a balance. */
  public Optional<Site> balancedWith(Project changed) {
    return balanced(changed.network())
        .map(
            now ->
                new Site(
                    changed,
                    now,
                    Targets.of(changed.network()),
                    List.of(),
                    ponds,
                    PondWater.NOT_ASKED,
                    conditions,
                    WorstShares.NONE,
                    work));
  }

  /**
   * A changed network at the levels that it runs at; empty where nobody asks for them, or they have
   * no balance.
   */
  public Optional<SteadyState> running(Network changed) {
    return asksForLevels() ? PondNeeds.running(project, changed, work) : Optional.empty();
  }

  private boolean asksForLevels() {
    return ponds.filter(asked -> asked.asksOf(project)).isPresent();
  }

  /** What its ponds are in a changed project; empty if their levels have no balance. */
  public Optional<PondWater> waterIn(Project changed) {
    return ponds.orElseThrow().in(changed, work);
  }

  /** Whether a changed network does something at the levels that it runs at, if asked for them. */
  public boolean doesRunning(Network changed, Predicate<SteadyState> something) {
    return !asksForLevels() || running(changed).filter(something).isPresent();
  }

  /** Whether every fall gets its target with a network, at rest and at the levels that run. */
  public boolean isEnough(Network changed) {
    return balancedNear(changed).filter(this::isEnough).isPresent()
        && doesRunning(changed, this::isEnough);
  }

  /** Whether every fall gets at least its target. */
  public boolean isEnough(SteadyState changed) {
    return targets.isEmpty() || targets.shareAt(targets.worstIn(changed), changed) >= 1;
  }

  /** Whether each fall that lacks water gets its target. */
  public boolean givesWhatLacks(SteadyState changed) {
    return needs.stream()
        .filter(Need::isUnder)
        .allMatch(need -> targets.shareAt(need.point(), changed) >= 1);
  }

  /** Whether every fall gets its target and not much more. */
  public boolean isWithin(SteadyState changed) {
    return isEnough(changed) && targets.greatestShareIn(changed) <= Verdict.TOO_MUCH_SHARE;
  }

  /** Whether some need is of a code. */
  public boolean has(String code) {
    return needs.stream().anyMatch(need -> need.code().equals(code));
  }

  /** The lines that the water of each point in need comes through. */
  public Map<PointName, Set<LineName>> ways() {
    Map<PointName, Set<LineName>> ways = new LinkedHashMap<>();
    needs.forEach(need -> ways.put(need.point(), OwnWay.to(need.point(), state)));
    return ways;
  }

  /** The same together, in the order of the network. */
  public List<Line> lines() {
    Set<LineName> all = new LinkedHashSet<>();
    ways().values().forEach(all::addAll);
    List<Line> lines = new ArrayList<>(network().lines());
    lines.removeIf(line -> !all.contains(line.name()));
    return lines;
  }
}
