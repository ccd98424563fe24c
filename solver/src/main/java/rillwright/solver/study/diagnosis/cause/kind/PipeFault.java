package rillwright.solver.study.diagnosis.cause.kind;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rillwright.solver.network.Friction;
import rillwright.solver.network.Line;
import rillwright.solver.network.Part;
import rillwright.solver.network.Run;
import rillwright.solver.study.diagnosis.cause.CauseId;
import rillwright.solver.study.diagnosis.cause.CauseKind;
import rillwright.solver.study.diagnosis.cause.Quantity;
import rillwright.solver.study.diagnosis.cause.Site;
import rillwright.solver.study.diagnosis.cause.SizeRange;
import rillwright.solver.study.diagnosis.job.AsBuilt;
import rillwright.solver.study.diagnosis.job.Narrowing;
import rillwright.solver.study.diagnosis.job.PartPlace;

/** A cause that narrows runs of pipe. */
final class PipeFault {
  /** Roughness of slime and scale, m. */
  private static final double FOULED_ROUGHNESS_M = 0.001;

  private PipeFault() {}

  /**
   * Slime, scale or roots in a line: its pipe and all that stands in it narrower, its runs rough.
   */
  record Fouled() implements CauseKind {
    @Override
    public String name() {
      return "pipe fouled";
    }

    @Override
    public Quantity quantity() {
      return Quantity.left("share of its bore left, at a wall roughness of 1 mm");
    }

    @Override
    public Optional<SizeRange> sizes() {
      return Optional.of(SizeRange.even(0.6, 0.98));
    }

    @Override
    public double weight() {
      return 0.05;
    }

    @Override
    public List<Site> sitesIn(AsBuilt job) {
      return Places.withRun(job.network()).stream().map(this::site).toList();
    }

    private Site site(Line line) {
      List<PartPlace> runs = new ArrayList<>();
      for (int i = 0; i < line.parts().size(); i++) {
        if (isRun(line.parts().get(i))) {
          runs.add(new PartPlace(line.name(), i));
        }
      }
      return new Site(
          CauseId.at(name(), line.name().value()),
          (size, altered) -> {
            altered.narrow(line.name(), size);
            runs.forEach(run -> altered.changePart(run, Run.class, Fouled::rough));
          });
    }

    private static Run rough(Run run) {
      return new Run(
          run.lengthM(), run.inside(), new Friction.Roughness(FOULED_ROUGHNESS_M), run.label());
    }
  }

  private static boolean isRun(Part part) {
    return part instanceof Run;
  }

  /** A whole line of one size less than drawn, its fittings and ends with it. */
  record Smaller() implements CauseKind {
    @Override
    public String name() {
      return "pipe smaller than drawn";
    }

    @Override
    public Quantity quantity() {
      return Quantity.ofNoSize("one size less than drawn");
    }

    @Override
    public Optional<SizeRange> sizes() {
      return Optional.empty();
    }

    @Override
    public double weight() {
      return 0.02;
    }

    @Override
    public List<Site> sitesIn(AsBuilt job) {
      List<Site> sites = new ArrayList<>();
      for (Line line : Places.withRun(job.network())) {
        Narrowing.toSizeBelow(line, job.facts().sizeBelow())
            .ifPresent(
                narrowing ->
                    sites.add(
                        new Site(
                            CauseId.at(name(), line.name().value()),
                            (size, altered) -> altered.narrow(line.name(), narrowing))));
      }
      return sites;
    }
  }
}
