package rillwright.cli.study.mend.trial;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import rillwright.cli.file.Project;
import rillwright.cli.study.RunningFigures;
import rillwright.cli.study.mend.change.Candidate;
import rillwright.cli.study.mend.change.Work;
import rillwright.cli.study.mend.site.Judgement;
import rillwright.cli.study.mend.site.Need;
import rillwright.cli.study.mend.site.PondWater;
import rillwright.cli.study.mend.site.Site;
import rillwright.solver.network.PointName;
import rillwright.solver.steady.SteadyState;

/** Candidates put into a project and judged. */
public final class Trials {
  /** States that a trial asks for: its own, and what its findings and ponds need. */
  private static final int STATES = 2;

  private final Site site;
  private int count;

  public Trials(Site site) {
    this.site = site;
  }

  /** How many were tried. */
  public int count() {
    return count;
  }

  /** The first of some that mends all. */
  public Optional<Remedy> mendingAll(List<Candidate> candidates) {
    for (Candidate candidate : candidates) {
      Optional<Remedy> tried = of(candidate).filter(remedy -> remedy.mendsAllOf(site.needs()));
      if (tried.isPresent()) {
        return tried;
      }
    }
    return Optional.empty();
  }

  /** The first of some that mends. */
  public Optional<Remedy> mending(List<Candidate> candidates) {
    for (Candidate candidate : candidates) {
      Optional<Remedy> tried = of(candidate).filter(Remedy::mends);
      if (tried.isPresent()) {
        return tried;
      }
    }
    return Optional.empty();
  }

  /** The first of some that mends, else the first that helps; empty if none does. */
  public Optional<Remedy> first(List<Candidate> alternatives) {
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
  public Optional<Remedy> of(Candidate candidate) {
    return of(candidate, state -> true);
  }

  /** One candidate that gives each fall that lacks water its target; empty if it does not. */
  public Optional<Remedy> enough(Candidate candidate) {
    return of(candidate, site::givesWhatLacks);
  }

  private Optional<Remedy> of(Candidate candidate, Predicate<SteadyState> isWorthJudging) {
    if (!site.work().take(STATES)) {
      return Optional.empty();
    }
    count++;
    return site.changed(candidate.set()).flatMap(changed -> of(candidate, changed, isWorthJudging));
  }

  private Optional<Remedy> of(
      Candidate candidate, Project changed, Predicate<SteadyState> isWorthJudging) {
    Optional<SteadyState> balanced = Site.balanced(changed.network()).filter(isWorthJudging);
    if (balanced.isEmpty()) {
      return Optional.empty();
    }
    SteadyState state = balanced.get();
    return Judgement.of(site, state, changed)
        .flatMap(judgement -> of(candidate, changed, state, judgement));
  }

  private Optional<Remedy> of(
      Candidate candidate, Project changed, SteadyState state, Judgement judgement) {
    List<Need> lacks = lacks(candidate, state);
    boolean mends = judgement.mends() && lacks.isEmpty();
    List<PointName> serves = mends ? judgement.met() : judgement.helped();
    if (serves.isEmpty()) {
      return Optional.empty();
    }
    RunningFigures takes = RunningFigures.of(state, changed.running());
    return Optional.of(
        new Remedy(
            candidate,
            serves,
            judgement.metNeeds(),
            Stream.concat(judgement.left().stream(), lacks.stream()).toList(),
            mends,
            state,
            takes.powerW(),
            takes.costPerYear(),
            judgement.leastShare(),
            judgement.ponds().map(PondWater::rooms).orElse(List.of())));
  }

  /** What another pump, or more of them, lacks at its inlet where none lacked anything. */
  private List<Need> lacks(Candidate candidate, SteadyState state) {
    boolean isOfPumps =
        candidate.steps().stream().anyMatch(step -> step.action().work() == Work.PUMP);
    return isOfPumps && Need.ofSuction(site.state()).isEmpty() ? Need.ofSuction(state) : List.of();
  }
}
