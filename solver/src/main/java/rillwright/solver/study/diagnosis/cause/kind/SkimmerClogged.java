package rillwright.solver.study.diagnosis.cause.kind;

import java.util.List;
import java.util.Optional;
import rillwright.solver.network.Line;
import rillwright.solver.network.Skimmer;
import rillwright.solver.study.diagnosis.cause.CauseId;
import rillwright.solver.study.diagnosis.cause.CauseKind;
import rillwright.solver.study.diagnosis.cause.Effect;
import rillwright.solver.study.diagnosis.cause.Quantity;
import rillwright.solver.study.diagnosis.cause.Site;
import rillwright.solver.study.diagnosis.cause.SizeRange;
import rillwright.solver.study.diagnosis.job.AsBuilt;
import rillwright.solver.study.diagnosis.job.PartPlace;

/** Leaves at a skimmer's mouth: it passes less than the pump would draw. */
record SkimmerClogged() implements CauseKind {

  @Override
  public String name() {
    return "skimmer clogged";
  }

  @Override
  public Quantity quantity() {
    return Quantity.ratio("what the mouth still passes, as a share of the pump's flow as built");
  }

  @Override
  public Optional<SizeRange> sizes() {
    return Optional.of(SizeRange.even(0.4, 1.3));
  }

  @Override
  public double weight() {
    return 0.10;
  }

  @Override
  public List<Site> sitesIn(AsBuilt job) {
    return Places.ofParts(job.network(), Skimmer.class::isInstance).stream()
        .map(place -> new Site(CauseId.at(name(), place), effect(job, place)))
        .toList();
  }

  private static Effect effect(AsBuilt job, PartPlace place) {
    double pumpFlow = job.pumpFlowM3PerS(place.line());
    return (size, altered) ->
        altered.changePart(
            place, Skimmer.class, skimmer -> passing(altered, place, skimmer, size * pumpFlow));
  }

  /** The mouth clogged until it passes a flow freely; never less clogged than it was. */
  private static Skimmer passing(
      rillwright.solver.study.diagnosis.job.Alteration job,
      PartPlace place,
      Skimmer skimmer,
      double flowM3PerS) {
    Line line = job.asBuilt().line(place.line());
    double clean = skimmer.withClogged(0).law(job.asBuilt().settingOf(line)).freeFlowM3PerS();
    double clogged = clean > 0 ? 1 - flowM3PerS / clean : 1;
    return skimmer.withClogged(Math.max(skimmer.clogged(), clogged));
  }
}
