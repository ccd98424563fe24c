package rillwright.cli.study.odds;

import java.util.List;
import java.util.Optional;
import rillwright.cli.file.DrawnNetworks;
import rillwright.cli.file.Project;
import rillwright.cli.file.UncertainQuantities;
import rillwright.cli.file.UncertainQuantities.Named;
import rillwright.cli.study.Effort;
import rillwright.cli.study.Job;
import rillwright.cli.study.PumpsChosen;
import rillwright.cli.study.Request;
import rillwright.cli.study.RunningFigures;
import rillwright.cli.study.odds.OddsAnswer.Unknown;
import rillwright.solver.progress.Progress;
import rillwright.solver.steady.NoBalance;
import rillwright.solver.steady.SteadyStateFinder;
import rillwright.solver.study.uncertainty.Odds;
import rillwright.solver.study.uncertainty.OddsFinder;
import rillwright.solver.study.uncertainty.SamplingPlan;

/**
 * What is the chance that each fall gets what it wants, given what is not known exactly?
 *
 * @param plan how to sample it
 */
public record OddsRequest(SamplingPlan plan) implements Request<OddsAnswer> {
  /** The fewest samples that say anything. */
  public static final int LEAST_SAMPLES = 100;

  /** The most that are drawn. */
  public static final int MOST_SAMPLES = 1_000_000;

  private static final int USUAL_SAMPLES = 10_000;
  private static final long USUAL_SEED = 1;

  /** Ten thousand samples on all processors. */
  public static OddsRequest usual() {
    return new OddsRequest(
        new SamplingPlan(USUAL_SAMPLES, USUAL_SEED, Runtime.getRuntime().availableProcessors()));
  }

  @Override
  public OddsAnswer answer(Project project, Progress progress) {
    PumpsChosen.require(project.network());
    UncertainQuantities quantities = new UncertainQuantities(project);
    List<Named> named = quantities.inTheNetwork();
    UncertainProject uncertain =
        new UncertainProject(
            new DrawnNetworks(project, named.stream().map(Named::quantity).toList()), named);
    long start = System.nanoTime();
    Odds odds = OddsFinder.find(project.network(), uncertain, plan, progress);
    Effort effort = Effort.since(start, plan.samples());
    return new OddsAnswer(
        Job.of(project),
        project.network(),
        unknowns(named),
        unknowns(quantities.elsewhere()),
        odds,
        takes(project),
        odds.contradiction().flatMap(uncertain::whatIsWrongWith),
        effort);
  }

  private static Optional<RunningFigures> takes(Project project) {
    try {
      return Optional.of(
          RunningFigures.of(SteadyStateFinder.find(project.network()), project.running()));
    } catch (NoBalance none) {
      return Optional.empty();
    }
  }

  private static List<Unknown> unknowns(List<Named> quantities) {
    return quantities.stream()
        .map(
            named ->
                new Unknown(
                    named.address(), named.quantity().what(), named.quantity().written().text()))
        .toList();
  }
}
