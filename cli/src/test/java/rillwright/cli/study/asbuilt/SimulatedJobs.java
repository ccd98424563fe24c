package rillwright.cli.study.asbuilt;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import rillwright.cli.file.DrawnNetworks;
import rillwright.cli.file.Project;
import rillwright.cli.file.ProjectReader;
import rillwright.cli.file.UncertainQuantities;
import rillwright.cli.file.UncertainQuantities.Named;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.fault.Place;
import rillwright.cli.file.visit.PlacedReading;
import rillwright.cli.file.visit.Visit;
import rillwright.solver.network.Network;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;
import rillwright.solver.study.diagnosis.job.Alteration;
import rillwright.solver.study.diagnosis.job.AsBuilt;
import rillwright.solver.study.diagnosis.reading.Measurand;
import rillwright.solver.study.diagnosis.reading.MeasurandList;
import rillwright.solver.study.diagnosis.reading.Measurands;
import rillwright.solver.study.diagnosis.reading.Meter;
import rillwright.solver.study.diagnosis.reading.Observed;
import rillwright.solver.study.diagnosis.reading.Reading;
import rillwright.solver.study.diagnosis.reading.Sight;
import rillwright.solver.study.diagnosis.reading.Tolerance;
import rillwright.solver.study.diagnosis.reading.When;

/**
 * Jobs made up to see whether what is learnt is true: some of an example's values become ranges, a
 * job within them is drawn, solved, and read with normal errors. All ranges are invented.
 */
final class SimulatedJobs {
  /** An example and what may not be known of it. */
  private record Kind(String file, List<String> ranges) {}

  private static final List<Kind> KINDS =
      List.of(
          new Kind(
              "old-falls/falls.yaml",
              List.of(
                  "lines.intake.skimmer.clogged=0 % .. 90 %",
                  "lines.supply.pipe.roughness=0.002 mm .. 1 mm",
                  "lines.supply.check valve.k=1 .. 12",
                  "lines.supply.pump.speed=80 % .. 100 %",
                  "lines.low.valve.open=35 % .. 100 %",
                  "lines.low.fitting 2.k=0.9 .. 6",
                  "lines.high.run.length=44 ft ± 12 ft",
                  "lines.high.fitting 2.k=3 .. 12",
                  "lines.high.pipe.roughness=0.002 mm .. 1 mm",
                  "points.high fall.crest=60 in ± 3 in",
                  "points.low fall.crest=36 in ± 3 in",
                  "points.pond.level=0 in ± 1 in")),
          new Kind(
              "long-stream/stream.yaml",
              List.of(
                  "lines.intake.skimmer.clogged=0 % .. 80 %",
                  "lines.supply.pipe.roughness=0.002 mm .. 2 mm",
                  "lines.supply.pipe.deposit=0 mm .. 8 mm",
                  "lines.supply.pump.speed=75 % .. 100 %",
                  "lines.supply.check valve.k=1 .. 25",
                  "lines.supply.valve.k=0.1 .. 20",
                  "lines.supply.run.length=36 m ± 8 m",
                  "lines.supply.fitting.k=0.4 .. 3",
                  "points.spill box.crest=2.40 m ± 0.1 m",
                  "lines.supply.entrance.k=0.5 .. 4")),
          new Kind(
              "weak-fall/fall.yaml",
              List.of(
                  "lines.intake.skimmer.clogged=0 % .. 70 %",
                  "lines.intake.filter.clogged=0 % .. 70 %",
                  "lines.supply.entrance.k=1 .. 15",
                  "lines.supply.pump.speed=80 % .. 100 %",
                  "lines.supply.check valve.k=1 .. 20",
                  "lines.supply.valve.open=40 % .. 100 %",
                  "lines.supply.run.length=84 ft ± 20 ft",
                  "lines.supply.pipe.deposit=0 mm .. 5 mm",
                  "points.fall.crest=6 ft ± 3 in",
                  "points.pond.level=0 in ± 1 in")));

  private SimulatedJobs() {}

  /**
   * A job.
   *
   * @param project with ranges
   * @param truth of each, in base units
   * @param visit what was read
   * @param flowsM3PerS what runs in truth over each fall
   */
  record Job(Project project, List<Double> truth, Visit visit, List<Double> flowsM3PerS) {}

  /** The job of a seed, with so many unknowns. */
  static Job of(long seed, int unknowns) {
    Random dice = new Random(seed);
    while (true) {
      Optional<Job> job = drawn(dice, unknowns);
      if (job.isPresent()) {
        return job.get();
      }
    }
  }

  private static Optional<Job> drawn(Random dice, int unknowns) {
    Kind kind = KINDS.get(dice.nextInt(KINDS.size()));
    Project whole = ProjectReader.read(Path.of("../examples", kind.file()), List.of());
    List<String> ranges = new ArrayList<>(kind.ranges());
    Collections.shuffle(ranges, dice);
    List<String> changes = new ArrayList<>(exact(whole));
    changes.addAll(ranges.subList(0, Math.min(unknowns, ranges.size())));
    Project project = whole.with(changes);
    List<Named> named = new UncertainQuantities(project).inTheNetwork();
    List<Double> truth =
        named.stream()
            .map(one -> one.quantity().distribution().quantile(1e-9 + dice.nextDouble()))
            .toList();
    try {
      Network network =
          new DrawnNetworks(project, named.stream().map(Named::quantity).toList()).with(truth);
      return Observed.of(new Alteration(network), new When.Running())
          .map(
              running ->
                  new Job(
                      project,
                      truth,
                      visit(project, network, dice),
                      network.waysOut().stream()
                          .map(Point::name)
                          .map(running::flowM3PerS)
                          .toList()));
    } catch (InvalidInput contradiction) {
      return Optional.empty();
    }
  }

  /** Changes that make exact what an example has as ranges. */
  private static List<String> exact(Project project) {
    return new UncertainQuantities(project)
        .inTheNetwork().stream()
            .map(
                one ->
                    one.address()
                        + "="
                        + one.quantity().unit().value(one.quantity().quantity().middle(), 1e-6))
            .toList();
  }

  /**
   * The flow of each fall and three to five other readings, as closely as they are usually read.
   */
  private static Visit visit(Project project, Network truth, Random dice) {
    List<Measurand> all = new ArrayList<>(MeasurandList.of(AsBuilt.of(project.network())));
    all.removeIf(what -> what instanceof Sight || what instanceof Meter);
    List<PointName> falls = truth.waysOut().stream().map(Point::name).toList();
    Collections.shuffle(all, dice);
    List<Measurand> chosen =
        new ArrayList<>(all.stream().filter(it -> isFlowAt(it, falls)).toList());
    all.removeAll(chosen);
    chosen.addAll(all.subList(0, Math.min(all.size(), 3 + dice.nextInt(3))));
    List<PlacedReading> placed = new ArrayList<>();
    for (Measurand what : chosen) {
      OptionalDouble value =
          Observed.of(new Alteration(truth), what.when())
              .map(what::valueIn)
              .orElse(OptionalDouble.empty());
      if (value.isPresent()) {
        Tolerance tolerance = what.usualTolerance();
        double error = dice.nextGaussian() * tolerance.instrumentDeviationAt(value.getAsDouble());
        placed.add(
            new PlacedReading(
                new Reading(what, value.getAsDouble() + error, tolerance),
                Place.whole("simulated")));
      }
    }
    return new Visit(placed, List.of());
  }

  private static boolean isFlowAt(Measurand what, List<PointName> falls) {
    return what instanceof Measurands.Flow flow && falls.contains(flow.point());
  }
}
