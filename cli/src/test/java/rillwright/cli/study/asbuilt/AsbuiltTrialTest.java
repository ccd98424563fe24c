package rillwright.cli.study.asbuilt;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import rillwright.cli.file.DrawnNetworks;
import rillwright.cli.file.UncertainQuantities;
import rillwright.cli.file.UncertainQuantities.Named;
import rillwright.cli.study.asbuilt.AsbuiltAnswer.FallFlow;
import rillwright.cli.study.asbuilt.AsbuiltAnswer.Quantity;
import rillwright.cli.study.asbuilt.SimulatedJobs.Job;
import rillwright.solver.network.Point;
import rillwright.solver.progress.Progress;
import rillwright.solver.study.diagnosis.evidence.Scope;
import rillwright.solver.study.diagnosis.job.AsBuilt;
import rillwright.solver.study.diagnosis.reading.Reading;
import rillwright.solver.study.uncertainty.posterior.Posterior;
import rillwright.solver.study.uncertainty.posterior.Posterior.Band;

/** What is learnt of simulated jobs is true as often as it says, and worth something. */
class AsbuiltTrialTest {
  private static final int JOBS = Integer.getInteger("rillwright.jobs", 10);
  private static final int SAMPLES = Integer.getInteger("rillwright.samples", 20_000);
  private static final int COMPARED = Integer.getInteger("rillwright.compared", 1);
  private static final long SEED = 20;

  /** How often the truth is where it is said to be, and what is left of flows' bands. */
  private static final class Tally {
    private int quantities;
    private int held;
    private int heldByHalf;
    private int heldByDouble;
    private int fits;
    private double slowest;
    private final List<Double> left = new ArrayList<>();

    private void add(Job job) {
      long start = System.nanoTime();
      AsbuiltAnswer answer =
          new AsbuiltRequest(Optional.of(job.visit())).answer(job.project(), Progress.UNSEEN);
      slowest = Math.max(slowest, (System.nanoTime() - start) / 1e9);
      for (int i = 0; i < answer.quantities().size(); i++) {
        Quantity quantity = answer.quantities().get(i);
        quantities++;
        held += holds(quantity.posterior(), 1, job.truth().get(i)) ? 1 : 0;
        heldByHalf += holds(quantity.posterior(), 0.5, job.truth().get(i)) ? 1 : 0;
        heldByDouble += holds(quantity.posterior(), 2, job.truth().get(i)) ? 1 : 0;
      }
      for (FallFlow fall : answer.falls()) {
        left.add(fall.after().width() / fall.before().width());
      }
      fits += answer.fits() ? 1 : 0;
    }

    /** Whether a value lies in a band that is made so much wider about its middle. */
    private static boolean holds(Band band, double wider, double value) {
      return value >= band.p50() - wider * (band.p50() - band.p5())
          && value <= band.p50() + wider * (band.p95() - band.p50());
    }

    private double medianLeft() {
      List<Double> sorted = left.stream().sorted().toList();
      return sorted.get(sorted.size() / 2);
    }

    private double share(int count) {
      return (double) count / quantities;
    }

    @Override
    public String toString() {
      return String.format(
          Locale.ROOT,
          "%d quantities: held %.3f, by half %.3f, by double %.3f; flows' bands left %.2f; fits %d;"
              + " slowest %.1f s",
          quantities,
          share(held),
          share(heldByHalf),
          share(heldByDouble),
          medianLeft(),
          fits,
          slowest);
    }
  }

  @Test
  void ninetyPercentBandsHoldTheTruthAboutAsOftenAndFlowsNarrowToLessThanHalf() {
    Tally tally = new Tally();
    IntStream.range(0, JOBS).forEach(i -> tally.add(SimulatedJobs.of(SEED + i, 3 + i % 10)));
    System.out.println(tally);
    double chance = 3 * Math.sqrt(0.9 * 0.1 / tally.quantities);
    double least = Math.max(0.85, 0.9 - chance);
    double most = Math.min(0.95, 0.9 + chance);
    double allowed = JOBS >= 300 ? 0 : 0.05;
    assertTrue(tally.share(tally.held) >= least - allowed, tally.toString());
    assertTrue(tally.share(tally.held) <= most + allowed, tally.toString());
    assertTrue(tally.medianLeft() < 0.5, tally.toString());
    assertTrue(tally.fits >= 0.97 * JOBS - 1, "possible jobs fit: " + tally);
    assertTrue(
        tally.share(tally.heldByHalf) < 0.85 - allowed, "sharpened bands are found out: " + tally);
  }

  /** Samples of what was known before, each weighted by how likely it makes the readings. */
  @Test
  void ofThreeUnknownsItIsWhatPlainImportanceSamplingSays() {
    double worst = 0;
    for (int i = 1; i <= COMPARED; i++) {
      worst = Math.max(worst, offOfSampling(SimulatedJobs.of(SEED + i, 3)));
    }
    System.out.printf(
        Locale.ROOT,
        "%d jobs beside sampling: at worst %.3f of what is allowed%n",
        COMPARED,
        worst);
    assertTrue(worst <= 1, worst + " of what is allowed");
  }

  /** How far the worst percentile is off, as a share of what is allowed. */
  private static double offOfSampling(Job job) {
    AsbuiltAnswer answer =
        new AsbuiltRequest(Optional.of(job.visit())).answer(job.project(), Progress.UNSEEN);
    Posterior sampled = sampled(job);
    double allowed = SAMPLES >= 1_000_000 ? 0.1 : 0.1 + 3 / Math.sqrt(sampled.effectiveDraws());
    System.out.println("effective samples " + sampled.effectiveDraws() + ", allowed " + allowed);
    double worst = 0;
    for (int i = 0; i < answer.quantities().size(); i++) {
      Band band = answer.quantities().get(i).posterior();
      String address = answer.quantities().get(i).named().address();
      worst = Math.max(worst, off(sampled.ofValue(i), band, address));
    }
    for (int i = 0; i < answer.falls().size(); i++) {
      Band band = answer.falls().get(i).after();
      Band expected = sampled.ofOutcome(job.visit().readings().size() + i);
      worst = Math.max(worst, off(expected, band, answer.falls().get(i).name().value()));
    }
    return worst / allowed;
  }

  /** By how many standard deviations the worst of three percentiles is off. */
  private static double off(Band expected, Band found, String what) {
    double deviation = expected.width() / 3.29;
    double low = (found.p5() - expected.p5()) / deviation;
    double middle = (found.p50() - expected.p50()) / deviation;
    double high = (found.p95() - expected.p95()) / deviation;
    System.out.printf(
        Locale.ROOT, "%s: off by %.3f, %.3f, %.3f deviations%n", what, low, middle, high);
    return Math.max(Math.abs(low), Math.max(Math.abs(middle), Math.abs(high)));
  }

  private static Posterior sampled(Job job) {
    List<Named> named = new UncertainQuantities(job.project()).inTheNetwork();
    List<Reading> readings = job.visit().readings();
    Scope scope =
        Scope.of(
            AsBuilt.of(job.project().network()), readings.stream().map(Reading::what).toList());
    DrawnJob model =
        new DrawnJob(
            job.project().network(),
            new DrawnNetworks(job.project(), named.stream().map(Named::quantity).toList()),
            readings.stream().map(Reading::what).toList(),
            job.project().network().waysOut().stream().map(Point::name).toList());
    Random dice = new Random(SEED);
    List<double[]> drawn = new ArrayList<>();
    for (int i = 0; i < SAMPLES; i++) {
      drawn.add(
          named.stream()
              .mapToDouble(one -> one.quantity().distribution().quantile(1e-12 + dice.nextDouble()))
              .toArray());
    }
    List<Posterior.Draw> draws =
        drawn.parallelStream()
            .flatMap(
                values ->
                    model.with(values).stream()
                        .map(outcome -> weighted(values, outcome, readings, scope)))
            .toList();
    return new Posterior(draws, 0);
  }

  private static Posterior.Draw weighted(
      double[] values, double[] outcome, List<Reading> readings, Scope scope) {
    double weight = 1;
    for (int r = 0; r < readings.size(); r++) {
      Reading reading = readings.get(r);
      double fromZero =
          scope.asBuilt(reading.what()).orElseThrow() - reading.what().zero(scope.job());
      double deviation = reading.tolerance().deviationAt(outcome[r], fromZero);
      double off = (reading.value() - outcome[r]) / deviation;
      weight *= Math.exp(-off * off / 2) / deviation;
    }
    return new Posterior.Draw(
        Double.isNaN(weight) ? 0 : weight,
        Arrays.stream(values).boxed().toList(),
        Arrays.stream(outcome).boxed().toList());
  }
}
