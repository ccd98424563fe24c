package rillwright.cli.study.mend;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rillwright.cli.file.Project;
import rillwright.cli.study.Job;
import rillwright.cli.study.Request;
import rillwright.cli.study.mend.bound.Bound;
import rillwright.cli.study.mend.bound.Bounds;
import rillwright.cli.study.mend.change.Bought;
import rillwright.cli.study.mend.change.Candidate;
import rillwright.cli.study.mend.change.Offered;
import rillwright.cli.study.mend.change.Source;
import rillwright.cli.study.mend.change.Work;
import rillwright.cli.study.mend.kind.Cleaning;
import rillwright.cli.study.mend.kind.LargerPipes;
import rillwright.cli.study.mend.kind.Pumps;
import rillwright.cli.study.mend.kind.Valves;
import rillwright.cli.study.mend.site.Site;
import rillwright.cli.study.mend.trial.Remedy;
import rillwright.cli.study.mend.trial.Trials;
import rillwright.cli.study.solve.Solved;
import rillwright.solver.network.Valve;
import rillwright.solver.progress.Progress;

/**
 * What should be done first? Only what is soon tried: valves and cleaning up to the first that
 * mends; then the best of the file's own pumps and, where friction is what is in the way, of the
 * next sizes of pipe; else what a pump would have to make. In a large project nothing is tried.
 *
 * @param solved the project as it stands
 */
public record FirstRequest(Solved solved) implements Request<MendAnswer> {
  private static final int MOST_TRIED = 8;

  /** Lines times falls and valves: beyond, one trial takes longer than anybody waits for a hint. */
  private static final int MOST_WORK = 12_000;

  @Override
  public MendAnswer answer(Project project, Progress progress) {
    Site asked = Site.of(project, solved.state(), solved.findings());
    Site site = asked.needs().isEmpty() ? asked : asked.keepingPonds();
    Trials trials = new Trials(site);
    boolean isSoonTried = work(site) <= MOST_WORK;
    List<Bound> bounds =
        isSoonTried ? Bounds.of(site, List.of(Bound.Kind.PIPE_FRICTION)) : List.of();
    Optional<Remedy> first = Optional.empty();
    if (isSoonTried && !site.needs().isEmpty()) {
      first =
          trials.mendingAll(Valves.marked(site)).or(() -> trials.mendingAll(Cleaning.all(site)));
      if (first.isEmpty()) {
        List<Candidate> bought = of(site, new Pumps(Offered.NOTHING));
        if (bounds.stream().anyMatch(Bound::enough)) {
          bought.addAll(of(site, new LargerPipes(List.of())));
        }
        first =
            bought.stream()
                .flatMap(candidate -> trials.of(candidate).stream())
                .filter(remedy -> remedy.mendsAllOf(site.needs()))
                .min(MendRequest.bestFirst(site, MendRequest.USUAL_YEARS));
      }
    }
    return new MendAnswer(
        Job.of(project),
        site.state(),
        site.needs(),
        site.water().rooms(),
        first.stream().toList(),
        Optional.empty(),
        Optional.empty(),
        bounds,
        List.of(),
        isSoonTried && first.filter(it -> !buysAPump(it)).isEmpty()
            ? MendRequest.duty(site)
            : Optional.empty(),
        MendRequest.USUAL_YEARS,
        Bought.currency(project),
        trials.count(),
        site.work().untried());
  }

  private static boolean buysAPump(Remedy remedy) {
    return remedy.candidate().steps().stream().anyMatch(step -> step.action().work() == Work.PUMP);
  }

  private static int work(Site site) {
    int lines = site.network().lines().size();
    return lines * (site.targets().falls().size() + site.network().placed(Valve.class).size());
  }

  private static List<Candidate> of(Site site, Source source) {
    List<Candidate> all = new ArrayList<>();
    source.candidates(site).forEach(all::addAll);
    return new ArrayList<>(all.subList(0, Math.min(MOST_TRIED, all.size())));
  }
}
