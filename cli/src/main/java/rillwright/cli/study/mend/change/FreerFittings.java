package rillwright.cli.study.mend.change;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import rillwright.cli.catalogue.Catalogue;
import rillwright.cli.catalogue.CheckValveRow;
import rillwright.cli.catalogue.FittingLoss;
import rillwright.cli.study.mend.site.Site;
import rillwright.solver.law.Bore;
import rillwright.solver.network.CheckValve;
import rillwright.solver.network.Fitting;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Placed;

/**
 * Fittings and check valves that take less, in place of those of the catalogue that stand there.
 */
public final class FreerFittings implements Source {
  /** What does the same with less loss. */
  private static final Map<String, String> FREER =
      Map.of(
          "elbow 90", "sweep 90",
          "mitre 90", "sweep 90",
          "barbed elbow", "sweep 90",
          "elbow 90 threaded", "long elbow 90 threaded",
          "tee branch", "wye 45",
          "globe valve open", "knife gate open",
          "diaphragm valve open", "knife gate open",
          "strainer basket dirty", "strainer basket",
          "strainer wye dirty", "strainer wye");

  @Override
  public List<List<Candidate>> candidates(Site site) {
    List<List<Candidate>> all = new ArrayList<>();
    List<Step> steps = new ArrayList<>();
    for (Line line : site.lines()) {
      steps.addAll(steps(site, line));
    }
    steps.forEach(step -> all.add(List.of(Candidate.of(step))));
    for (Set<LineName> way : site.ways().values()) {
      List<Step> ofWay =
          steps.stream().filter(step -> way.contains(new LineName(step.at()))).toList();
      if (ofWay.size() > 1) {
        all.add(List.of(new Candidate(ofWay)));
      }
    }
    return all.stream().distinct().toList();
  }

  private static List<Step> steps(Site site, Line line) {
    List<Step> steps = new ArrayList<>();
    for (Placed<Fitting> placed : line.placed(Fitting.class)) {
      Fitting fitting = placed.part();
      Optional<FittingLoss> freer =
          Optional.ofNullable(FREER.get(fitting.label()))
              .flatMap(type -> Catalogue.standard().findFitting(type, fitting.loss().bore()))
              .filter(loss -> loss.lossCoefficient() < fitting.loss().kForward());
      freer.ifPresent(
          loss ->
              steps.add(
                  new Step(
                      Action.FREER_FITTING,
                      line.name().value(),
                      fitting.label(),
                      fitting.count(),
                      loss.type(),
                      List.of(Addresses.ofPart(placed, "type", loss.type())),
                      Bought.fittings(loss.type(), fitting.count(), line, site.project()))));
    }
    for (Placed<CheckValve> placed : line.placed(CheckValve.class)) {
      checkValve(site, placed).ifPresent(steps::add);
    }
    return steps;
  }

  private static Optional<Step> checkValve(Site site, Placed<CheckValve> placed) {
    CheckValve valve = placed.part();
    String type = valve.label().replace(" " + valve.kind(), "");
    OptionalDouble taken = site.state().part(placed).headLossM();
    if (Catalogue.standard().findCheckValve(type, valve.inside()).isEmpty() || taken.isEmpty()) {
      return Optional.empty();
    }
    double flow = site.state().part(placed).flowM3PerS();
    Optional<CheckValveRow> best = Optional.empty();
    double least = taken.getAsDouble();
    for (String other : Catalogue.standard().checkValveTypes()) {
      CheckValveRow row = Catalogue.standard().findCheckValve(other, valve.inside()).orElseThrow();
      double loss = lossM(row, valve.inside(), flow);
      if (loss < least) {
        least = loss;
        best = Optional.of(row);
      }
    }
    return best.map(
        row ->
            new Step(
                Action.FREER_FITTING,
                placed.line().name().value(),
                valve.label(),
                1,
                row.type() + " " + valve.kind(),
                List.of(Addresses.ofPart(placed, "type", row.type())),
                Bought.fittings(
                    row.type() + " " + valve.kind(), 1, placed.line(), site.project())));
  }

  private static double lossM(CheckValveRow row, Bore bore, double flowM3PerS) {
    return row.crackingHeadM() + row.lossCoefficient() * bore.velocityHeadAt(flowM3PerS);
  }
}
