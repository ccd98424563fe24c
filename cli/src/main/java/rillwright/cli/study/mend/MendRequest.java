package rillwright.cli.study.mend;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import rillwright.cli.file.Project;
import rillwright.cli.study.Job;
import rillwright.cli.study.PumpsChosen;
import rillwright.cli.study.Request;
import rillwright.cli.study.RunningFigures;
import rillwright.cli.study.choice.PumpsRequest;
import rillwright.cli.study.condition.SiteConditions;
import rillwright.cli.study.duty.DutyAnswer;
import rillwright.cli.study.duty.DutyRequest;
import rillwright.cli.study.mend.bound.Bound;
import rillwright.cli.study.mend.bound.Bounds;
import rillwright.cli.study.mend.change.Bought;
import rillwright.cli.study.mend.change.Candidate;
import rillwright.cli.study.mend.change.Offered;
import rillwright.cli.study.mend.change.Source;
import rillwright.cli.study.mend.kind.Cleaning;
import rillwright.cli.study.mend.kind.Crests;
import rillwright.cli.study.mend.kind.FreerFittings;
import rillwright.cli.study.mend.kind.LargerPipes;
import rillwright.cli.study.mend.kind.Ponds;
import rillwright.cli.study.mend.kind.Pumps;
import rillwright.cli.study.mend.kind.SecondLines;
import rillwright.cli.study.mend.kind.Skimmers;
import rillwright.cli.study.mend.kind.Valves;
import rillwright.cli.study.mend.search.CheapestSet;
import rillwright.cli.study.mend.search.Searched;
import rillwright.cli.study.mend.site.Need;
import rillwright.cli.study.mend.site.PondNeeds;
import rillwright.cli.study.mend.site.Site;
import rillwright.cli.study.mend.trial.BestFirst;
import rillwright.cli.study.mend.trial.Pairs;
import rillwright.cli.study.mend.trial.Remedy;
import rillwright.cli.study.mend.trial.Roomier;
import rillwright.cli.study.mend.trial.Trials;
import rillwright.solver.progress.Progress;
import rillwright.solver.pumping.PumpPlace;
import rillwright.solver.study.duty.Duty;

/**
 * What would mend it?
 *
 * @param offered pumps of a supplier that may be bought
 * @param sizes of pipe that may be laid; none for the next ones up
 * @param years over which cost counts, above 0
 * @param days that the water of ponds must last without topping up; empty to ask for none
 * @param conditions names of those in which falls must get their targets too, none for all; empty
 *     to judge by the project as it stands
 */
public record MendRequest(
    Offered offered,
    List<String> sizes,
    double years,
    OptionalDouble days,
    Optional<List<String>> conditions)
    implements Request<MendAnswer> {
  /** Costs that differ by less than this share of today's are alike. */
  private static final double ALIKE = 0.01;

  /** Years over which cost is usually counted. */
  static final double USUAL_YEARS = PumpsRequest.USUAL_YEARS;

  public MendRequest {
    sizes = List.copyOf(sizes);
  }

  /** The same without asking for days or conditions. */
  public MendRequest(Offered offered, List<String> sizes, double years) {
    this(offered, sizes, years, OptionalDouble.empty(), Optional.empty());
  }

  @Override
  public MendAnswer answer(Project project, Progress progress) {
    Site site = site(project);
    Trials trials = new Trials(site);
    Map<Set<String>, Remedy> remedies = new LinkedHashMap<>();
    if (!site.needs().isEmpty()) {
      for (Source source : sources()) {
        for (List<Candidate> alternatives : source.candidates(site)) {
          trials
              .first(alternatives)
              .ifPresent(it -> remedies.putIfAbsent(Set.copyOf(it.candidate().set()), it));
        }
      }
    }
    for (Remedy remedy : new Roomier(site, trials).of(sorted(remedies.values(), site))) {
      remedies.putIfAbsent(Set.copyOf(remedy.candidate().set()), remedy);
    }
    List<Remedy> sorted = sorted(remedies.values(), site);
    Optional<Searched> searched = Optional.empty();
    if (sorted.stream().noneMatch(it -> it.mendsAllOf(site.needs()))) {
      for (Remedy pair : new Pairs(site, trials).of(sorted)) {
        remedies.putIfAbsent(Set.copyOf(pair.candidate().set()), pair);
      }
      searched =
          new CheapestSet(site, trials, new Pumps(offered), new LargerPipes(sizes)).find(years);
      searched
          .flatMap(Searched::least)
          .ifPresent(it -> remedies.putIfAbsent(Set.copyOf(it.candidate().set()), it));
      sorted = sorted(remedies.values(), site);
    }
    List<Bound> bounds = Bounds.of(site);
    return new MendAnswer(
        Job.of(project),
        site.state(),
        site.needs(),
        site.water().rooms(),
        sorted,
        searched,
        judging(project).flatMap(judging -> judging.shown(List.of())),
        bounds,
        Bounds.without(site, bounds),
        duty(site),
        years,
        Bought.currency(project),
        trials.count(),
        site.work().untried());
  }

  private Site site(Project project) {
    PumpsChosen.require(project.network());
    return Site.of(project, Optional.of(new PondNeeds(days)), judging(project)).withPumps();
  }

  /** Whether more is in need than a pump far from its best efficiency. */
  public boolean findsNeeds(Project project) {
    return !site(project).needs().stream().allMatch(Need::isOfEfficiency);
  }

  private Optional<SiteConditions> judging(Project project) {
    return conditions.map(names -> SiteConditions.of(project, Optional.of(names)));
  }

  private List<Source> sources() {
    return List.of(
        new Valves(),
        new Cleaning(),
        new FreerFittings(),
        new Pumps(offered),
        new Skimmers(),
        new Ponds(),
        new Crests(),
        new LargerPipes(sizes),
        new SecondLines());
  }

  private List<Remedy> sorted(Collection<Remedy> remedies, Site site) {
    List<Remedy> sorted = new ArrayList<>(remedies);
    sorted.removeIf(it -> remedies.stream().anyMatch(less -> less.isEnoughFor(it, site.needs())));
    sorted.sort(bestFirst(site, years));
    return sorted;
  }

  /** The order of remedies for a site, by cost over some years. */
  static BestFirst bestFirst(Site site, double years) {
    OptionalDouble today = RunningFigures.of(site.state(), site.project().running()).costPerYear();
    return new BestFirst(years, ALIKE * years * today.orElse(0), site.needs());
  }

  /**
   * The duty of the one pump that drives what lacks water, once what can be set is opened: the most
   * that any condition asks.
   */
  static Optional<DutyAnswer> duty(Site site) {
    List<PumpPlace> pumps =
        PumpPlace.listChosen(site.network()).stream()
            .filter(place -> site.lines().stream().anyMatch(it -> it.name().equals(place.line())))
            .toList();
    boolean lacks = site.needs().stream().anyMatch(Need::isUnder);
    return lacks && pumps.size() == 1
        ? Stream.concat(
                Stream.of(site.project()),
                site.conditions().stream().flatMap(all -> all.projects(site.project())))
            .map(project -> new DutyRequest(pumps.get(0)).withValvesOpen(project))
            .max(Comparator.comparingDouble(MendRequest::headM))
        : Optional.empty();
  }

  private static double headM(DutyAnswer duty) {
    return duty.duty().throttled().map(Duty.Throttled::headM).orElse(Double.POSITIVE_INFINITY);
  }
}
