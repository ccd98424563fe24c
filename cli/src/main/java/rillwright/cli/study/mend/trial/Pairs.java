package rillwright.cli.study.mend.trial;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import rillwright.cli.study.mend.change.Candidate;
import rillwright.cli.study.mend.change.Step;
import rillwright.cli.study.mend.change.Work;
import rillwright.cli.study.mend.kind.Valves;
import rillwright.cli.study.mend.site.Site;

/**
 * Two changes together, where none alone mends all: those that bring most alone, and the valves set
 * for both.
 */
public final class Pairs {
  /** How many of the changes that help are paired with each other. */
  private static final int MOST_PAIRED = 12;

  private final Site site;
  private final Trials trials;

  public Pairs(Site site, Trials trials) {
    this.site = site;
    this.trials = trials;
  }

  /** The pairs that mend, of changes that were tried alone, the best first. */
  public List<Remedy> of(List<Remedy> helpful) {
    List<Candidate> alone = helpful.stream().map(Remedy::candidate).limit(MOST_PAIRED).toList();
    List<Remedy> mending = new ArrayList<>();
    for (int i = 0; i < alone.size(); i++) {
      for (Candidate other : alone.subList(i + 1, alone.size())) {
        if (areApart(alone.get(i), other)) {
          together(alone.get(i).and(other)).ifPresent(mending::add);
        }
      }
    }
    return mending;
  }

  private Optional<Remedy> together(Candidate pair) {
    return trials.mending(List.of(pair)).or(() -> trials.mending(throttled(pair)));
  }

  /** The valves set for both; none where one of them sets a valve itself. */
  private List<Candidate> throttled(Candidate pair) {
    if (pair.steps().stream().anyMatch(step -> step.action().work() == Work.VALVE)) {
      return List.of();
    }
    return site.changed(pair.set())
        .filter(changed -> site.balancedNear(changed.network()).filter(site::isEnough).isPresent())
        .flatMap(changed -> Valves.all(site, changed.network(), pair.steps()))
        .orElse(List.of());
  }

  /** Whether two changes are not of the same kind to the same thing. */
  static boolean areApart(Candidate one, Candidate other) {
    return one.steps().stream().noneMatch(step -> touches(other.steps(), step));
  }

  private static boolean touches(Collection<Step> steps, Step step) {
    return steps.stream()
        .anyMatch(
            other ->
                other.at().equals(step.at())
                    && (other.action().work() == step.action().work()
                        || other.action().kind().equals(step.action().kind())));
  }
}
