package rillwright.cli.study.mend;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rillwright.cli.file.Project;
import rillwright.cli.study.Effort;
import rillwright.cli.study.Job;
import rillwright.cli.study.Request;
import rillwright.cli.study.mend.bound.Bound;
import rillwright.cli.study.mend.bound.Bounds;
import rillwright.cli.study.mend.change.Bought;
import rillwright.cli.study.mend.change.Candidate;
import rillwright.cli.study.mend.kind.Cleaning;
import rillwright.cli.study.mend.kind.LargerPipes;
import rillwright.cli.study.mend.kind.Valves;
import rillwright.cli.study.mend.site.Site;
import rillwright.cli.study.mend.trial.Remedy;
import rillwright.cli.study.mend.trial.Trials;
import rillwright.cli.study.solve.Solved;
import rillwright.solver.network.Valve;
import rillwright.solver.progress.Progress;

/**
 * What should be done first? Only what is soon tried: valves and cleaning, then the next sizes of
 * pipe where friction is what is in the way, up to the first change that mends; else what a pump
 * would have to make. In a large project nothing is tried.
 *
 * @param solved the project as it stands
 */
public record FirstRequest(Solved solved) implements Request<MendAnswer> {
  private static final int MOST_TRIED = 8;

  /** Lines times falls and valves: beyond, one trial takes longer than anybody waits for a hint. */
  private static final int MOST_WORK = 12_000;

  @Override
  public MendAnswer answer(Project project, Progress progress) {
    long start = System.nanoTime();
    Site site = Site.of(project, solved.state(), solved.findings());
    Trials trials = new Trials(site);
    boolean isSoonTried = work(site) <= MOST_WORK;
    List<Bound> bounds =
        isSoonTried ? Bounds.of(site, List.of(Bound.Kind.PIPE_FRICTION)) : List.of();
    Optional<Remedy> first = Optional.empty();
    if (isSoonTried && !site.needs().isEmpty()) {
      first =
          trials.mendingAll(Valves.marked(site)).or(() -> trials.mendingAll(Cleaning.all(site)));
      if (bounds.stream().anyMatch(Bound::enough)) {
        first = first.or(() -> trials.mendingAll(pipes(site)));
      }
    }
    return new MendAnswer(
        Job.of(project),
        site.state(),
        site.needs(),
        first.stream().toList(),
        Optional.empty(),
        Optional.empty(),
        bounds,
        List.of(),
        first.isPresent() || !isSoonTried ? Optional.empty() : MendRequest.duty(site),
        MendRequest.USUAL_YEARS,
        Bought.currency(project),
        Effort.since(start, trials.count()));
  }

  private static int work(Site site) {
    int lines = site.network().lines().size();
    return lines * (site.targets().falls().size() + site.network().placed(Valve.class).size());
  }

  private static List<Candidate> pipes(Site site) {
    List<Candidate> pipes = new ArrayList<>();
    new LargerPipes(List.of()).candidates(site).forEach(pipes::addAll);
    return pipes.subList(0, Math.min(MOST_TRIED, pipes.size()));
  }
}
