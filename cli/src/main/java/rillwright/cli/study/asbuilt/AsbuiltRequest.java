package rillwright.cli.study.asbuilt;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import rillwright.cli.file.DrawnNetworks;
import rillwright.cli.file.Project;
import rillwright.cli.file.UncertainQuantities;
import rillwright.cli.file.UncertainQuantities.Named;
import rillwright.cli.file.quantity.Quantity.Choice;
import rillwright.cli.file.visit.Visit;
import rillwright.cli.file.visit.VisitReader;
import rillwright.cli.study.Job;
import rillwright.cli.study.PumpsChosen;
import rillwright.cli.study.Request;
import rillwright.cli.study.asbuilt.AsbuiltAnswer.Compared;
import rillwright.cli.study.asbuilt.AsbuiltAnswer.FallFlow;
import rillwright.cli.study.asbuilt.AsbuiltAnswer.Quantity;
import rillwright.cli.study.asbuilt.AsbuiltAnswer.SizeChance;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;
import rillwright.solver.progress.Progress;
import rillwright.solver.study.diagnosis.evidence.Scope;
import rillwright.solver.study.diagnosis.job.AsBuilt;
import rillwright.solver.study.diagnosis.reading.Measurand;
import rillwright.solver.study.diagnosis.reading.Reading;
import rillwright.solver.study.diagnosis.reading.Sight;
import rillwright.solver.study.diagnosis.reading.Tolerance;
import rillwright.solver.study.uncertainty.Distribution;
import rillwright.solver.study.uncertainty.posterior.ChiSquare;
import rillwright.solver.study.uncertainty.posterior.Evidence;
import rillwright.solver.study.uncertainty.posterior.Measured;
import rillwright.solver.study.uncertainty.posterior.Posterior;
import rillwright.solver.study.uncertainty.posterior.Posterior.Band;
import rillwright.solver.study.uncertainty.posterior.PosteriorFinder;
import rillwright.solver.study.uncertainty.posterior.PosteriorFinder.Learnt;
import rillwright.solver.study.uncertainty.posterior.Seen;

/**
 * What do readings say of what is not known exactly, assuming that nothing is wrong? A reading has
 * a normal error of half its tolerance at what is predicted, and one per cent of the value as
 * written for the model, as in {@code weak}; that readings are wrong altogether is not supposed,
 * but shown. Looks count where they say something of what is not known.
 *
 * @param visit what was read; empty for what the project says of it
 */
public record AsbuiltRequest(Optional<Visit> visit) implements Request<AsbuiltAnswer> {
  private static final long SEED = 1;
  private static final double SEEN_OR_NOT = 0.5;
  private static final double[] BAND = {0.05, 0.5, 0.95};

  /** By the readings of the project. */
  public static AsbuiltRequest usual() {
    return new AsbuiltRequest(Optional.empty());
  }

  /**
   * {@inheritDoc}
   *
   * @throws NothingFits if nothing within the ranges gives readings where they were taken
   */
  @Override
  public AsbuiltAnswer answer(Project project, Progress progress) {
    PumpsChosen.require(project.network());
    AsBuilt middle = AsBuilt.of(project.network());
    List<Reading> shown = visit.orElseGet(() -> VisitReader.inProject(project)).readings();
    List<Reading> all =
        shown.stream().filter(it -> Telling.isOf(it.what(), project.network())).toList();
    Scope scope = Scope.of(middle, all.stream().map(Reading::what).toList());
    List<Reading> telling =
        all.stream().filter(reading -> scope.asBuilt(reading.what()).isPresent()).toList();
    List<Named> named = new UncertainQuantities(project).inTheNetwork();
    List<PointName> ways = project.network().waysOut().stream().map(Point::name).toList();
    DrawnJob model =
        new DrawnJob(
            project.network(),
            new DrawnNetworks(project, named.stream().map(Named::quantity).toList()),
            telling.stream().map(Reading::what).toList(),
            ways);
    List<Distribution> unknowns = named.stream().map(one -> one.quantity().distribution()).toList();
    Learnt learnt =
        PosteriorFinder.find(
            unknowns,
            model,
            telling.stream().map(it -> evidence(it, scope)).toList(),
            SEED,
            progress);
    Posterior after = learnt.after().orElseThrow(NothingFits::new);
    List<Quantity> quantities = new ArrayList<>();
    for (int i = 0; i < named.size(); i++) {
      quantities.add(
          new Quantity(
              named.get(i), prior(unknowns.get(i)), after.ofValue(i), chances(named, i, after)));
    }
    List<FallFlow> falls = new ArrayList<>();
    for (int i = 0; i < ways.size(); i++) {
      int piece = telling.size() + i;
      falls.add(
          new FallFlow(ways.get(i), learnt.before().ofOutcome(piece), after.ofOutcome(piece)));
    }
    return new AsbuiltAnswer(
        Job.of(project),
        project.network(),
        quantities,
        falls,
        all.stream().map(reading -> compared(reading, telling, after, scope)).toList(),
        after.chiSquare(),
        ChiSquare.exceeds(
            after.chiSquare(),
            (int) telling.stream().filter(it -> !(it.what() instanceof Sight)).count()),
        shown.stream().filter(it -> !all.contains(it)).toList(),
        new NextToRead(scope, model, ways, after).afterThose(all),
        LearntPump.listIn(
            project,
            named.stream().map(Named::address).toList(),
            after,
            new PumpReadings(scope, model, after, telling)));
  }

  private static List<SizeChance> chances(List<Named> named, int number, Posterior after) {
    List<SizeChance> chances = new ArrayList<>();
    if (named.get(number).quantity().quantity().spread() instanceof Choice choice) {
      int sizes = choice.values().size();
      for (int i = 0; i < sizes; i++) {
        double bore = choice.values().get(i);
        double share = after.mean(draw -> draw.values().get(number) == bore ? 1 : 0);
        chances.add(new SizeChance(choice.labels().get(i), 1.0 / sizes, share));
      }
    }
    return chances;
  }

  private static Band prior(Distribution of) {
    return new Band(of.quantile(BAND[0]), of.quantile(BAND[1]), of.quantile(BAND[2]));
  }

  static Evidence evidence(Reading reading, Scope scope) {
    if (reading.what() instanceof Sight) {
      return new Seen(reading.value() > SEEN_OR_NOT);
    }
    return new Measured(
        reading.value(), deviationOf(reading.what(), reading.tolerance(), scope)::applyAsDouble);
  }

  /** Standard deviation of a reading by what is predicted. */
  static ToDoubleFunction<Double> deviationOf(Measurand what, Tolerance tolerance, Scope scope) {
    double fromZero = scope.asBuilt(what).orElse(0) - what.zero(scope.job());
    return predicted -> tolerance.deviationAt(predicted, fromZero);
  }

  private static Compared compared(
      Reading reading, List<Reading> telling, Posterior after, Scope scope) {
    int number = telling.indexOf(reading);
    if (number < 0) {
      return new Compared(reading, OptionalDouble.empty(), OptionalDouble.empty());
    }
    double expected = after.mean(draw -> draw.outcome().get(number));
    return new Compared(
        reading,
        OptionalDouble.of(expected),
        OptionalDouble.of(evidence(reading, scope).deviations(expected)));
  }
}
