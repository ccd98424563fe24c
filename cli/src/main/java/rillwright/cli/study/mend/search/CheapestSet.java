package rillwright.cli.study.mend.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.stream.Stream;
import rillwright.cli.file.Project;
import rillwright.cli.study.mend.change.Candidate;
import rillwright.cli.study.mend.kind.LargerPipes;
import rillwright.cli.study.mend.kind.Pumps;
import rillwright.cli.study.mend.kind.Valves;
import rillwright.cli.study.mend.site.Need;
import rillwright.cli.study.mend.site.Site;
import rillwright.cli.study.mend.trial.Remedy;
import rillwright.cli.study.mend.trial.Trials;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Network;

/**
 * Finds the least set of sizes, pumps and valve settings that gives every fall its target. Sets are
 * taken up in the order of what they cost at least; the first whose own cost is known to be that is
 * the least.
 */
public final class CheapestSet {
  /** So many sets begun are looked at; beyond, the answer says that it is not proven. */
  private static final int MOST = 4000;

  /** So many lines of whole sets are balanced, likewise: 200 sets of a network of ten lines. */
  private static final int MOST_LINES = 2000;

  private final Site site;
  private final Trials trials;
  private final Pumps pumps;
  private final LargerPipes pipes;
  private final CanMeet bound;

  /**
   * A search.
   *
   * @param pumps that may be taken
   * @param pipes that may be laid
   */
  public CheapestSet(Site site, Trials trials, Pumps pumps, LargerPipes pipes) {
    this.site = site;
    this.trials = trials;
    this.pumps = pumps;
    this.pipes = pipes;
    this.bound = new CanMeet(site);
  }

  /**
   * Some options taken, those of the first choices; with a remedy where all are and it is enough.
   *
   * @param electricity over the years, that any set with these takes at least
   */
  private record Begun(
      List<Option> taken, double electricity, double atLeast, Optional<Remedy> whole) {
    Candidate candidate() {
      return new Candidate(taken.stream().flatMap(option -> option.steps().stream()).toList());
    }

    Begun with(Option option) {
      List<Option> more = Stream.concat(taken.stream(), Stream.of(option)).toList();
      return new Begun(more, electricity, atLeast, Optional.empty());
    }

    Begun costing(double electricity, LeastCost cost) {
      double least = Math.max(atLeast, cost.atLeast(taken, electricity));
      return new Begun(taken, electricity, least, Optional.empty());
    }
  }

  /**
   * The search; empty where no fall lacks water.
   *
   * @param years over which cost counts
   */
  public Optional<Searched> find(double years) {
    boolean lacks = site.needs().stream().anyMatch(need -> need.isUnder() || need.isOfCondition());
    List<Choice> all = Choice.of(site, pumps, pipes);
    if (!lacks || all.isEmpty()) {
      return Optional.empty();
    }
    List<Choice> priced = all.stream().map(Choice::priced).toList();
    boolean hasYear =
        !site.network().isPumped() || site.project().running().costPerYear(1).isPresent();
    if (hasYear && priced.stream().anyMatch(choice -> choice.options().size() > 1)) {
      int unpriced = count(all) - count(priced);
      Searched byCost = find(priced, new LeastCost(site, years, true), unpriced);
      if (byCost.least().isPresent() || unpriced == 0) {
        return Optional.of(byCost);
      }
    }
    return Optional.of(find(all, new LeastCost(site, years, false), 0));
  }

  private static int count(List<Choice> choices) {
    return choices.stream().mapToInt(choice -> choice.options().size()).sum();
  }

  private Searched find(List<Choice> choices, LeastCost cost, int unpriced) {
    PriorityQueue<Begun> queue =
        new PriorityQueue<>(
            Comparator.comparingDouble(Begun::atLeast)
                .thenComparing(begun -> begun.whole().isEmpty())
                .thenComparingInt(begun -> -begun.taken().size()));
    queue.add(new Begun(List.of(), 0, 0, Optional.empty()));
    double sets =
        choices.stream().mapToDouble(choice -> choice.options().size()).reduce(1, (a, b) -> a * b);
    int tried = 0;
    Optional<Begun> best = Optional.empty();
    for (int looked = 0; !queue.isEmpty(); looked++) {
      Begun next = queue.remove();
      if (next.whole().isPresent()) {
        return new Searched(next.whole(), cost.byCost(), sets, tried, unpriced, true);
      }
      if (looked == MOST
          || tried * site.network().lines().size() > MOST_LINES
          || site.work().isSpent()) {
        return new Searched(
            best.flatMap(Begun::whole), cost.byCost(), sets, tried, unpriced, false);
      }
      if (next.taken().size() == choices.size()) {
        tried++;
        Optional<Begun> whole = whole(next, cost);
        whole.ifPresent(queue::add);
        best =
            Stream.concat(best.stream(), whole.stream())
                .min(Comparator.comparingDouble(Begun::atLeast));
        continue;
      }
      for (Option option : choices.get(next.taken().size()).options()) {
        possible(next.with(option), choices, cost).ifPresent(queue::add);
      }
    }
    return new Searched(Optional.empty(), cost.byCost(), sets, tried, unpriced, true);
  }

  /**
   * A set that is begun with what it costs at least; empty if none that holds it can do it. That is
   * asked once all pumps are chosen; of a size more only where the bound goes by sizes.
   */
  private Optional<Begun> possible(Begun begun, List<Choice> choices, LeastCost cost) {
    List<Choice> open = choices.subList(begun.taken().size(), choices.size());
    boolean hasAllPumps = open.stream().allMatch(Choice::isPipe);
    boolean isOneMoreSize =
        begun.taken().size() > 1 && choices.get(begun.taken().size() - 1).isPipe();
    if (!hasAllPumps || (isOneMoreSize && !bound.goesBySizes())) {
      return Optional.of(begun.costing(begun.electricity(), cost));
    }
    site.work().spend(1);
    Optional<Project> with = site.changed(begun.candidate().set());
    List<LineName> lines = open.stream().map(Choice::line).toList();
    return with.filter(project -> bound.meets(project, lines))
        .map(project -> begun.costing(cost.electricity(project), cost));
  }

  /** The cheapest of its settings that is enough. */
  private Optional<Begun> whole(Begun begun, LeastCost cost) {
    Candidate candidate = begun.candidate();
    Optional<Project> changed = site.changed(candidate.set());
    if (changed.isEmpty()) {
      return Optional.empty();
    }
    List<Candidate> free = new ArrayList<>();
    if (!candidate.steps().isEmpty()) {
      free.add(candidate);
    }
    free.addAll(Pumps.slower(site, candidate, changed.get()));
    return cheapest(free, begun, cost)
        .or(() -> cheapest(throttled(candidate, changed.get()), begun, cost));
  }

  private Optional<Begun> cheapest(List<Candidate> settings, Begun begun, LeastCost cost) {
    return settings.stream()
        .map(trials::enough)
        .flatMap(Optional::stream)
        .filter(this::isEnough)
        .map(
            remedy ->
                new Begun(begun.taken(), 0, cost.of(remedy, begun.taken()), Optional.of(remedy)))
        .min(Comparator.comparingDouble(Begun::atLeast));
  }

  /** Whether all that lacks water has it, and nothing is lost. */
  private boolean isEnough(Remedy remedy) {
    List<Need> needs =
        site.needs().stream().filter(need -> need.isOfTarget() || need.isOfCondition()).toList();
    return remedy.mends() && remedy.meets().containsAll(needs);
  }

  /** Valves set for the file as written, and for each condition that is asked for. */
  private List<Candidate> throttled(Candidate candidate, Project changed) {
    Stream<Network> conditions =
        site.conditions().map(all -> all.ofChanged(changed)).orElse(Map.of()).values().stream()
            .flatMap(Optional::stream)
            .map(Project::network);
    return Stream.concat(Stream.of(changed.network()), conditions)
        .flatMap(network -> Valves.all(site, network, candidate.steps()).stream())
        .flatMap(List::stream)
        .toList();
  }
}
