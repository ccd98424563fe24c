package rillwright.solver.study.diagnosis.cause.kind;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Network;
import rillwright.solver.network.Skimmer;
import rillwright.solver.study.diagnosis.cause.CauseId;
import rillwright.solver.study.diagnosis.cause.CauseKind;
import rillwright.solver.study.diagnosis.cause.Quantity;
import rillwright.solver.study.diagnosis.cause.Site;
import rillwright.solver.study.diagnosis.cause.SizeRange;
import rillwright.solver.study.diagnosis.job.AsBuilt;

/** A pond that stands lower over its skimmer's sill. */
record PondLow() implements CauseKind {

  @Override
  public String name() {
    return "pond low";
  }

  @Override
  public Quantity quantity() {
    return Quantity.share("how far it is down, as a share of its depth over the skimmer's sill");
  }

  @Override
  public Optional<SizeRange> sizes() {
    return Optional.of(SizeRange.even(0.1, 0.95));
  }

  @Override
  public double weight() {
    return 0.04;
  }

  @Override
  public List<Site> sitesIn(AsBuilt job) {
    List<Site> sites = new ArrayList<>();
    for (Basin basin : job.network().points(Basin.class)) {
      OptionalDouble sill = lowestSillM(job.network(), basin);
      if (sill.isPresent() && sill.getAsDouble() < basin.levelM()) {
        double depth = basin.levelM() - sill.getAsDouble();
        sites.add(
            new Site(
                CauseId.at(name(), basin.name().value()),
                (size, altered) ->
                    altered.changePoint(
                        Basin.class, basin.name(), b -> b.withLevel(b.levelM() - size * depth))));
      }
    }
    return sites;
  }

  private static OptionalDouble lowestSillM(Network network, Basin basin) {
    return network.skimmersOf(basin.name()).stream().mapToDouble(Skimmer::sillM).min();
  }
}
