package rillwright.cli.study.mend.kind;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import rillwright.cli.file.Project;
import rillwright.cli.study.mend.change.Action;
import rillwright.cli.study.mend.change.Addresses;
import rillwright.cli.study.mend.change.Bought;
import rillwright.cli.study.mend.change.Candidate;
import rillwright.cli.study.mend.change.Source;
import rillwright.cli.study.mend.change.Step;
import rillwright.cli.study.mend.site.Judgement;
import rillwright.cli.study.mend.site.Need;
import rillwright.cli.study.mend.site.Site;
import rillwright.solver.balance.SearchFailed;
import rillwright.solver.network.Fall;
import rillwright.solver.network.Line;
import rillwright.solver.network.Network;
import rillwright.solver.network.Outlet;
import rillwright.solver.network.Point;
import rillwright.solver.network.Skimmer;
import rillwright.solver.network.Valve;
import rillwright.solver.pumping.Targets;
import rillwright.solver.steady.NoBalance;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.study.valvesetting.SetValve;
import rillwright.solver.study.valvesetting.ValvePlace;
import rillwright.solver.study.valvesetting.ValveSettingFinder;
import rillwright.solver.study.valvesetting.ValveSettingFinder.Aim;
import rillwright.solver.study.valvesetting.ValveSettingFinder.Brief;
import rillwright.solver.study.valvesetting.ValveSettings;
import rillwright.solver.trial.Verdict;

/**
 * Valves set so that the falls share: the largest share of their targets or, where that is too
 * much, little more than the targets. One alone, those that may be set, all, and one more where a
 * branch has none.
 */
public final class Valves implements Source {
  /** More than the target by so much, so that a handle set to a whole degree still gives it. */
  private static final double ROOM = 1.02;

  private static final double QUARTER_TURN = 90;

  /** States that a search for settings asks for, about. */
  private static final int STATES = 30;

  /** Of one that is bought. */
  private static final String NEW_TYPE = "ball";

  /**
   * Those that are marked adjustable, or all where none is; none where one fall alone lacks water.
   */
  public static List<Candidate> marked(Site site) {
    List<ValvePlace> marked = ValvePlace.listAdjustable(site.network());
    List<ValvePlace> places = marked.isEmpty() ? places(site.network()) : marked;
    boolean isOneFall = site.targets().falls().size() < 2 && !site.has(Need.OVER_TARGET);
    boolean isOpen =
        places.stream().allMatch(it -> it.in(site.network()).loss().opening().orElse(1) == 1);
    return isOneFall && isOpen
        ? List.of()
        : set(site, site.network(), places, List.of()).orElse(List.of());
  }

  @Override
  public List<List<Candidate>> candidates(Site site) {
    List<List<Candidate>> all = new ArrayList<>();
    for (List<ValvePlace> places : sets(site.network())) {
      if (!site.work().take(STATES)) {
        continue;
      }
      List<Candidate> alternatives =
          new ArrayList<>(set(site, site.network(), places, List.of()).orElse(List.of()));
      List<Candidate> swept = places.size() == 1 ? swept(site, places.get(0)) : List.of();
      swept.stream().limit(1).forEach(alternatives::add);
      swept.stream().skip(1).forEach(other -> all.add(List.of(other)));
      if (!alternatives.isEmpty()) {
        all.add(alternatives);
      }
    }
    List<Line> without =
        site.network().lines().stream().filter(line -> couldHaveOne(line, site)).toList();
    for (Line line : without) {
      if (site.work().take(STATES)) {
        added(site, List.of(line)).ifPresent(all::add);
      }
    }
    if (without.size() > 1 && site.work().take(STATES)) {
      added(site, without).ifPresent(all::add);
    }
    return all;
  }

  /**
   * The widest opening of one valve, by whole degrees, at which no target is missed or exceeded and
   * no pump is in need; without one, for each need the widest at which it is met and nothing lost.
   */
  private static List<Candidate> swept(Site site, ValvePlace place) {
    Valve now = place.in(site.network());
    if (!(now.loss() instanceof Valve.Opening opening)) {
      return List.of();
    }
    Map<Need, Candidate> mending = new LinkedHashMap<>();
    for (int degrees = 0; degrees < QUARTER_TURN; degrees++) {
      Valve turned = now.withSetpoint(opening.at(1 - degrees / QUARTER_TURN));
      Optional<SteadyState> state =
          site.balancedNear(site.network().withPart(place.line(), place.partIndex(), turned));
      boolean within = state.filter(site::isWithin).isPresent();
      if (state.isPresent() && (within || mending.size() < site.needs().size())) {
        Judgement judgement = Judgement.of(site, state.get());
        if (within && judgement.meetsAllBesideFallsAndPonds()) {
          return List.of(turnedTo(turned, place, site));
        }
        if (judgement.mends()) {
          judgement
              .metNeeds()
              .forEach(need -> mending.computeIfAbsent(need, it -> turnedTo(turned, place, site)));
        }
      }
    }
    return mending.values().stream().distinct().toList();
  }

  private static Candidate turnedTo(Valve turned, ValvePlace place, Site site) {
    Line line = site.network().line(place.line());
    return Candidate.of(Handle.EXACTLY.step(line.placed(Valve.class), place.partIndex(), turned));
  }

  /** Those that are marked adjustable, all, and each alone. */
  private static Set<List<ValvePlace>> sets(Network network) {
    Set<List<ValvePlace>> sets = new LinkedHashSet<>();
    sets.add(ValvePlace.listAdjustable(network));
    sets.add(places(network));
    places(network).forEach(place -> sets.add(List.of(place)));
    sets.remove(List.<ValvePlace>of());
    return sets;
  }

  private static List<ValvePlace> places(Network network) {
    return network.placed(Valve.class).stream()
        .map(valve -> new ValvePlace(valve.line().name(), valve.index()))
        .toList();
  }

  private static boolean couldHaveOne(Line line, Site site) {
    boolean toAFall = site.targets().falls().contains(line.to());
    return toAFall
        && !line.has(Valve.class)
        && !line.has(Skimmer.class)
        && line.mainBore().isPresent();
  }

  private static Optional<List<Candidate>> added(Site site, List<Line> lines) {
    List<Step> steps = lines.stream().map(line -> added(line, site.project())).toList();
    return site.changed(new Candidate(steps).set())
        .flatMap(changed -> set(site, changed.network(), places(changed.network()), steps));
  }

  private static Step added(Line line, Project project) {
    return new Step(
        Action.ADD_VALVE,
        line.name().value(),
        "",
        0,
        NEW_TYPE,
        List.of(
            Addresses.ofLine(line.name(), "new valve", "type", NEW_TYPE),
            Addresses.ofLine(line.name(), "valve", "open", "100 %")),
        Bought.fittings(NEW_TYPE + " valve", 1, line, project));
  }

  /** All valves of a site's changed network set, after some steps that made it what it is. */
  public static Optional<List<Candidate>> all(Site site, Network changed, List<Step> before) {
    return site.work().take(STATES)
        ? set(site, changed, places(changed), before)
        : Optional.empty();
  }

  /** Set at the levels that run with what is set at rest; and as at rest. */
  private static Optional<List<Candidate>> set(
      Site site, Network network, List<ValvePlace> places, List<Step> before) {
    Optional<Network> rest = settings(network, places);
    Optional<Network> running =
        site.running(rest.map(set -> withValves(network, places, set)).orElse(network))
            .map(runs -> withValves(runs.network(), places, network))
            .flatMap(runs -> settings(runs, places));
    List<Candidate> all = new ArrayList<>();
    Stream.of(running, rest)
        .flatMap(Optional::stream)
        .forEach(set -> all.addAll(roundings(network, set, places, before)));
    return all.isEmpty() ? Optional.empty() : Optional.of(all);
  }

  private static Network withValves(Network network, List<ValvePlace> places, Network set) {
    Network with = network;
    for (ValvePlace place : places) {
      with = with.withPart(place.line(), place.partIndex(), place.in(set));
    }
    return with;
  }

  /** A network with its valves set; empty if they cannot be. */
  private static Optional<Network> settings(Network network, List<ValvePlace> places) {
    if (Targets.of(network).isEmpty() || places.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(best(network, places).state().network())
          .filter(set -> places.stream().noneMatch(place -> cannotBeWritten(place.in(set))));
    } catch (NoBalance | SearchFailed unbalanced) {
      return Optional.empty();
    }
  }

  private static List<Candidate> roundings(
      Network network, Network set, List<ValvePlace> places, List<Step> before) {
    List<Candidate> roundings = new ArrayList<>();
    for (Handle handle : Handle.values()) {
      List<Step> steps = new ArrayList<>(before);
      steps.addAll(steps(handle, network, set, places));
      if (steps.size() > before.size()) {
        roundings.add(new Candidate(steps));
      }
    }
    return roundings;
  }

  private static List<Step> steps(
      Handle handle, Network now, Network set, List<ValvePlace> places) {
    List<Step> steps = new ArrayList<>();
    for (ValvePlace place : places) {
      Valve then = place.in(set);
      if (!then.loss().equals(place.in(now).loss())) {
        Line line = now.line(place.line());
        steps.add(handle.step(line.placed(Valve.class), place.partIndex(), then));
      }
    }
    return steps;
  }

  /** Whether settings can be put into a project. */
  public static boolean canBeWritten(ValveSettings settings) {
    return settings.valves().stream().noneMatch(set -> cannotBeWritten(set.valve()));
  }

  /** Settings that can be put into a project, as any command takes them. */
  public static List<String> changes(Project project, ValveSettings settings) {
    List<ValvePlace> places = settings.valves().stream().map(SetValve::place).toList();
    Network set = settings.state().network();
    return steps(Handle.EXACTLY, project.network(), set, places).stream()
        .flatMap(step -> step.set().stream())
        .toList();
  }

  /** A valve that is known by its K alone has none when it is shut. */
  private static boolean cannotBeWritten(Valve valve) {
    return valve.isShut() && valve.loss().opening().isEmpty();
  }

  private static Brief best(Network network, List<ValvePlace> places) {
    Brief largest = ValveSettingFinder.findBriefly(network, places, Aim.LARGEST_SHARE);
    boolean isTooMuch =
        Targets.of(network).greatestShareIn(largest.state()) > Verdict.TOO_MUCH_SHARE;
    if (!isTooMuch || largest.targetFraction() < ROOM) {
      return largest;
    }
    return ValveSettingFinder.findBriefly(withRoom(network), places, Aim.TARGET);
  }

  private static Network withRoom(Network network) {
    Network roomy = network;
    for (Point point : network.waysOut()) {
      roomy = roomy.withPoint(withRoom(point));
    }
    return roomy;
  }

  private static Point withRoom(Point point) {
    if (point.targetM3PerS().isEmpty()) {
      return point;
    }
    OptionalDouble more = OptionalDouble.of(ROOM * point.targetM3PerS().getAsDouble());
    if (point instanceof Fall fall) {
      return new Fall(
          fall.name(), fall.crestM(), fall.weir(), fall.depthBand(), more, fall.returnsTo());
    }
    Outlet outlet = (Outlet) point;
    return new Outlet(outlet.name(), outlet.elevationM(), outlet.levelM(), outlet.nozzle(), more);
  }
}
