package rillwright.cli.study.mend;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import rillwright.cli.file.Project;
import rillwright.cli.study.Effort;
import rillwright.cli.study.Job;
import rillwright.cli.study.PumpsChosen;
import rillwright.cli.study.Request;
import rillwright.cli.study.RunningFigures;
import rillwright.cli.study.choice.PumpsRequest;
import rillwright.cli.study.duty.DutyAnswer;
import rillwright.cli.study.duty.DutyRequest;
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
import rillwright.cli.study.mend.site.Need;
import rillwright.cli.study.mend.site.PondNeeds;
import rillwright.cli.study.mend.site.Site;
import rillwright.solver.progress.Progress;
import rillwright.solver.pumping.PumpPlace;

/**
 * What would mend it?
 *
 * @param offered pumps of a supplier that may be bought
 * @param sizes of pipe that may be laid; none for the next ones up
 * @param years over which cost counts, above 0
 * @param days that the water of ponds must last without topping up; empty to ask for none
 */
public record MendRequest(Offered offered, List<String> sizes, double years, OptionalDouble days)
    implements Request<MendAnswer> {
  /** Costs that differ by less than this share of today's are alike. */
  private static final double ALIKE = 0.01;

  /** Years over which cost is usually counted. */
  static final double USUAL_YEARS = PumpsRequest.USUAL_YEARS;

  public MendRequest {
    sizes = List.copyOf(sizes);
  }

  /** The same without asking for days. */
  public MendRequest(Offered offered, List<String> sizes, double years) {
    this(offered, sizes, years, OptionalDouble.empty());
  }

  @Override
  public MendAnswer answer(Project project, Progress progress) {
    PumpsChosen.require(project.network());
    long start = System.nanoTime();
    PondNeeds ponds = new PondNeeds(days);
    Site site = Site.of(project, ponds);
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
    for (Remedy remedy : new Roomier(site, trials, ponds).of(List.copyOf(remedies.values()))) {
      remedies.putIfAbsent(Set.copyOf(remedy.candidate().set()), remedy);
    }
    List<Remedy> sorted = sorted(remedies.values(), site);
    if (sorted.stream().noneMatch(it -> it.mendsAllOf(site.needs()))) {
      List<Remedy> pairs = new ArrayList<>(new Pairs(site, trials).of(sorted));
      pairs.addAll(sorted);
      sorted = sorted(pairs, site);
    }
    return new MendAnswer(
        Job.of(project),
        site.state(),
        site.needs(),
        sorted,
        Bounds.of(site),
        duty(site),
        years,
        Bought.currency(project),
        Effort.since(start, trials.count()));
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
    OptionalDouble today = RunningFigures.of(site.state(), site.project().running()).costPerYear();
    List<Remedy> sorted = new ArrayList<>(remedies);
    sorted.sort(new BestFirst(years, ALIKE * years * today.orElse(0), site.needs()));
    return sorted;
  }

  /** The duty of the one pump that drives what lacks water. */
  static Optional<DutyAnswer> duty(Site site) {
    List<PumpPlace> pumps =
        PumpPlace.listChosen(site.network()).stream()
            .filter(place -> site.lines().contains(site.network().line(place.line())))
            .toList();
    boolean lacks = site.needs().stream().anyMatch(Need::isUnder);
    return lacks && pumps.size() == 1
        ? Optional.of(new DutyRequest(pumps.get(0)).answer(site.project()))
        : Optional.empty();
  }
}
