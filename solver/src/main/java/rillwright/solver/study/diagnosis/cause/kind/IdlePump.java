package rillwright.solver.study.diagnosis.cause.kind;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rillwright.solver.law.minor.VelocityHeadLoss;
import rillwright.solver.network.CheckValve;
import rillwright.solver.network.Line;
import rillwright.solver.network.Pump;
import rillwright.solver.study.diagnosis.cause.CauseId;
import rillwright.solver.study.diagnosis.cause.CauseKind;
import rillwright.solver.study.diagnosis.cause.Quantity;
import rillwright.solver.study.diagnosis.cause.Site;
import rillwright.solver.study.diagnosis.cause.SizeRange;
import rillwright.solver.study.diagnosis.job.AsBuilt;
import rillwright.solver.study.diagnosis.job.PartPlace;

/** Water that runs back through a pump that stands still, with no check valve to hold it. */
record IdlePump() implements CauseKind {

  @Override
  public String name() {
    return "runs back through an idle pump";
  }

  @Override
  public Quantity quantity() {
    return Quantity.ratio("loss coefficient K of the pump that stands still");
  }

  @Override
  public Optional<SizeRange> sizes() {
    return Optional.of(SizeRange.log(5, 60));
  }

  @Override
  public double weight() {
    return 0.01;
  }

  @Override
  public List<Site> sitesIn(AsBuilt job) {
    List<Site> sites = new ArrayList<>();
    for (PartPlace place :
        Places.ofParts(
            job.network(), part -> part instanceof Pump pump && pump.set().speed() == 0)) {
      Line line = job.network().line(place.line());
      boolean held = line.has(CheckValve.class);
      if (!held && line.mainBore().isPresent()) {
        var bore = line.mainBore().get();
        sites.add(
            new Site(
                CauseId.at(name(), place),
                (k, altered) ->
                    altered.changePart(
                        place,
                        Pump.class,
                        pump -> pump.runningBack(new VelocityHeadLoss(k, bore)))));
      }
    }
    return sites;
  }
}
