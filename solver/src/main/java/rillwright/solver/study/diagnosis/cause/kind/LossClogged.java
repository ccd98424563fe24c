package rillwright.solver.study.diagnosis.cause.kind;

import java.util.List;
import java.util.Optional;
import rillwright.solver.law.filter.CloggedLaw;
import rillwright.solver.network.Loss;
import rillwright.solver.study.diagnosis.cause.CauseId;
import rillwright.solver.study.diagnosis.cause.CauseKind;
import rillwright.solver.study.diagnosis.cause.Quantity;
import rillwright.solver.study.diagnosis.cause.Site;
import rillwright.solver.study.diagnosis.cause.SizeRange;
import rillwright.solver.study.diagnosis.job.AsBuilt;
import rillwright.solver.study.diagnosis.job.Look;

/** Dirt or scale in any other part that takes head: a UV lamp's quartz, a heater, a strainer. */
record LossClogged() implements CauseKind {

  @Override
  public String name() {
    return "loss clogged";
  }

  @Override
  public Quantity quantity() {
    return Quantity.ratio("how many times as much head it takes");
  }

  @Override
  public Optional<SizeRange> sizes() {
    return Optional.of(SizeRange.log(1, 40));
  }

  @Override
  public double weight() {
    return 0.03;
  }

  @Override
  public List<Site> sitesIn(AsBuilt job) {
    return Places.ofParts(job.network(), Loss.class::isInstance).stream()
        .filter(place -> !CloggedShare.isNet(job.network(), place))
        .map(
            place ->
                new Site(
                    CauseId.at(name(), place),
                    (times, altered) -> {
                      altered.show(Look.PART, place.line().value(), 1 - 1 / Math.sqrt(times));
                      altered.changePart(place, Loss.class, loss -> dirty(loss, times));
                    }))
        .toList();
  }

  /** All its water through less of its area; of a loss that goes with the square, so many times. */
  private static Loss dirty(Loss loss, double times) {
    return loss.withLaw(new CloggedLaw(loss.law(), 1 / Math.sqrt(times)));
  }
}
