package rillwright.solver.study.diagnosis.cause.kind;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rillwright.solver.law.filter.CloggedLaw;
import rillwright.solver.network.Filter;
import rillwright.solver.network.Line;
import rillwright.solver.network.Loss;
import rillwright.solver.network.Network;
import rillwright.solver.network.Part;
import rillwright.solver.study.diagnosis.cause.CauseId;
import rillwright.solver.study.diagnosis.cause.CauseKind;
import rillwright.solver.study.diagnosis.cause.Effect;
import rillwright.solver.study.diagnosis.cause.Quantity;
import rillwright.solver.study.diagnosis.cause.Site;
import rillwright.solver.study.diagnosis.cause.SizeRange;
import rillwright.solver.study.diagnosis.job.AsBuilt;
import rillwright.solver.study.diagnosis.job.Look;
import rillwright.solver.study.diagnosis.job.PartPlace;

/** A net or filter of which a share is clogged. */
record CloggedShare(String name, SizeRange range, double weight, Where where) implements CauseKind {

  /** Whether it can sit at a part. */
  interface Where {
    boolean holds(Network network, Line line, int index);
  }

  static CloggedShare net() {
    return new CloggedShare(
        "net clogged",
        SizeRange.even(0.05, 0.97),
        0.12,
        (network, line, index) ->
            isNet(line.parts().get(index))
                && Places.betweenSkimmerAndChamber(network, line, index));
  }

  private static boolean isNet(Part part) {
    return part instanceof Filter || part instanceof Loss;
  }

  /** Whether a loss stands where a net does. */
  static boolean isNet(Network network, PartPlace place) {
    Line line = network.line(place.line());
    return isNet(line.parts().get(place.index()))
        && Places.betweenSkimmerAndChamber(network, line, place.index());
  }

  static CloggedShare filter() {
    return new CloggedShare(
        "filter clogged",
        SizeRange.even(0.05, 0.93),
        0.08,
        (network, line, index) ->
            line.parts().get(index) instanceof Filter && Places.afterPump(network, line, index));
  }

  @Override
  public Quantity quantity() {
    return Quantity.share("share of it that is clogged");
  }

  @Override
  public Optional<SizeRange> sizes() {
    return Optional.of(range);
  }

  @Override
  public List<Site> sitesIn(AsBuilt job) {
    Network network = job.network();
    List<Site> sites = new ArrayList<>();
    for (PartPlace place :
        PartPlace.list(network, (line, index) -> where.holds(network, line, index))) {
      sites.add(new Site(CauseId.at(name, place), effect(network, place)));
    }
    return sites;
  }

  private static Effect effect(Network network, PartPlace place) {
    Look look = isNet(network, place) ? Look.NET : Look.FILTER;
    String line = place.line().value();
    return (share, job) -> {
      job.show(look, line, share);
      if (Places.part(network, place) instanceof Filter) {
        job.changePart(place, Filter.class, filter -> filter.withClogged(share));
      } else {
        job.changePart(
            place, Loss.class, loss -> loss.withLaw(new CloggedLaw(loss.law(), 1 - share)));
      }
    };
  }
}
