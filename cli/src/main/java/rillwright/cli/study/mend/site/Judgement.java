package rillwright.cli.study.mend.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rillwright.cli.file.Project;
import rillwright.solver.finding.Finding;
import rillwright.solver.finding.Findings;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.trial.Verdict;

/**
 * What a changed state is to what a site needs.
 *
 * @param site as it stands
 * @param state after the change
 * @param after what is in need then
 * @param ponds what ponds need then; empty where that is not known
 * @param worst what falls get in conditions then
 */
public record Judgement(
    Site site, SteadyState state, List<Need> after, Optional<PondWater> ponds, WorstShares worst) {
  /** Of a state alone: what ponds need then is not known. */
  public static Judgement of(Site site, SteadyState state) {
    return of(site, state, Optional.empty(), WorstShares.NONE);
  }

  /**
   * Of a changed project, its ponds included where something depends on them; empty if it is asked
   * for the levels that run and these have no balance.
   */
  public static Optional<Judgement> of(Site site, SteadyState state, Project changed) {
    Judgement falls = of(site, state, Optional.empty(), WorstShares.of(changed, site.conditions()));
    boolean isOfPonds = site.needs().stream().anyMatch(Need::isOfPond);
    if (!isOfPonds && !falls.mends() && falls.helped().isEmpty()) {
      return Optional.of(falls);
    }
    return site.ponds().isEmpty() ? Optional.of(falls) : site.waterIn(changed).map(falls::with);
  }

  private Judgement with(PondWater water) {
    return new Judgement(site, state, after, Optional.of(water), worst.and(water.runningShares()));
  }

  /** Targets need no findings; only what else is in need is looked for. */
  private static Judgement of(
      Site site, SteadyState state, Optional<PondWater> ponds, WorstShares worst) {
    boolean isPlain =
        site.needs().stream().allMatch(need -> need.isOfTarget() || need.isOfPond())
            && !state.starves();
    if (isPlain) {
      return new Judgement(site, state, List.of(), ponds, worst);
    }
    List<Finding> findings = site.has(Need.TOUCHY) ? Findings.of(state) : Findings.ofFailing(state);
    List<Need> after =
        Stream.concat(Need.in(state, findings).stream(), Need.farFromBest(state).stream()).toList();
    return new Judgement(site, state, after, ponds, worst);
  }

  /** Whether something in need has what it should, and nothing is lost that was met before. */
  public boolean mends() {
    return !met().isEmpty() && !losesAny() && !isOnlyForPonds();
  }

  /** Whether what it does for a pond is to give a fall that lacks water less still. */
  private boolean isOnlyForPonds() {
    boolean forAFall = met().stream().anyMatch(point -> site.targets().falls().contains(point));
    return !forAFall
        && leastShare() < Judgement.of(site, site.state()).leastShare() - Point.UNSEEN_SHARE;
  }

  /** The points in need of which something has what it should. */
  public List<PointName> met() {
    return metNeeds().stream().map(Need::point).distinct().toList();
  }

  /** The needs that are met; none of a fall without its target. */
  public List<Need> metNeeds() {
    return site.needs().stream()
        .filter(this::isMet)
        .filter(need -> hasItsTarget(need.point()))
        .toList();
  }

  /** Whether what is in need besides falls and ponds, as a pump is, has what it should. */
  public boolean meetsAllBesideFallsAndPonds() {
    return site.needs().stream()
        .filter(need -> !need.isOfTarget() && !need.isOfCondition() && !need.isOfPond())
        .allMatch(this::isMet);
  }

  /** What is in need after the change: what was and still is, then what was not. */
  public List<Need> left() {
    List<Need> met = metNeeds();
    List<Need> left = new ArrayList<>();
    site.needs().stream()
        .filter(need -> !met.contains(need))
        .flatMap(this::now)
        .distinct()
        .forEach(left::add);
    for (PointName fall : site.targets().falls()) {
      if (isLost(fall) && left.stream().noneMatch(need -> need.point().equals(fall))) {
        lost(fall).forEach(left::add);
      }
    }
    lostWater().forEach(left::add);
    return left;
  }

  /** A need that is not met, with what the change gives. */
  private Stream<Need> now(Need need) {
    return need.isOfTarget() || need.isOfCondition() ? lost(need.point()) : Stream.of(need);
  }

  /** A fall without its target as written, and in a condition in which it gets less still. */
  private Stream<Need> lost(PointName name) {
    Point fall = state.network().point(name);
    double share = share(name, state);
    boolean isWithin = isWithin(share);
    Optional<Need> inCondition =
        Optional.ofNullable(worst.byFall().get(name))
            .filter(least -> isWithin || least.isLessThan(share))
            .map(least -> Need.inCondition(fall, least));
    return isWithin && inCondition.isPresent()
        ? inCondition.stream()
        : Stream.concat(
            Stream.of(Need.ofTarget(fall, state.point(name).outflowM3PerS())),
            inCondition.stream());
  }

  private boolean isMet(Need need) {
    if (need.isOfTarget()) {
      return isWithin(share(need.point(), state)) && worst.at(need.point()) >= 1;
    }
    if (need.isOfCondition()) {
      return worst.at(need.point()) >= 1;
    }
    return need.isOfPond()
        ? ponds.filter(water -> water.meets(List.of(need))).isPresent()
        : after.stream().noneMatch(need::isLike);
  }

  private boolean hasItsTarget(PointName point) {
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
  private boolean losesAny() {
    return lostWater().findAny().isPresent()
        || site.targets().falls().stream().anyMatch(this::isLost);
  }

  /** Chambers that starve and did not, and what ponds need that they did not. */
  private Stream<Need> lostWater() {
    Stream<Need> starved =
        after.stream()
            .filter(need -> need.code().equals(Need.STARVED))
            .filter(need -> site.needs().stream().noneMatch(had -> had.at().equals(need.at())));
    return Stream.concat(
        starved, ponds.stream().flatMap(water -> water.addedTo(site.water()).stream()));
  }

  private boolean isLost(PointName fall) {
    double before = site.targets().shareAt(fall, site.state());
    double now = share(fall, state);
    double worstBefore = site.worst().at(fall);
    if (worstBefore >= Verdict.ENOUGH_SHARE && worst.at(fall) < Math.min(1, worstBefore)) {
      return true;
    }
    if (before < Verdict.ENOUGH_SHARE) {
      return false;
    }
    return now < Math.min(1, before)
        || (before <= Verdict.TOO_MUCH_SHARE && now > Verdict.TOO_MUCH_SHARE);
  }

  /** The points in need that come nearer to what they should have. */
  public List<PointName> helped() {
    List<PointName> helped = new ArrayList<>();
    for (Need need : Need.eachOnce(site.needs())) {
      boolean nearer =
          need.isOfCondition()
              ? worst.at(need.point()) > site.worst().at(need.point()) * (1 + 1e-6)
              : need.isOfTarget()
                  ? distance(share(need.point(), state))
                      < distance(share(need.point(), site.state())) * (1 - 1e-6)
                  : isMet(need);
      if (nearer && !helped.contains(need.point())) {
        helped.add(need.point());
      }
    }
    return helped;
  }

  private static double distance(double share) {
    return share < 1 ? 1 - share : Math.max(0, share - Verdict.TOO_MUCH_SHARE);
  }

  /** The least share of its target that a fall has, at most 1. */
  public double leastShare() {
    double least = 1;
    for (PointName fall : site.targets().falls()) {
      least = Math.min(least, share(fall, state));
    }
    return least;
  }
}
