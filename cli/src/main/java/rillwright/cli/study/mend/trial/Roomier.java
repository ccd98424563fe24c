package rillwright.cli.study.mend.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rillwright.cli.study.mend.change.Action;
import rillwright.cli.study.mend.change.Candidate;
import rillwright.cli.study.mend.change.Step;
import rillwright.cli.study.mend.kind.Ponds;
import rillwright.cli.study.mend.kind.Pumps;
import rillwright.cli.study.mend.site.Site;

/**
 * Changes that give falls their targets and leave a pond in need, with what gives that pond room:
 * one change more, and another where the pond both starves and runs over.
 */
public record Roomier(Site site, Trials trials) {
  /** So many changes are tried with more room. */
  private static final int MOST = 6;

  /** So many changes are added to one. */
  private static final int MOST_ADDED = 2;

  /** Those that meet more needs than what they begin with. */
  public List<Remedy> of(List<Remedy> tried) {
    List<Remedy> roomy = new ArrayList<>();
    List<Remedy> begun =
        tried.stream()
            .filter(remedy -> remedy.leastShare() >= 1 && !remedy.mendsAllOf(site.needs()))
            .limit(MOST)
            .toList();
    for (int added = 0; added < MOST_ADDED; added++) {
      List<Remedy> further = new ArrayList<>();
      begun.forEach(remedy -> further.addAll(withRoom(remedy)));
      roomy.addAll(further);
      begun =
          further.stream().filter(remedy -> !remedy.mendsAllOf(site.needs())).limit(MOST).toList();
    }
    return roomy;
  }

  private List<Remedy> withRoom(Remedy remedy) {
    List<Remedy> roomy = new ArrayList<>();
    Candidate candidate = remedy.candidate();
    Optional<Site> with = site.changed(candidate.set()).map(site::changedTo);
    for (List<Candidate> room : with.map(new Ponds()::candidates).orElse(List.of())) {
      List<Candidate> more =
          room.stream()
              .filter(it -> Pairs.areApart(candidate, it))
              .flatMap(it -> Stream.concat(slower(candidate, it), Stream.of(candidate.and(it))))
              .toList();
      trials.first(more).filter(it -> isMore(it, remedy)).ifPresent(roomy::add);
    }
    return roomy;
  }

  /** A pump that was slowed for itself is slowed anew: with more room it may run slower. */
  private Stream<Candidate> slower(Candidate candidate, Candidate room) {
    List<Step> others =
        candidate.steps().stream().filter(step -> step.action() != Action.SPEED).toList();
    if (others.size() == candidate.steps().size()) {
      return Stream.of();
    }
    Candidate roomy = new Candidate(others).and(room);
    return site.changed(roomy.set()).stream()
        .flatMap(changed -> Pumps.slower(site, roomy, changed).stream());
  }

  /** Whether it meets more needs, or the same without losing another. */
  private boolean isMore(Remedy remedy, Remedy before) {
    int more = remedy.metOf(site.needs()) - before.metOf(site.needs());
    return more > 0 || (more == 0 && remedy.mends() && !before.mends());
  }
}
