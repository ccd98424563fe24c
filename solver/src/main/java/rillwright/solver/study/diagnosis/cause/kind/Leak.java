package rillwright.solver.study.diagnosis.cause.kind;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rillwright.solver.network.Line;
import rillwright.solver.network.Placed;
import rillwright.solver.network.Run;
import rillwright.solver.network.Tee;
import rillwright.solver.study.diagnosis.cause.CauseId;
import rillwright.solver.study.diagnosis.cause.CauseKind;
import rillwright.solver.study.diagnosis.cause.Quantity;
import rillwright.solver.study.diagnosis.cause.Site;
import rillwright.solver.study.diagnosis.cause.SizeRange;
import rillwright.solver.study.diagnosis.job.AsBuilt;
import rillwright.solver.study.diagnosis.job.PartPlace;

/** Water that leaves a pipe where it should not. */
final class Leak {
  private static final Quantity DRAW =
      Quantity.ratio("what it takes, as a share of the pump's flow as built");

  private Leak() {}

  /** At a tee or in the middle of a line's longest run. */
  record Buried() implements CauseKind {
    @Override
    public String name() {
      return "leak";
    }

    @Override
    public Quantity quantity() {
      return DRAW;
    }

    @Override
    public Optional<SizeRange> sizes() {
      return Optional.of(SizeRange.even(0.02, 0.8));
    }

    @Override
    public double weight() {
      return 0.04;
    }

    @Override
    public List<Site> sitesIn(AsBuilt job) {
      List<Site> sites = new ArrayList<>();
      for (Tee tee : job.network().points(Tee.class)) {
        double pumpFlow = job.pumpFlowM3PerS(tee.name());
        sites.add(
            new Site(
                CauseId.at(name(), tee.name().value()),
                (size, altered) -> altered.drawAt(tee.name(), size * pumpFlow)));
      }
      for (Line line : Places.withRun(job.network())) {
        double pumpFlow = job.pumpFlowM3PerS(line.name());
        PartPlace run = longestRun(line);
        sites.add(
            new Site(
                CauseId.at(name(), line.name().value()),
                (size, altered) -> altered.drawInTheMiddleOf(run, size * pumpFlow)));
      }
      return sites;
    }

    private static PartPlace longestRun(Line line) {
      int longest = -1;
      double length = 0;
      for (Placed<Run> run : line.placed(Run.class)) {
        if (run.part().lengthM() > length) {
          longest = run.index();
          length = run.part().lengthM();
        }
      }
      return new PartPlace(line.name(), longest);
    }
  }

  /** A branch left open just after a pump. */
  record Bypass() implements CauseKind {
    @Override
    public String name() {
      return "bypass open";
    }

    @Override
    public Quantity quantity() {
      return DRAW;
    }

    @Override
    public Optional<SizeRange> sizes() {
      return Optional.of(SizeRange.even(0.05, 0.7));
    }

    @Override
    public double weight() {
      return 0.02;
    }

    @Override
    public List<Site> sitesIn(AsBuilt job) {
      List<Site> sites = new ArrayList<>();
      for (Line line : job.network().lines()) {
        Places.firstIndex(line, Places::isRunningPump)
            .ifPresent(
                index -> {
                  PartPlace pump = new PartPlace(line.name(), index);
                  double pumpFlow = job.pumpFlowM3PerS(line.name());
                  sites.add(
                      new Site(
                          CauseId.at(name(), line.name().value()),
                          (size, altered) -> altered.drawAfter(pump, size * pumpFlow)));
                });
      }
      return sites;
    }
  }
}
