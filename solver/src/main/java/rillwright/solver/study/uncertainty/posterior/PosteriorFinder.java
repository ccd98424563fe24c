package rillwright.solver.study.uncertainty.posterior;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rillwright.solver.progress.Progress;
import rillwright.solver.progress.Steps;
import rillwright.solver.study.uncertainty.DiscreteUniform;
import rillwright.solver.study.uncertainty.Distribution;
import rillwright.solver.study.uncertainty.LatinHypercube;

/**
 * Finds what is known of unknowns once something was read.
 *
 * <p><b>Method.</b> A Latin hypercube of the unknowns is worked out; a stand-in is fitted to it,
 * draws are taken from what the stand-in makes of the readings, these are worked out too and the
 * stand-in fitted anew, until it holds near what was read. The last draws are weighted by the
 * model's likelihood over the stand-in's, so that the answer is the model's, whatever the stand-in
 * misses (importance sampling). Unknowns that are one of some values are taken at each of them in
 * turn, weighted by their evidence.
 */
public final class PosteriorFinder {
  private static final int FIRST = 600;
  private static final int FEWEST = 300;
  private static final int IN_A_ROUND = 250;
  private static final int MOST_ROUNDS = 4;

  /** The stand-in holds when weighted draws are as good as this share of unweighted ones. */
  private static final double HOLDS = 0.6;

  /** In so many ways at most may unknowns be chosen that are one of some values. */
  public static final int MOST_CHOICES = 40;

  private final List<Distribution> unknowns;
  private final Model model;
  private final List<Evidence> evidence;
  private final long seed;
  private final Steps steps;
  private final int first;
  private final int last;

  private PosteriorFinder(
      List<Distribution> unknowns,
      Model model,
      List<Evidence> evidence,
      long seed,
      int choices,
      Progress progress) {
    this.unknowns = unknowns;
    this.model = model;
    this.evidence = evidence;
    this.seed = seed;
    this.first = Math.max(FEWEST, FIRST / choices);
    this.last = Math.max(FEWEST, (unknowns.size() <= 4 ? 3000 : 1000) / choices);
    this.steps = new Steps(progress, choices * (first + MOST_ROUNDS * IN_A_ROUND + last));
  }

  /**
   * What is known.
   *
   * @param unknowns before anything was read, one or more
   * @param model what comes of values
   * @param evidence what was read, in the order of the model's outcome; may be none
   * @param seed of the draws; the same seed gives the same answer
   * @return what is known before anything was read, and after
   * @throws IllegalArgumentException if the unknowns that are one of some values have too many of
   *     them together
   */
  public static Learnt find(
      List<Distribution> unknowns,
      Model model,
      List<Evidence> evidence,
      long seed,
      Progress progress) {
    List<int[]> choices = choices(unknowns);
    PosteriorFinder finder =
        new PosteriorFinder(unknowns, model, evidence, seed, choices.size(), progress);
    List<Search> searches = choices.stream().map(finder::inChoice).toList();
    List<Found> found = searches.stream().map(Search::find).flatMap(Optional::stream).toList();
    double highest = found.stream().mapToDouble(Found::logEvidence).max().orElse(0);
    double least = found.stream().mapToDouble(Found::chiSquare).min().orElse(0);
    List<Posterior.Draw> after = new ArrayList<>();
    for (Found one : found) {
      double share = Math.exp(one.logEvidence() - highest);
      one.draws().stream()
          .map(d -> new Posterior.Draw(d.weight() * share, d.values(), d.outcome()))
          .forEach(after::add);
    }
    List<Posterior.Draw> before =
        searches.stream().flatMap(search -> search.before().stream()).toList();
    return new Learnt(
        new Posterior(before, 0),
        after.isEmpty() ? Optional.empty() : Optional.of(new Posterior(after, least)));
  }

  /**
   * What is known of unknowns and of what comes of them.
   *
   * @param before anything was read
   * @param after what was read; empty if nothing that is possible makes it
   */
  public record Learnt(Posterior before, Optional<Posterior> after) {}

  /** Draws of one choice of values, their weights with a sum of 1, and how likely it makes all. */
  private record Found(List<Posterior.Draw> draws, double logEvidence, double chiSquare) {}

  /** For each unknown which of its values is taken, in all ways; -1 of those that may be any. */
  private static List<int[]> choices(List<Distribution> unknowns) {
    List<int[]> choices = new ArrayList<>();
    choices.add(new int[0]);
    for (Distribution unknown : unknowns) {
      int first = unknown instanceof DiscreteUniform ? 0 : -1;
      int end = unknown instanceof DiscreteUniform one ? one.values().size() : 0;
      List<int[]> longer = new ArrayList<>();
      for (int[] choice : choices) {
        for (int i = first; i < end; i++) {
          int[] more = Arrays.copyOf(choice, choice.length + 1);
          more[choice.length] = i;
          longer.add(more);
        }
      }
      choices = longer;
      if (choices.size() > MOST_CHOICES) {
        throw new IllegalArgumentException("more than " + MOST_CHOICES + " choices of values");
      }
    }
    return choices;
  }

  private Search inChoice(int[] choice) {
    List<Marginal> marginals = new ArrayList<>();
    for (int i = 0; i < choice.length; i++) {
      double all = unknowns.get(i) instanceof DiscreteUniform one ? one.values().size() : 1;
      double from = Math.max(0, choice[i]) / all;
      double middle = from + 0.5 / all;
      marginals.add(
          choice[i] < 0
              ? new Marginal(unknowns.get(i), 0, 1)
              : new Marginal(unknowns.get(i), middle, middle));
    }
    return new Search(marginals);
  }

  /** The search with some unknowns at one value each. */
  private final class Search {
    private final List<Marginal> marginals;
    private final List<Sample> samples = new ArrayList<>();
    private final int known;

    Search(List<Marginal> marginals) {
      this.marginals = marginals;
      samples.addAll(workOut(hypercube(evidence.isEmpty() ? last : first)));
      this.known = samples.size();
    }

    /** Before anything was read. */
    List<Posterior.Draw> before() {
      return samples.subList(0, known).stream()
          .map(it -> new Posterior.Draw(1, boxed(it.values()), boxed(it.outcome())))
          .toList();
    }

    Optional<Found> find() {
      if (samples.stream().allMatch(it -> Double.isInfinite(it.misfit(evidence)))) {
        return Optional.empty();
      }
      if (evidence.isEmpty()) {
        return Optional.of(found(samples, it -> 0, 0));
      }
      ResponseSurface stand = ResponseSurface.of(marginals, evidence, samples);
      for (int round = 1; round <= MOST_ROUNDS; round++) {
        TemperedSampling annealing = anneal(stand, 2 * IN_A_ROUND, round);
        double[][] drawn = Arrays.stream(annealing.draws(), 0, IN_A_ROUND).toArray(double[][]::new);
        List<Sample> more = workOut(drawn);
        samples.addAll(more);
        double held = more.isEmpty() ? 0 : TemperedSampling.keptOf(weights(more, stand));
        stand = ResponseSurface.of(marginals, evidence, samples);
        if (held > HOLDS) {
          break;
        }
      }
      TemperedSampling annealing = anneal(stand, last, 0);
      List<Sample> end = workOut(annealing.draws());
      samples.addAll(end);
      ResponseSurface standing = stand;
      Found found = found(end, it -> logWeight(it, standing), annealing.logEvidence());
      return Optional.of(found).filter(it -> !it.draws().isEmpty());
    }

    private TemperedSampling anneal(ResponseSurface stand, int count, int round) {
      return TemperedSampling.run(marginals.size(), count, stand::logLikelihood, seed + round);
    }

    private double[][] hypercube(int count) {
      LatinHypercube cube = LatinHypercube.draw(marginals.size(), count, seed);
      double[][] deviates = new double[count][marginals.size()];
      for (int i = 0; i < count; i++) {
        for (int j = 0; j < marginals.size(); j++) {
          deviates[i][j] = Marginal.deviateOf(cube.chance(j, i));
        }
      }
      return deviates;
    }

    private List<Sample> workOut(double[][] deviates) {
      steps.done(0);
      List<Sample> done =
          Stream.of(deviates).parallel().map(this::sample).flatMap(Optional::stream).toList();
      steps.done(deviates.length);
      return done;
    }

    private Optional<Sample> sample(double[] deviates) {
      double[] values =
          IntStream.range(0, deviates.length)
              .mapToDouble(j -> marginals.get(j).at(deviates[j]))
              .toArray();
      return model.with(values).map(outcome -> new Sample(deviates, values, outcome));
    }

    private double logWeight(Sample sample, ResponseSurface stand) {
      return sample.logLikelihood(evidence) - stand.logLikelihood(sample.deviates());
    }

    private double[] weights(List<Sample> drawn, ResponseSurface stand) {
      double[] logs = drawn.stream().mapToDouble(it -> logWeight(it, stand)).toArray();
      double highest = Arrays.stream(logs).max().orElse(0);
      return Arrays.stream(logs)
          .map(log -> Double.isInfinite(highest) ? 0 : Math.exp(log - highest))
          .toArray();
    }

    private Found found(List<Sample> drawn, ToDoubleFunction<Sample> log, double logEvidence) {
      double[] logs = drawn.stream().mapToDouble(log).toArray();
      double highest = Arrays.stream(logs).max().orElse(Double.NEGATIVE_INFINITY);
      if (Double.isInfinite(highest)) {
        return new Found(List.of(), highest, Double.POSITIVE_INFINITY);
      }
      double sum = Arrays.stream(logs).map(it -> Math.exp(it - highest)).sum();
      List<Posterior.Draw> draws = new ArrayList<>();
      for (int i = 0; i < logs.length; i++) {
        Sample sample = drawn.get(i);
        draws.add(
            new Posterior.Draw(
                Math.exp(logs[i] - highest) / sum,
                boxed(sample.values()),
                boxed(sample.outcome())));
      }
      double mean = highest + Math.log(sum / logs.length);
      return new Found(
          draws,
          logEvidence + mean,
          new LeastMisfit(marginals, evidence, this::sample).of(samples));
    }

    private static List<Double> boxed(double[] values) {
      return Arrays.stream(values).boxed().toList();
    }
  }
}
