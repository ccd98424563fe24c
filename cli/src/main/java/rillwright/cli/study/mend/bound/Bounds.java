package rillwright.cli.study.mend.bound;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import rillwright.cli.study.mend.change.Candidate;
import rillwright.cli.study.mend.change.Step;
import rillwright.cli.study.mend.kind.Cleaning;
import rillwright.cli.study.mend.site.Need;
import rillwright.cli.study.mend.site.Site;
import rillwright.curves.sheet.fact.SpeedRange;
import rillwright.solver.network.LineName;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Pump;
import rillwright.solver.study.mending.AtMost;
import rillwright.solver.study.mending.LossFree;
import rillwright.solver.study.mending.OwnWay;

/** What the classes of change that were tried cannot exceed. */
public final class Bounds {
  private final Site site;

  private Bounds(Site site) {
    this.site = site;
  }

  /** The bounds, where a fall lacks water; none else. */
  public static List<Bound> of(Site site) {
    return of(site, List.of(Bound.Kind.values()));
  }

  /** Those of some classes. */
  public static List<Bound> of(Site site, List<Bound.Kind> kinds) {
    if (site.needs().stream().noneMatch(Need::isUnder)) {
      return List.of();
    }
    Bounds bounds = new Bounds(site);
    List<Bound> all = new ArrayList<>();
    for (Bound.Kind kind : kinds) {
      bounds.of(kind).ifPresent(all::add);
    }
    return all;
  }

  /** Falls that lack water and for which no bound of any class can be given. */
  public static List<PointName> without(Site site, List<Bound> bounds) {
    return site.needs().stream()
        .filter(Need::isUnder)
        .map(Need::point)
        .filter(fall -> bounds.stream().noneMatch(it -> it.fallsM3PerS().containsKey(fall)))
        .distinct()
        .toList();
  }

  private Optional<Bound> of(Bound.Kind kind) {
    Map<PointName, Double> falls = new LinkedHashMap<>();
    for (PointName fall : site.targets().falls()) {
      most(kind, fall).ifPresent(flow -> falls.put(fall, flow));
    }
    List<Need> lacking = site.needs().stream().filter(Need::isUnder).toList();
    boolean isOfOne = lacking.stream().anyMatch(need -> falls.containsKey(need.point()));
    boolean isEnough =
        lacking.stream()
            .allMatch(
                need -> falls.getOrDefault(need.point(), 0.0) >= need.targetM3PerS().orElse(0));
    return isOfOne ? Optional.of(new Bound(kind, falls, isEnough)) : Optional.empty();
  }

  private OptionalDouble most(Bound.Kind kind, PointName fall) {
    if (isFedByOneWay(fall) == (kind == Bound.Kind.ALL_LOSSES)) {
      return OptionalDouble.empty();
    }
    AtMost most = new AtMost(site.state(), fall);
    return switch (kind) {
      case VALVES -> most.withTheOthersShutM3PerS();
      case CLEANING -> cleaned(fall);
      case FITTINGS -> most.withoutFittingsM3PerS();
      case PUMP_SPEED ->
          site.network().isPumped() ? most.withPumpsM3PerS(this::fastest) : OptionalDouble.empty();
      case PIPE_FRICTION -> most.withoutPipeFrictionM3PerS();
      case ALL_LOSSES -> LossFree.mostM3PerS(site.network(), fall, this::fastest);
    };
  }

  /** Where water comes by several ways, or by none, less loss in one may take from another. */
  private boolean isFedByOneWay(PointName fall) {
    Set<LineName> way = OwnWay.to(fall, site.state());
    long ends =
        way.stream()
            .map(line -> site.network().line(line))
            .map(line -> site.state().line(line.name()).flowM3PerS() < 0 ? line.from() : line.to())
            .distinct()
            .count();
    return site.state().point(fall).outflowM3PerS() > 0
        && ends == way.size()
        && site.network().placed(Pump.class).size() < 2;
  }

  private Pump fastest(Pump pump) {
    double greatest =
        site.project()
            .findSheet(pump.model())
            .flatMap(sheet -> sheet.facts().variableSpeed())
            .map(SpeedRange::greatest)
            .orElse(1.0);
    return pump.atSpeed(Math.max(greatest, pump.set().speed()));
  }

  private OptionalDouble cleaned(PointName fall) {
    Set<LineName> way = OwnWay.to(fall, site.state());
    List<Step> steps =
        Cleaning.steps(
            site,
            site.network().lines().stream().filter(line -> way.contains(line.name())).toList());
    return steps.isEmpty()
        ? OptionalDouble.of(site.state().point(fall).outflowM3PerS())
        : site.with(new Candidate(steps).set()).stream()
            .mapToDouble(state -> state.point(fall).outflowM3PerS())
            .findFirst();
  }
}
