package rillwright.solver.study.diagnosis.cause.kind;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rillwright.solver.law.minor.BackwaterLoss;
import rillwright.solver.network.Fall;
import rillwright.solver.network.Line;
import rillwright.solver.network.Loss;
import rillwright.solver.study.diagnosis.cause.CauseId;
import rillwright.solver.study.diagnosis.cause.CauseKind;
import rillwright.solver.study.diagnosis.cause.Quantity;
import rillwright.solver.study.diagnosis.cause.Site;
import rillwright.solver.study.diagnosis.cause.SizeRange;
import rillwright.solver.study.diagnosis.job.AsBuilt;
import rillwright.solver.study.diagnosis.job.Look;
import rillwright.solver.study.diagnosis.job.PartPlace;

/** Mats in a fall's box that are full: the water stands higher upstream of them. */
record MatsClogged() implements CauseKind {

  @Override
  public String name() {
    return "spill box mats clogged";
  }

  @Override
  public Quantity quantity() {
    return Quantity.length("how much higher the water stands in the fall's box", 10);
  }

  @Override
  public Optional<SizeRange> sizes() {
    return Optional.of(SizeRange.even(0.02, 0.35));
  }

  @Override
  public double weight() {
    return 0.04;
  }

  @Override
  public List<Site> sitesIn(AsBuilt job) {
    List<Site> sites = new ArrayList<>();
    for (Line line : job.network().lines()) {
      if (job.network().point(line.to()) instanceof Fall && !line.parts().isEmpty()) {
        PartPlace last = new PartPlace(line.name(), line.parts().size() - 1);
        sites.add(
            new Site(
                CauseId.at(name(), line.name().value()),
                (head, altered) -> {
                  altered.show(Look.MATS, line.name().value(), head);
                  altered.addAfter(last, new Loss(new BackwaterLoss(head), Optional.empty()));
                }));
      }
    }
    return sites;
  }
}
