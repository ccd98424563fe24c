package rillwright.solver.study.uncertainty;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import rillwright.solver.balance.SearchFailed;
import rillwright.solver.network.Network;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;
import rillwright.solver.progress.Progress;
import rillwright.solver.steady.NoBalance;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.steady.SteadyStateFinder;
import rillwright.solver.study.uncertainty.Odds.Driver;
import rillwright.solver.study.uncertainty.Odds.FallOdds;
import rillwright.solver.study.uncertainty.Odds.FlowSpread;
import rillwright.solver.study.uncertainty.Odds.Tally;
import rillwright.solver.study.uncertainty.SampleOutcome.Ending;

/** Finds the odds of a network that is not known exactly, by balancing many samples of it. */
public final class OddsFinder {
  private final UncertainNetwork uncertain;
  private final SamplingPlan plan;
  private final LatinHypercube hypercube;

  private OddsFinder(UncertainNetwork uncertain, SamplingPlan plan) {
    this.uncertain = uncertain;
    this.plan = plan;
    this.hypercube = LatinHypercube.draw(uncertain.unknowns().size(), plan.samples(), plan.seed());
  }

  /**
   * The odds of a network.
   *
   * @param middle the network with the middle of every quantity: it names the falls and their
   *     targets
   * @param uncertain the same as a function of what is not known
   * @param progress receives how many samples are worked out
   * @throws rillwright.solver.progress.Stopped if it is stopped
   */
  public static Odds find(
      Network middle, UncertainNetwork uncertain, SamplingPlan plan, Progress progress) {
    return new OddsFinder(uncertain, plan).find(middle, progress);
  }

  private Odds find(Network middle, Progress progress) {
    List<Point> falls = middle.waysOut();
    List<PointName> names = falls.stream().map(Point::name).toList();
    Optional<SteadyState> like = stateOf(middle);
    List<SampleOutcome> outcomes =
        SampleRun.of(
            plan.samples(),
            plan.threads(),
            sample -> SampleOutcome.of(uncertain.with(values(sample)), like, names),
            progress);
    int[] balanced =
        IntStream.range(0, outcomes.size())
            .filter(sample -> outcomes.get(sample).ending().isBalanced())
            .toArray();
    List<FallOdds> odds = new ArrayList<>();
    List<double[]> flows = new ArrayList<>();
    for (int fall = 0; fall < falls.size(); fall++) {
      int index = fall;
      double[] ofFall =
          Arrays.stream(balanced)
              .mapToDouble(sample -> outcomes.get(sample).flowsM3PerS().get(index))
              .toArray();
      flows.add(ofFall);
      boolean targeted = falls.get(fall).targetM3PerS().isPresent();
      odds.add(
          new FallOdds(
              names.get(fall),
              chance(targeted, outcomes, outcome -> outcome.served().get(index)),
              spread(ofFall)));
    }
    return new Odds(
        plan,
        odds,
        chance(
            falls.stream().anyMatch(fall -> fall.targetM3PerS().isPresent()),
            outcomes,
            outcome -> !outcome.served().contains(false)),
        SampleRun.of(
            uncertain.unknowns().size(),
            plan.threads(),
            unknown -> driver(unknown, names, balanced, flows),
            Progress.UNSEEN),
        tally(outcomes),
        IntStream.range(0, outcomes.size())
            .filter(sample -> outcomes.get(sample).ending() == Ending.CONTRADICTION)
            .mapToObj(this::values)
            .findFirst());
  }

  /** Where the search for each sample's balance begins: the same for all, whoever comes first. */
  private static Optional<SteadyState> stateOf(Network middle) {
    try {
      return Optional.of(SteadyStateFinder.find(middle));
    } catch (NoBalance | SearchFailed none) {
      return Optional.empty();
    }
  }

  private double value(int unknown, int sample) {
    return uncertain.unknowns().get(unknown).quantile(hypercube.chance(unknown, sample));
  }

  private List<Double> values(int sample) {
    List<Double> values = new ArrayList<>();
    for (int unknown = 0; unknown < uncertain.unknowns().size(); unknown++) {
      values.add(value(unknown, sample));
    }
    return values;
  }

  /** The share that get their target of all samples that make sense. */
  private static OptionalDouble chance(
      boolean targeted, List<SampleOutcome> outcomes, Predicate<SampleOutcome> getsIt) {
    if (!targeted) {
      return OptionalDouble.empty();
    }
    int sound = 0;
    int served = 0;
    for (SampleOutcome outcome : outcomes) {
      sound += outcome.ending() == Ending.CONTRADICTION ? 0 : 1;
      served += outcome.ending().isBalanced() && getsIt.test(outcome) ? 1 : 0;
    }
    return sound == 0 ? OptionalDouble.empty() : OptionalDouble.of((double) served / sound);
  }

  private static Optional<FlowSpread> spread(double[] flows) {
    if (flows.length == 0) {
      return Optional.empty();
    }
    Percentiles percentiles = new Percentiles(flows);
    return Optional.of(
        new FlowSpread(
            percentiles.at(0.05),
            percentiles.at(0.50),
            percentiles.at(0.95),
            IntStream.rangeClosed(0, 100).mapToObj(i -> percentiles.at(i / 100.0)).toList()));
  }

  private Driver driver(int unknown, List<PointName> names, int[] balanced, List<double[]> flows) {
    double[] values =
        Arrays.stream(balanced).mapToDouble(sample -> value(unknown, sample)).toArray();
    int[] order = MainEffect.order(values);
    Map<PointName, Double> ofFall = new LinkedHashMap<>();
    double explainedSum = 0;
    double varianceSum = 0;
    for (int fall = 0; fall < names.size(); fall++) {
      double variance = MainEffect.variance(flows.get(fall));
      double explained =
          variance > 0 ? MainEffect.explainedVariance(order, values, flows.get(fall)) : 0;
      ofFall.put(names.get(fall), variance > 0 ? explained / variance : 0);
      explainedSum += explained;
      varianceSum += variance;
    }
    return new Driver(varianceSum > 0 ? explainedSum / varianceSum : 0, ofFall);
  }

  private static Tally tally(List<SampleOutcome> outcomes) {
    return new Tally(
        count(outcomes, Ending.STARVED),
        count(outcomes, Ending.NO_BALANCE),
        count(outcomes, Ending.NOT_FOUND),
        count(outcomes, Ending.CONTRADICTION));
  }

  private static int count(List<SampleOutcome> outcomes, Ending ending) {
    return (int) outcomes.stream().filter(outcome -> outcome.ending() == ending).count();
  }
}
