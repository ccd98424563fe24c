package rillwright.solver.study.diagnosis.cause.kind;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import rillwright.solver.law.Bore;
import rillwright.solver.law.minor.VelocityHeadLoss;
import rillwright.solver.network.CheckValve;
import rillwright.solver.network.HighPoint;
import rillwright.solver.network.Line;
import rillwright.solver.network.Loss;
import rillwright.solver.network.Network;
import rillwright.solver.network.Part;
import rillwright.solver.network.Placed;
import rillwright.solver.network.Run;
import rillwright.solver.study.diagnosis.cause.CauseId;
import rillwright.solver.study.diagnosis.cause.CauseKind;
import rillwright.solver.study.diagnosis.cause.Quantity;
import rillwright.solver.study.diagnosis.cause.Site;
import rillwright.solver.study.diagnosis.cause.SizeRange;
import rillwright.solver.study.diagnosis.job.AsBuilt;
import rillwright.solver.study.diagnosis.job.PartPlace;

/** A cause that adds a loss coefficient K somewhere in a line. */
record AddedLoss(
    String name, String where, double greatest, double weight, Function<AsBuilt, List<Spot>> spots)
    implements CauseKind {
  static final double GREATEST = 600;

  /** Where K is added, and on which bore. */
  private record Spot(CauseId id, PartPlace place, boolean before, Bore bore) {}

  static AddedLoss intakeCagePacked() {
    String name = "intake cage packed";
    return new AddedLoss(
        name,
        "loss coefficient K added at the pump's inlet",
        GREATEST,
        0.08,
        job -> {
          Network network = job.network();
          List<Spot> spots = new ArrayList<>();
          for (PartPlace place : Places.ofParts(network, Places::isRunningPump)) {
            network
                .line(place.line())
                .mainBore()
                .ifPresent(bore -> spots.add(new Spot(CauseId.at(name, place), place, true, bore)));
          }
          return spots;
        });
  }

  static AddedLoss checkValveStuck() {
    String name = "check valve stuck";
    return new AddedLoss(
        name,
        "loss coefficient K added in it",
        GREATEST,
        0.05,
        job -> atParts(job.network(), name, CheckValve.class::isInstance));
  }

  static AddedLoss hoseKinked() {
    String name = "hose kinked";
    return new AddedLoss(
        name,
        "loss coefficient K added after the last part",
        GREATEST,
        0.03,
        job -> {
          List<Spot> spots = new ArrayList<>();
          for (Line line : Places.withRun(job.network())) {
            if (line.placed(Run.class).stream().noneMatch(run -> isSoft(run, job))) {
              continue;
            }
            PartPlace last = new PartPlace(line.name(), line.parts().size() - 1);
            CauseId id = CauseId.at(name, line.name().value());
            spots.add(new Spot(id, last, false, line.mainBore().orElseThrow()));
          }
          return spots;
        });
  }

  static AddedLoss airAtHighPoint() {
    String name = "air at a high point";
    return new AddedLoss(
        name,
        "loss coefficient K added there",
        100,
        0.02,
        job -> {
          Network network = job.network();
          List<Spot> spots = new ArrayList<>();
          for (PartPlace place : Places.ofParts(network, HighPoint.class::isInstance)) {
            HighPoint point = (HighPoint) Places.part(network, place);
            point
                .pipeBore()
                .or(() -> network.line(place.line()).mainBore())
                .ifPresent(
                    bore -> spots.add(new Spot(CauseId.at(name, place), place, false, bore)));
          }
          return spots;
        });
  }

  private static boolean isSoft(Placed<Run> run, AsBuilt job) {
    return job.facts().isSoft().test(run.part());
  }

  private static List<Spot> atParts(
      Network network, String name, java.util.function.Predicate<Part> kind) {
    return Places.ofParts(network, kind).stream()
        .map(
            place ->
                new Spot(
                    CauseId.at(name, place),
                    place,
                    false,
                    Places.part(network, place).bore().orElseThrow()))
        .toList();
  }

  @Override
  public Quantity quantity() {
    return Quantity.ratio(where);
  }

  @Override
  public Optional<SizeRange> sizes() {
    return Optional.of(SizeRange.log(1, greatest));
  }

  @Override
  public List<Site> sitesIn(AsBuilt job) {
    return spots.apply(job).stream().map(AddedLoss::site).toList();
  }

  private static Site site(Spot spot) {
    return new Site(
        spot.id(),
        (k, job) -> {
          Loss loss = new Loss(new VelocityHeadLoss(k, spot.bore()), Optional.of(spot.bore()));
          if (spot.before()) {
            job.addBefore(spot.place(), loss);
          } else {
            job.addAfter(spot.place(), loss);
          }
        });
  }
}
