package rillwright.cli.study.mend.kind;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import rillwright.cli.catalogue.Catalogue;
import rillwright.cli.catalogue.CheckValveRow;
import rillwright.cli.catalogue.FittingLoss;
import rillwright.cli.catalogue.PipeSize;
import rillwright.cli.file.change.AddressBook;
import rillwright.cli.study.mend.change.Action;
import rillwright.cli.study.mend.change.Addresses;
import rillwright.cli.study.mend.change.Bought;
import rillwright.cli.study.mend.change.Candidate;
import rillwright.cli.study.mend.change.Source;
import rillwright.cli.study.mend.change.Step;
import rillwright.cli.study.mend.site.Site;
import rillwright.solver.law.Bore;
import rillwright.solver.network.CheckValve;
import rillwright.solver.network.Fitting;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Placed;
import rillwright.solver.network.Run;
import rillwright.solver.network.Valve;

/**
 * Fittings, valves and check valves that take less, in place of those of the catalogue that stand
 * there; valves as wide as their pipe.
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

  private static final String FREE_VALVE = "ball";

  private static final double MILLIMETRES = 1000;

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
    for (Placed<Valve> placed : line.placed(Valve.class)) {
      largerValve(site, placed).or(() -> freerValve(site, placed)).ifPresent(steps::add);
    }
    for (Placed<CheckValve> placed : line.placed(CheckValve.class)) {
      checkValve(site, placed).ifPresent(steps::add);
    }
    return steps;
  }

  /** As wide as the pipe of its line. */
  private static Optional<Step> largerValve(Site site, Placed<Valve> placed) {
    Line line = placed.line();
    Bore narrow = placed.part().inside();
    Optional<Bore> pipe = line.mainBore().filter(bore -> bore.diameterM() > narrow.diameterM());
    Set<String> written = new AddressBook(site.project().tree()).textByAddress().keySet();
    String inside = Addresses.ofPart(placed, "inside", "0 mm");
    boolean isByBore = written.contains(inside.substring(0, inside.lastIndexOf('=')));
    Optional<PipeSize> size = sizeOf(line);
    if (pipe.isEmpty() || (!isByBore && size.isEmpty())) {
      return Optional.empty();
    }
    String bore = String.format(Locale.ROOT, "%.6g mm", pipe.get().diameterM() * MILLIMETRES);
    return Optional.of(
        new Step(
            Action.LARGER_VALVE,
            line.name().value(),
            placed.part().label(),
            pipe.get().diameterM(),
            isByBore ? "" : size.get().size(),
            List.of(
                isByBore
                    ? Addresses.ofPart(placed, "inside", bore)
                    : Addresses.ofPart(placed, "size", size.get().size())),
            Bought.fittings(placed.part().label(), 1, line, site.project())));
  }

  private static Optional<PipeSize> sizeOf(Line line) {
    return line.placed(Run.class).stream()
        .map(run -> Catalogue.standard().findPipeOfLabel(run.part().label()))
        .flatMap(Optional::stream)
        .findFirst();
  }

  /** Of another type, where one stands wide open and takes more than that. */
  private static Optional<Step> freerValve(Site site, Placed<Valve> placed) {
    Valve valve = placed.part();
    if (valve.loss().opening().orElse(0) < 1) {
      return Optional.empty();
    }
    return Catalogue.standard()
        .findValve(FREE_VALVE, valve.inside())
        .filter(free -> free.lossCoefficientAt(1) < valve.loss().lossCoefficient())
        .map(
            free ->
                new Step(
                    Action.FREER_FITTING,
                    placed.line().name().value(),
                    valve.label(),
                    1,
                    FREE_VALVE + " valve",
                    List.of(Addresses.ofPart(placed, "type", FREE_VALVE)),
                    Bought.fittings(FREE_VALVE + " valve", 1, placed.line(), site.project())));
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
