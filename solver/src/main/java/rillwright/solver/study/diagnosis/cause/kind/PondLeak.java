package rillwright.solver.study.diagnosis.cause.kind;

import java.util.List;
import java.util.Optional;
import rillwright.solver.network.Basin;
import rillwright.solver.study.diagnosis.cause.CauseId;
import rillwright.solver.study.diagnosis.cause.CauseKind;
import rillwright.solver.study.diagnosis.cause.Effect;
import rillwright.solver.study.diagnosis.cause.PondFall;
import rillwright.solver.study.diagnosis.cause.Quantity;
import rillwright.solver.study.diagnosis.cause.Site;
import rillwright.solver.study.diagnosis.cause.SizeRange;
import rillwright.solver.study.diagnosis.job.Alteration;
import rillwright.solver.study.diagnosis.job.AsBuilt;

/**
 * A pond that leaks itself, running or not, and so stands lower over its skimmer's sill. How fast
 * it falls does not follow from how low it stands: every rate counts, a smaller one more (common
 * practice, no source). Only of the one basin of a job, and where area and evaporation are known:
 * else it reads as a low pond.
 */
record PondLeak() implements CauseKind {
  private static final PondLow LOW = new PondLow();

  @Override
  public String name() {
    return "pond leak";
  }

  @Override
  public Quantity quantity() {
    return LOW.quantity();
  }

  @Override
  public Optional<SizeRange> sizes() {
    return LOW.sizes();
  }

  @Override
  public double weight() {
    return 0.02;
  }

  @Override
  public List<Site> sitesIn(AsBuilt job) {
    List<Basin> basins = job.network().points(Basin.class);
    boolean canBeSeen =
        basins.size() == 1
            && basins.get(0).shape().isPresent()
            && job.facts().evaporationMPerS().isPresent();
    return canBeSeen
        ? LOW.sitesIn(job).stream()
            .map(
                site ->
                    new Site(
                        CauseId.at(name(), site.id().at().orElseThrow()),
                        new Leaking(site.effect())))
            .toList()
        : List.of();
  }

  private record Leaking(Effect low) implements Effect {
    @Override
    public void apply(double size, Alteration job) {
      low.apply(size, job);
    }

    @Override
    public List<PondFall> pondFalls() {
      return PondFall.USUAL;
    }
  }
}
